import { bad, type Problem, type Result } from "#core/words";
import type { ControlledTransaction, Kysely, Transaction } from "kysely";
import type { Tables } from "./tables.ts";

/** What the SQL store must be told about the database under it. */
export type Ground = {
  readonly database: Kysely<Tables>;
  /** a transaction that reads what is there when it reads; what decides is the statement that writes */
  readonly begin: () => Promise<ControlledTransaction<Tables>>;
  /** reads that all see the database as it was at one moment */
  readonly atOneMoment: <Value>(work: (transaction: Transaction<Tables>) => Promise<Value>) => Promise<Value>;
  /** the problem behind an error of this database; undefined for an error that is a fault of ours */
  readonly problemOf: (error: unknown) => Problem | undefined;
  /**
   * milliseconds to wait before a transaction is tried once more that failed only because of another one; null
   * when that is not why, or when it was tried often enough
   */
  readonly pauseBeforeNext: (error: unknown, tries: number) => number | null;
  /** ISO 8601 instant, UTC */
  readonly now: () => string;
};

/** What a database does wrong for a reason that a person can mend is answered as a problem. */
export async function guarded<Value>(
  ground: Ground,
  work: () => Promise<Result<Value>>,
): Promise<Result<Value>> {
  try {
    return await work();
  } catch (error) {
    const known = ground.problemOf(error);
    if (known === undefined) throw error;
    return bad(known);
  }
}
