import type { Appended, RecordCommit, StreamName, StreamWrite } from "#app/ports";
import { bad, good, type Result } from "#core/words";
import type { Transaction } from "kysely";
import { practiceNotThere } from "../data-file-problems.ts";
import { digestOf, noteAction } from "../note-action.ts";
import type { Tables } from "../tables.ts";
import { insertInParts } from "./insert-in-parts.ts";
import { checkBalanced, postingRows } from "./posting-rows.ts";

type Target = Transaction<Tables>;

/**
 * Everything one action does to the record, as statements of one transaction. It must be rolled back unless the
 * outcome is "done". Problems: "action-reused", "not-found".
 */
export async function append(transaction: Target, commit: RecordCommit): Promise<Result<Appended>> {
  checkBalanced(commit.postings);
  const noted = await note(transaction, commit);
  if (!noted.ok || noted.value.outcome === "done before") return noted;
  const moved = await advance(transaction, commit);
  if (moved !== undefined || commit.streams.length === 0) {
    if (!(await practiceIsThere(transaction, commit.practice))) return bad(practiceNotThere());
  }
  if (moved !== undefined) return good({ outcome: "moved", stream: moved });
  await insertInParts(
    transaction,
    "event",
    commit.streams.flatMap((it) => eventRows(commit, it)),
  );
  await insertInParts(transaction, "posting", postingRows(commit));
  for (const person of commit.erased) await erase(transaction, commit, person);
  for (const { person, text } of commit.sealed) await sealNote(transaction, commit.practice, person, text);
  return good({ outcome: "done" });
}

async function note(transaction: Target, commit: RecordCommit): Promise<Result<Appended>> {
  const { practice, action, asked, answer, arrived } = commit;
  const noting = { practice, action, what: digestOf(asked), answer: textOf(answer), at: arrived };
  const noted = await noteAction(transaction, noting);
  if (!noted.ok || noted.value.outcome === "new") return noted.ok ? good({ outcome: "done" }) : noted;
  return good({ outcome: "done before", answer: JSON.parse(noted.value.answer) });
}

/** In the order of their names, so that two actions never hold what the other one waits for. */
async function advance(transaction: Target, commit: RecordCommit): Promise<StreamName | undefined> {
  const inOrder = [...commit.streams].sort((one, other) => (one.stream < other.stream ? -1 : 1));
  for (const write of inOrder) {
    if (write.events.length === 0) throw new RangeError(`a stream without an event: ${write.stream}`);
    const done = write.from === 0 ? begin(transaction, commit, write) : move(transaction, commit, write);
    // oxlint-disable-next-line no-await-in-loop -- one connection: the statements of a transaction take turns
    if ((await done) !== 1n) return write.stream;
  }
  return undefined;
}

async function begin(
  transaction: Target,
  { practice }: RecordCommit,
  write: StreamWrite,
): Promise<bigint | undefined> {
  const { stream, belongs, sort, state, events } = write;
  const [kind = ""] = stream.split("/");
  const row = { practice, stream, kind, number: events.length, belongs, sort, state: textOf(state) };
  const done = await transaction
    .insertInto("stream")
    .values(row)
    .onConflict((conflict) => conflict.columns(["practice", "stream"]).doNothing())
    .executeTakeFirst();
  return done.numInsertedOrUpdatedRows;
}

async function move(transaction: Target, { practice }: RecordCommit, write: StreamWrite): Promise<bigint> {
  const { stream, from, belongs, sort, state, events } = write;
  const done = await transaction
    .updateTable("stream")
    .set({ number: from + events.length, belongs, sort, state: textOf(state) })
    .where("practice", "=", practice)
    .where("stream", "=", stream)
    .where("number", "=", from)
    .executeTakeFirst();
  return done.numUpdatedRows;
}

/** Events get the numbers after that which the stream was read at. */
export function eventRows(
  commit: RecordCommit,
  { stream, from, events }: StreamWrite,
): readonly Tables["event"][] {
  const { practice, action, made, arrived, by: actor } = commit;
  return events.map((body, index) => {
    const number = from + index + 1;
    return { practice, stream, number, action, made, arrived, actor, body: textOf(body) };
  });
}

/** What was told of a person goes, but for what this action tells. */
async function erase(transaction: Target, { practice, action }: RecordCommit, person: string): Promise<void> {
  await transaction
    .deleteFrom("event")
    .where("practice", "=", practice)
    .where("stream", "=", `person/${person}`)
    .where("action", "<>", action)
    .execute();
  await sealNote(transaction, practice, person, null);
}

/** A sealed note replaces the one before; null removes it. */
export async function sealNote(
  transaction: Target,
  practice: string,
  person: string,
  text: string | null,
): Promise<void> {
  if (text === null) {
    await transaction
      .deleteFrom("sealed")
      .where("practice", "=", practice)
      .where("person", "=", person)
      .execute();
    return;
  }
  await transaction
    .insertInto("sealed")
    .values({ practice, person, text })
    .onConflict((conflict) => conflict.columns(["practice", "person"]).doUpdateSet({ text }))
    .execute();
}

async function practiceIsThere(transaction: Target, practice: string): Promise<boolean> {
  const found = await transaction
    .selectFrom("practice")
    .select("version")
    .where("practice", "=", practice)
    .executeTakeFirst();
  return found !== undefined;
}

/** Undefined has no JSON, and a column takes no undefined. */
export function textOf(value: unknown): string {
  return JSON.stringify(value ?? null);
}
