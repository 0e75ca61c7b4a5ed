import type { PlanDocument } from "#app/ports";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { HappenedDocument } from "#core/outlook";
import type { PracticeDocument } from "#core/words";
import type { Draft } from "./draft.ts";
import { dropOnDevice, keepOnDevice, keysOnDevice, readOnDevice } from "./on-device.ts";

/** What can be open, and the document that each holds. */
export type Documents = {
  readonly halls: HallDocument;
  readonly classes: ClassDocument;
  /** what really happened, under the id of the class */
  readonly happened: HappenedDocument;
  /** what the practice plans as a whole, under "week", "year" and "money" */
  readonly plans: PlanDocument;
  readonly details: PracticeDocument;
};
export type Kind = keyof Documents;

const keyOf = (practice: string, kind: Kind, id: string) => `draft/${practice}/${kind}/${id}`;

export function keepDraft<K extends Kind>(
  practice: string,
  kind: K,
  id: string,
  draft: Draft<Documents[K]>,
): boolean {
  return keepOnDevice(keyOf(practice, kind, id), draft);
}

export function dropDraft(practice: string, kind: Kind, id: string): void {
  dropOnDevice(keyOf(practice, kind, id));
}

/** The draft left on this device by an earlier visit, ready to be sent again; null when there is none. */
export function keptDraft<K extends Kind>(practice: string, kind: K, id: string): Draft<Documents[K]> | null {
  const read = readOnDevice(keyOf(practice, kind, id));
  if (!isDraft(read)) return null;
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- written by keepDraft under this kind
  const draft = read as Draft<Documents[K]>;
  if (draft.state.kind === "clash") return draft;
  const waiting = draft.unsent || draft.sending !== null;
  return { ...draft, state: waiting ? { kind: "waiting" } : { kind: "saved", at: null } };
}

/** The ids of the drafts of one kind on this device. */
export function keptDraftIds(practice: string, kind: Kind): readonly string[] {
  const start = keyOf(practice, kind, "");
  return keysOnDevice(start).map((key) => key.slice(start.length));
}

function isDraft(it: unknown): it is Draft<unknown> {
  return (
    typeof it === "object" &&
    it !== null &&
    "document" in it &&
    "typed" in it &&
    "from" in it &&
    typeof it.from === "number" &&
    "state" in it &&
    typeof it.state === "object"
  );
}
