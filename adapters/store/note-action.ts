import { createHash } from "node:crypto";
import type { Commit } from "#app/ports";
import { bad, good, problem, type Result } from "#core/words";
import type { Transaction } from "kysely";
import type { Tables } from "./tables.ts";

/**
 * Notes that the action is being done and says whether it was done before. It is the first statement of
 * the transaction and a write, so that of two at once the second waits here and then finds the first.
 * Problem: "action-reused".
 */
export async function noteAction(
  transaction: Transaction<Tables>,
  commit: Commit,
  at: string,
): Promise<Result<"new" | "done before">> {
  const { practice, action } = commit;
  const what = digest(commit);
  const noted = await transaction
    .insertInto("action")
    .values({ practice, action, what, answer: answerTo(commit), at })
    .onConflict((conflict) => conflict.columns(["practice", "action"]).doNothing())
    .executeTakeFirst();
  if (noted.numInsertedOrUpdatedRows === 1n) return good("new");
  const before = await transaction
    .selectFrom("action")
    .select("what")
    .where("practice", "=", practice)
    .where("action", "=", action)
    .executeTakeFirstOrThrow();
  return before.what === what ? good("done before") : bad(reused(action));
}

function reused(action: string) {
  const says = `The action ${action} was used before for something else.`;
  return problem("action-reused", "action", says, "Give every new action an id of its own.");
}

function digest(commit: Commit): string {
  return createHash("sha256").update(JSON.stringify(commit.changes)).digest("hex");
}

/** What was answered is known beforehand: a save makes the version it came from one greater. */
function answerTo(commit: Commit): string {
  return JSON.stringify(
    commit.changes.map((change) => ({
      kind: change.kind,
      id: change.kind === "practice" ? commit.practice : change.id,
      version: change.from + 1,
    })),
  );
}
