import { createHash } from "node:crypto";
import type { Commit } from "#app/ports";
import { bad, good, problem, type Result } from "#core/words";
import type { Kysely, Transaction } from "kysely";
import type { Tables } from "./tables.ts";

/** An action as it is noted: `what` is a digest of what was asked, `answer` the JSON text of what was answered. */
export type Noting = {
  readonly practice: string;
  readonly action: string;
  readonly what: string;
  readonly answer: string;
  /** ISO 8601 instant, UTC */
  readonly at: string;
};

/** "done before" comes with what was answered then, as JSON text. */
export type Noted =
  | { readonly outcome: "new" }
  | { readonly outcome: "done before"; readonly answer: string };

/**
 * Notes that the action is being done and says whether it was done before. It is the first statement of
 * the transaction and a write, so that of two at once the second waits here and then finds the first.
 * Problem: "action-reused".
 */
export async function noteAction(transaction: Transaction<Tables>, noting: Noting): Promise<Result<Noted>> {
  const noted = await transaction
    .insertInto("action")
    .values(noting)
    .onConflict((conflict) => conflict.columns(["practice", "action"]).doNothing())
    .executeTakeFirst();
  if (noted.numInsertedOrUpdatedRows === 1n) return good({ outcome: "new" });
  const before = await answerBefore(transaction, noting);
  if (!before.ok) return before;
  if (before.value === undefined) throw new Error(`an action that is noted and is not: ${noting.action}`);
  return good({ outcome: "done before", answer: before.value });
}

/** What was answered to an action, undefined for one that was not done. Problem: "action-reused". */
export async function answerBefore(
  database: Kysely<Tables>,
  { practice, action, what }: Pick<Noting, "practice" | "action" | "what">,
): Promise<Result<string | undefined>> {
  const before = await database
    .selectFrom("action")
    .select(["what", "answer"])
    .where("practice", "=", practice)
    .where("action", "=", action)
    .executeTakeFirst();
  if (before === undefined) return good(undefined);
  return before.what === what ? good(before.answer) : bad(reused(action));
}

/** The action of a change of documents. */
export function notingOf(commit: Commit, at: string): Noting {
  const { practice, action } = commit;
  return { practice, action, what: digestOf(JSON.stringify(commit.changes)), answer: answerTo(commit), at };
}

export function digestOf(asked: string): string {
  return createHash("sha256").update(asked).digest("hex");
}

function reused(action: string) {
  const says = `The action ${action} was used before for something else.`;
  return problem("action-reused", "action", says, "Give every new action an id of its own.");
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
