import type { KeptPosting, RecordCommit, RecordStore, Store, StreamName, StreamWrite } from "#app/ports";
import { marlsford } from "#demo";

/** A store of documents and of the running record in one place. */
export type StoreWithRecord = Store & { readonly record: RecordStore };

/** Opens a practice, which the record of it needs. */
export async function openPracticeIn(store: Store, practice: string): Promise<void> {
  const change = { kind: "practice", from: 0, document: marlsford.practice } as const;
  const done = await store.commit({ action: `open-${practice}`, practice, changes: [change] });
  if (!done.ok) throw new Error(JSON.stringify(done.problems));
}

/** An action that does nothing yet; `asked` is made from the rest, so that the same commit is the same request. */
export function aCommit(action: string, instead: Partial<RecordCommit> = {}): RecordCommit {
  const made = "2026-12-01T18:58:00Z";
  const nothing = { streams: [], postings: [], sealed: [], erased: [], answer: { says: [action] } };
  const by = "teacher" as const;
  const whole = {
    practice: "oriel",
    action,
    made,
    arrived: "2026-12-01T21:10:00Z",
    by,
    ...nothing,
    ...instead,
  };
  return { ...whole, asked: instead.asked ?? JSON.stringify([whole.streams, whole.postings]) };
}

/** One event more on a stream: its state holds how many there are. */
export function aWrite(stream: StreamName, from: number, instead: Partial<StreamWrite> = {}): StreamWrite {
  const events = instead.events ?? [{ kind: "marked", place: from + 1 }];
  return {
    stream,
    from,
    belongs: "tuesday",
    sort: "",
    state: { count: from + events.length },
    ...instead,
    events,
  };
}

/** Cash in for a single place: the two lines add up to nothing. */
export function aSale(
  amount: number,
  date: string,
  about: StreamName,
): readonly Omit<KeptPosting, "action" | "line">[] {
  const line = { date, commodity: "GBP", about };
  return [
    { ...line, account: "cash", amount },
    { ...line, account: "income/singles", amount: -amount },
  ];
}
