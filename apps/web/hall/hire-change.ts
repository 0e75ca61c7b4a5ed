import type { HireTermsDocument } from "#core/hall";

export type HireParts = {
  readonly hire: HireTermsDocument;
  readonly change: (part: Partial<HireTermsDocument>) => void;
};
