import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { PracticeDocument, Result } from "#core/words";

/** A stored document: `version` counts its saves from 1. */
export type Kept<Document> = { readonly id: string; readonly version: number; readonly document: Document };

export type PracticeWhole = {
  readonly practice: Kept<PracticeDocument>;
  readonly halls: readonly Kept<HallDocument>[];
  readonly classes: readonly Kept<ClassDocument>[];
};

/**
 * A save asks for the version it was made from: 0 for a new document. A save whose `action` was done
 * before answers as it did then, so that doing it twice does it once.
 */
export type Save<Document> = {
  readonly action: string;
  readonly practice: string;
  readonly id: string;
  readonly from: number;
  readonly document: Document;
};

export type Removal = Omit<Save<never>, "document">;

/** The one store. Problems: "changed-elsewhere", "not-found", "disk-full", "store-read-only". */
export type Store = {
  practices(): Promise<Result<readonly Kept<PracticeDocument>[]>>;
  whole(practice: string): Promise<Result<PracticeWhole>>;
  savePractice(save: Omit<Save<PracticeDocument>, "practice">): Promise<Result<Kept<PracticeDocument>>>;
  saveHall(save: Save<HallDocument>): Promise<Result<Kept<HallDocument>>>;
  saveClass(save: Save<ClassDocument>): Promise<Result<Kept<ClassDocument>>>;
  removeHall(removal: Removal): Promise<Result<null>>;
  removeClass(removal: Removal): Promise<Result<null>>;
  close(): Promise<void>;
};
