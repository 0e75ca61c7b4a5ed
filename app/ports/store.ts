import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { HappenedDocument } from "#core/outlook";
import type { PracticeDocument, Result } from "#core/words";
import type { PlanDocument } from "./plan.ts";

/** A stored document: `version` counts its saves from 1. */
export type Kept<Document> = { readonly id: string; readonly version: number; readonly document: Document };

export type PracticeWhole = {
  readonly practice: Kept<PracticeDocument>;
  readonly halls: readonly Kept<HallDocument>[];
  readonly classes: readonly Kept<ClassDocument>[];
  /** what really happened in a class, under the id of the class */
  readonly happened: readonly Kept<HappenedDocument>[];
  /** what the practice plans as a whole, under "week", "year" and "money" */
  readonly plans: readonly Kept<PlanDocument>[];
};

/**
 * `from` is the version a change was made from, 0 for something new; a save makes it `from` + 1. What happened is
 * kept for a class that is there, and goes with it.
 */
export type Change =
  | { readonly kind: "practice"; readonly from: number; readonly document: PracticeDocument }
  | { readonly kind: "hall"; readonly id: string; readonly from: number; readonly document: HallDocument }
  | { readonly kind: "class"; readonly id: string; readonly from: number; readonly document: ClassDocument }
  | {
      readonly kind: "happened";
      readonly id: string;
      readonly from: number;
      readonly document: HappenedDocument;
    }
  | { readonly kind: "plan"; readonly id: string; readonly from: number; readonly document: PlanDocument }
  | { readonly kind: "remove-hall"; readonly id: string; readonly from: number }
  | { readonly kind: "remove-class"; readonly id: string; readonly from: number };

/**
 * All changes of one action of one practice: they happen together or not at all. `action` is an id made by
 * whoever asks; a commit whose action was done before changes nothing and answers as it did then.
 */
export type Commit = {
  readonly action: string;
  readonly practice: string;
  readonly changes: readonly Change[];
};

/**
 * The one store. A good answer to `commit` means that the changes are on disk.
 * Problems: "changed-elsewhere", "not-found", "action-reused", "disk-full", "store-read-only", "store-busy",
 * "data-file-damaged", "database-unreachable".
 */
export type Store = {
  practices(): Promise<Result<readonly Kept<PracticeDocument>[]>>;
  whole(practice: string): Promise<Result<PracticeWhole>>;
  commit(commit: Commit): Promise<Result<null>>;
  close(): Promise<void>;
};
