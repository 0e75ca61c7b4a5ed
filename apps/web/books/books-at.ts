import type { HallDocument } from "#core/hall";
import type { PracticeDocument } from "#core/words";
import type { Listed } from "../drafts/use-practice.ts";

/** What the parts of the books are given. */
export type BooksAt = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly halls: readonly Listed<HallDocument>[];
  /** by the practice's own clock */
  readonly today: string;
};
