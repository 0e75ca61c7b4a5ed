import type { Change, PlanDocument, Saved, Store } from "#app/ports";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { HappenedDocument } from "#core/outlook";
import { good, type PracticeDocument, type ReadDocument, type Result } from "#core/words";

type Ask = { readonly action: string; readonly practice: string; readonly id: string; readonly from: number };

/** Commits the one change of a save and answers the document as it is kept now. */
export async function commitSaved<
  Document extends PracticeDocument | HallDocument | ClassDocument | HappenedDocument | PlanDocument,
>(store: Store, ask: Ask, read: ReadDocument<Document>, change: Change): Promise<Result<Saved<Document>>> {
  const done = await store.commit({ action: ask.action, practice: ask.practice, changes: [change] });
  if (!done.ok) return done;
  return good({ id: ask.id, version: ask.from + 1, document: read.value, unused: read.unused });
}
