import type { RecordStore } from "#app/ports";
import { good } from "#core/words";
import { allOrNothing } from "../all-or-nothing.ts";
import { type Ground, guarded } from "../ground.ts";
import { answerBefore, digestOf } from "../note-action.ts";
import { append } from "./append.ts";
import { appendAll } from "./append-all.ts";
import { readBalances, readPostings } from "./read-postings.ts";
import { listStreams, readEvents, readStreams } from "./read-streams.ts";

/** The running record on the ground of the one SQL store. */
export function recordStore(ground: Ground): RecordStore {
  const { database } = ground;
  return {
    streams: (practice, names) => guarded(ground, () => readStreams(database, practice, names)),
    list: (practice, order) => guarded(ground, () => listStreams(database, practice, order)),
    events: (practice, stream) => guarded(ground, () => readEvents(database, practice, stream)),
    postings: (practice, order) => guarded(ground, () => readPostings(database, practice, order)),
    balances: (practice, until) => guarded(ground, () => readBalances(database, practice, until)),
    sealed: (practice, person) => guarded(ground, () => readSealed(ground, practice, person)),
    answered: (practice, action, asked) =>
      guarded(ground, async () => {
        const before = await answerBefore(database, { practice, action, what: digestOf(asked) });
        if (!before.ok || before.value === undefined) return before.ok ? good(undefined) : before;
        return good({ answer: JSON.parse(before.value) });
      }),
    append: (commit) =>
      guarded(ground, async () => {
        const appended = await allOrNothing(
          ground,
          (transaction) => append(transaction, commit),
          ({ outcome }) => outcome === "done",
        );
        if (appended.ok && commit.erased.length > 0) ground.afterErasing?.();
        return appended;
      }),
    appendAll: (commits) =>
      guarded(ground, () =>
        allOrNothing(
          ground,
          (transaction) => appendAll(transaction, commits, ground.asBytes),
          (kept) => kept === "done",
        ),
      ),
  };
}

async function readSealed({ database }: Ground, practice: string, person: string) {
  const found = await database
    .selectFrom("sealed")
    .select("text")
    .where("practice", "=", practice)
    .where("person", "=", person)
    .executeTakeFirst();
  return good(found?.text ?? null);
}
