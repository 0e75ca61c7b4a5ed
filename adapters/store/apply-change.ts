import type { Change } from "#app/ports";
import { bad, good, problem, type Result } from "#core/words";
import type { Transaction } from "kysely";
import type { Tables } from "./tables.ts";

type Key = { readonly practice: string; readonly id: string; readonly from: number };
type Table = "hall" | "class" | "happened" | "plan";

/**
 * One change as one conditional statement: the database compares versions, so that no reading before the
 * writing can be out of date. Problems: "changed-elsewhere", "not-found".
 */
export async function applyChange(
  transaction: Transaction<Tables>,
  practice: string,
  change: Change,
): Promise<Result<null>> {
  switch (change.kind) {
    case "practice":
      return savePractice(transaction, practice, change.from, JSON.stringify(change.document));
    case "hall":
    case "class":
    case "plan":
      return save(transaction, change.kind, { ...change, practice }, JSON.stringify(change.document));
    case "happened":
      return saveHappened(transaction, { ...change, practice }, JSON.stringify(change.document));
    case "remove-hall":
      return remove(transaction, "hall", { ...change, practice });
    case "remove-class":
      return remove(transaction, "class", { ...change, practice });
  }
}

async function savePractice(
  transaction: Transaction<Tables>,
  practice: string,
  from: number,
  document: string,
): Promise<Result<null>> {
  const version = from + 1;
  const done =
    from === 0
      ? await transaction
          .insertInto("practice")
          .values({ practice, version, document })
          .onConflict((conflict) => conflict.column("practice").doNothing())
          .executeTakeFirst()
      : await transaction
          .updateTable("practice")
          .set({ version, document })
          .where("practice", "=", practice)
          .where("version", "=", from)
          .executeTakeFirst();
  if (rowsOf(done) === 1n) return good(null);
  const found = await transaction
    .selectFrom("practice")
    .select("version")
    .where("practice", "=", practice)
    .executeTakeFirst();
  return bad(found === undefined ? notFound("practice", practice) : changed("practice", practice, from));
}

async function save(
  transaction: Transaction<Tables>,
  table: Table,
  key: Key,
  document: string,
): Promise<Result<null>> {
  const { practice, id, from } = key;
  const version = from + 1;
  const done =
    from === 0
      ? await transaction
          .insertInto(table)
          .values({ practice, id, version, document })
          .onConflict((conflict) => conflict.columns(["practice", "id"]).doNothing())
          .executeTakeFirst()
      : await transaction
          .updateTable(table)
          .set({ version, document })
          .where("practice", "=", practice)
          .where("id", "=", id)
          .where("version", "=", from)
          .executeTakeFirst();
  return rowsOf(done) === 1n ? good(null) : bad(await whyNot(transaction, table, key));
}

/** The class is looked for first: a record of a class that was removed meanwhile is a problem, not a fault. */
async function saveHappened(
  transaction: Transaction<Tables>,
  key: Key,
  document: string,
): Promise<Result<null>> {
  const found = await transaction
    .selectFrom("class")
    .select("version")
    .where("practice", "=", key.practice)
    .where("id", "=", key.id)
    .executeTakeFirst();
  return found === undefined ? bad(notFound("class", key.id)) : save(transaction, "happened", key, document);
}

async function remove(transaction: Transaction<Tables>, table: Table, key: Key): Promise<Result<null>> {
  const done = await transaction
    .deleteFrom(table)
    .where("practice", "=", key.practice)
    .where("id", "=", key.id)
    .where("version", "=", key.from)
    .executeTakeFirst();
  return done.numDeletedRows === 1n ? good(null) : bad(await whyNot(transaction, table, key));
}

type Done = { readonly numInsertedOrUpdatedRows?: bigint | undefined } | { readonly numUpdatedRows: bigint };

function rowsOf(done: Done): bigint {
  return "numUpdatedRows" in done ? done.numUpdatedRows : (done.numInsertedOrUpdatedRows ?? 0n);
}

async function whyNot(transaction: Transaction<Tables>, table: Table, key: Key) {
  const found = await transaction
    .selectFrom(table)
    .select("version")
    .where("practice", "=", key.practice)
    .where("id", "=", key.id)
    .executeTakeFirst();
  return found === undefined ? notFound(table, key.id) : changed(table, key.id, key.from);
}

const CALLED: Readonly<Record<Table | "practice", string>> = {
  practice: "practice",
  hall: "hall",
  class: "class",
  happened: "record of what happened",
  plan: "plan",
};

function changed(table: Table | "practice", id: string, from: number) {
  const called = CALLED[table];
  const says =
    from === 0
      ? `There is already a ${called} with this id.`
      : `The ${called} was saved somewhere else after you opened it.`;
  const next = "Nothing was overwritten. Load the newer one beside yours, compare, and save again.";
  return problem("changed-elsewhere", `${table}/${id}`, says, next);
}

function notFound(table: Table | "practice", id: string) {
  const says = `There is no such ${CALLED[table]} any more; it may have been removed somewhere else.`;
  return problem("not-found", `${table}/${id}`, says, "Save yours as a new one if you still want it.");
}
