import { type Commit, type Kept, planDocumentSchema, type PracticeWhole, type Store } from "#app/ports";
import { classDocumentSchema } from "#core/class";
import { hallDocumentSchema } from "#core/hall";
import { happenedSchema } from "#core/outlook";
import {
  bad,
  good,
  type PracticeDocument,
  type Problem,
  practiceDocumentSchema,
  problem,
  type Result,
} from "#core/words";
import type { Kysely, Transaction } from "kysely";
import { applyChange } from "./apply-change.ts";
import { noteAction } from "./note-action.ts";
import { readRows } from "./read-rows.ts";
import type { Tables } from "./tables.ts";

/** What the SQL store must be told about the database under it. */
export type Ground = {
  readonly database: Kysely<Tables>;
  /** the problem behind an error of this database; undefined for an error that is a fault of ours */
  readonly problemOf: (error: unknown) => Problem | undefined;
  /** ISO 8601 instant, UTC */
  readonly now: () => string;
};

/** The one SQL store: plain SQL only, so that another database needs another ground and nothing else. */
export function sqlStore(ground: Ground): Store {
  return {
    practices: () => guarded(ground, () => practices(ground.database)),
    whole: (practice) => guarded(ground, () => whole(ground.database, practice)),
    commit: (commit) => guarded(ground, () => commitAll(ground, commit)),
    close: () => ground.database.destroy(),
  };
}

async function guarded<Value>(ground: Ground, work: () => Promise<Result<Value>>): Promise<Result<Value>> {
  try {
    return await work();
  } catch (error) {
    const known = ground.problemOf(error);
    if (known === undefined) throw error;
    return bad(known);
  }
}

async function practices(database: Kysely<Tables>): Promise<Result<readonly Kept<PracticeDocument>[]>> {
  const rows = await database.selectFrom("practice").selectAll().execute();
  return readRows("practice", rows.map(withId), practiceDocumentSchema);
}

/** One transaction, so that halls, classes and what happened are of the same moment. */
function whole(database: Kysely<Tables>, id: string): Promise<Result<PracticeWhole>> {
  return database.transaction().execute(async (transaction) => {
    const rows = await transaction.selectFrom("practice").selectAll().where("practice", "=", id).execute();
    const practice = readRows("practice", rows.map(withId), practiceDocumentSchema);
    if (!practice.ok) return practice;
    const [found] = practice.value;
    if (found === undefined) return bad(noPractice(id));
    const halls = readRows("hall", await documents(transaction, "hall", id), hallDocumentSchema);
    if (!halls.ok) return halls;
    const classes = readRows("class", await documents(transaction, "class", id), classDocumentSchema);
    if (!classes.ok) return classes;
    const rowsHappened = await documents(transaction, "happened", id);
    const happened = readRows("happened", rowsHappened, happenedSchema);
    if (!happened.ok) return happened;
    const plans = readRows("plan", await documents(transaction, "plan", id), planDocumentSchema);
    if (!plans.ok) return plans;
    return good({
      practice: found,
      halls: halls.value,
      classes: classes.value,
      happened: happened.value,
      plans: plans.value,
    });
  });
}

function documents(
  transaction: Transaction<Tables>,
  table: "hall" | "class" | "happened" | "plan",
  practice: string,
) {
  return transaction.selectFrom(table).selectAll().where("practice", "=", practice).orderBy("id").execute();
}

function withId<Row extends { readonly practice: string }>(row: Row): Row & { readonly id: string } {
  return { ...row, id: row.practice };
}

function noPractice(id: string): Problem {
  return problem(
    "not-found",
    `practice/${id}`,
    "There is no such practice here.",
    "Open one of those listed.",
  );
}

/** All changes or none: the first problem rolls the transaction back and nothing after it is tried. */
async function commitAll(ground: Ground, commit: Commit): Promise<Result<null>> {
  const transaction = await ground.database.startTransaction().execute();
  try {
    const done = await changeAll(transaction, commit, ground.now());
    await (done.ok ? transaction.commit() : transaction.rollback()).execute();
    return done;
  } catch (error) {
    // a full disk makes some databases roll back by themselves, and then this one fails: the first error tells
    if (!transaction.isCommitted && !transaction.isRolledBack)
      await transaction
        .rollback()
        .execute()
        .catch(() => {});
    throw error;
  }
}

async function changeAll(
  transaction: Transaction<Tables>,
  commit: Commit,
  at: string,
): Promise<Result<null>> {
  const noted = await noteAction(transaction, commit, at);
  if (!noted.ok) return noted;
  if (noted.value === "done before") return good(null);
  for (const change of commit.changes) {
    // oxlint-disable-next-line no-await-in-loop -- one connection: the statements of a transaction take turns
    const changed = await applyChange(transaction, commit.practice, change);
    if (!changed.ok) return changed;
  }
  return good(null);
}
