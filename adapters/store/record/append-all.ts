import type { RecordCommit } from "#app/ports";
import { good, type Result } from "#core/words";
import { type RawBuilder, sql, type Transaction } from "kysely";
import { digestOf } from "../note-action.ts";
import type { Tables } from "../tables.ts";
import { eventRows, sealNote, textOf } from "./append.ts";
import { insertInParts } from "./insert-in-parts.ts";
import { type MergedWrite, mergedWrites } from "./merged-writes.ts";
import { checkBalanced, postingRows } from "./posting-rows.ts";

type Target = Transaction<Tables>;

/**
 * Several actions of one practice in their order, as a few statements whatever their number: what they add is inserted
 * together, and a stream that several of them write is written once. "apart" where one of them is not new, or does not
 * stand on what the one before left, or erases somebody; it must be rolled back then.
 */
export async function appendAll(
  transaction: Target,
  commits: readonly RecordCommit[],
  asBytes: RawBuilder<unknown>,
): Promise<Result<"done" | "apart">> {
  const [first] = commits;
  if (first === undefined) return good("done");
  const apart = commits.some((it) => it.practice !== first.practice || it.erased.length > 0);
  const writes = mergedWrites(commits);
  if (apart || writes === undefined || writes.length === 0) return good("apart");
  for (const { postings } of commits) checkBalanced(postings);
  if (!(await noteAll(transaction, commits))) return good("apart");
  if (!(await advanceAll(transaction, first.practice, writes, asBytes))) return good("apart");
  const events = commits.flatMap((commit) => commit.streams.flatMap((it) => eventRows(commit, it)));
  await insertInParts(transaction, "event", events);
  await insertInParts(transaction, "posting", commits.flatMap(postingRows));
  for (const { practice, sealed } of commits) {
    // oxlint-disable-next-line no-await-in-loop -- one connection: the statements of a transaction take turns
    for (const { person, text } of sealed) await sealNote(transaction, practice, person, text);
  }
  return good("done");
}

/** Whether all of them are new, and no two of them the same. */
async function noteAll(transaction: Target, commits: readonly RecordCommit[]): Promise<boolean> {
  const rows = commits.map(({ practice, action, asked, answer, arrived: at }) => {
    return { practice, action, what: digestOf(asked), answer: textOf(answer), at };
  });
  const noted = await transaction
    .insertInto("action")
    .values(rows)
    .onConflict((conflict) => conflict.columns(["practice", "action"]).doNothing())
    .executeTakeFirst();
  return noted.numInsertedOrUpdatedRows === BigInt(commits.length);
}

/** Whether every stream was at the number it was read at. */
async function advanceAll(
  transaction: Target,
  practice: string,
  writes: readonly MergedWrite[],
  asBytes: RawBuilder<unknown>,
): Promise<boolean> {
  const begun = writes.filter((it) => it.from === 0);
  const moved = writes.filter((it) => it.from > 0);
  if (begun.length > 0 && (await beginAll(transaction, practice, begun)) !== begun.length) return false;
  return moved.length === 0 || (await moveAll(transaction, practice, moved, asBytes)) === moved.length;
}

async function beginAll(
  transaction: Target,
  practice: string,
  writes: readonly MergedWrite[],
): Promise<number> {
  const rows = writes.map(({ stream, upto: number, belongs, sort, state }) => {
    const [kind = ""] = stream.split("/");
    return { practice, stream, kind, number, belongs, sort, state: textOf(state) };
  });
  const done = await transaction
    .insertInto("stream")
    .values(rows)
    .onConflict((conflict) => conflict.columns(["practice", "stream"]).doNothing())
    .executeTakeFirst();
  return Number(done.numInsertedOrUpdatedRows ?? 0n);
}

/**
 * One conditional statement for all of them. Both databases call the columns of values column1, column2 …; the types
 * are told because PostgreSQL takes all that it is not told for text.
 */
async function moveAll(
  transaction: Target,
  practice: string,
  writes: readonly MergedWrite[],
  asBytes: RawBuilder<unknown>,
): Promise<number> {
  const rows = writes.map(
    ({ stream, from, upto, belongs, sort, state }) =>
      sql`(${text(stream)}, ${whole(from)}, ${whole(upto)}, ${text(belongs)}, ${text(sort)}, ${text(textOf(state))})`,
  );
  const done = await sql`update stream
    set number = it.column3, belongs = it.column4, sort = it.column5, state = it.column6
    from (values ${sql.join(rows)}) as it
    where stream.practice = ${practice} and stream.stream = it.column1 ${asBytes}
      and stream.number = it.column2`.execute(transaction);
  return Number(done.numAffectedRows ?? 0n);
}

function text(value: string): RawBuilder<unknown> {
  return sql`cast(${value} as text)`;
}

function whole(value: number): RawBuilder<unknown> {
  return sql`cast(${value} as integer)`;
}
