import {
  type Commit,
  type Kept,
  planDocumentSchema,
  type PracticeWhole,
  type RecordStore,
  type Store,
} from "#app/ports";
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
import { allOrNothing } from "./all-or-nothing.ts";
import { applyChange } from "./apply-change.ts";
import { type Ground, guarded, told } from "./ground.ts";
import { everythingIn } from "./move/everything-in.ts";
import { everythingOut } from "./move/everything-out.ts";
import { noteAction, notingOf } from "./note-action.ts";
import { readRows } from "./read-rows.ts";
import { recordStore } from "./record/record-store.ts";
import type { Tables } from "./tables.ts";

/** Documents and the running record of all practices, in one place with one door; closing it closes both. */
export type WholeStore = Store & {
  readonly record: RecordStore;
  /** everything of all practices as text, to be taken into another store; answers the number of rows */
  readonly everythingOut: (write: (text: string) => Promise<void>) => Promise<Result<number>>;
  /** the lines of such a text are asked for more than once: it is looked over before it is taken in */
  readonly everythingIn: (lines: () => AsyncIterable<string>) => Promise<Result<number>>;
};

/** The one SQL store: plain SQL only, so that another database needs another ground and nothing else. */
export function sqlStore(ground: Ground): WholeStore {
  return {
    record: recordStore(ground),
    everythingOut: (write) => told(ground, () => everythingOut(ground, write)),
    everythingIn: (lines) => guarded(ground, () => everythingIn(ground, lines)),
    practices: () => guarded(ground, () => practices(ground.database)),
    whole: (practice) => guarded(ground, () => whole(ground, practice)),
    commit: (commit) =>
      guarded(ground, () =>
        allOrNothing(ground, (transaction) => changeAll(transaction, commit, ground.now())),
      ),
    close: () => ground.database.destroy(),
  };
}

async function practices(database: Kysely<Tables>): Promise<Result<readonly Kept<PracticeDocument>[]>> {
  const rows = await database.selectFrom("practice").selectAll().orderBy("practice").execute();
  return readRows("practice", rows.map(withId), practiceDocumentSchema);
}

/** Halls, classes and what happened are of the same moment. */
function whole(ground: Ground, id: string): Promise<Result<PracticeWhole>> {
  return ground.atOneMoment(async (transaction) => {
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

async function changeAll(
  transaction: Transaction<Tables>,
  commit: Commit,
  at: string,
): Promise<Result<null>> {
  const noted = await noteAction(transaction, notingOf(commit, at));
  if (!noted.ok) return noted;
  if (noted.value.outcome === "done before") return good(null);
  for (const change of commit.changes) {
    // oxlint-disable-next-line no-await-in-loop -- one connection: the statements of a transaction take turns
    const changed = await applyChange(transaction, commit.practice, change);
    if (!changed.ok) return changed;
  }
  return good(null);
}
