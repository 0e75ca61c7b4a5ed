import { setTimeout as pause } from "node:timers/promises";
import { bad, type Problem, type Result } from "#core/words";
import type { ControlledTransaction, Kysely, RawBuilder, Transaction } from "kysely";
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
   * milliseconds to wait before what failed is tried once more, because another transaction or a cut connection was
   * in its way; null when that is not why, or when it was tried often enough
   */
  readonly pauseBeforeNext: (error: unknown, tries: number) => number | null;
  /** lets go what the database still holds of rows that were erased, where that is not done by itself */
  readonly afterErasing?: () => void;
  /** after a text: that it is compared byte by byte, as the columns of keys are */
  readonly asBytes: RawBuilder<unknown>;
  /** ISO 8601 instant, UTC */
  readonly now: () => string;
};

/**
 * Does the work, from the start again where another transaction or a cut connection was in its way: to do an action
 * twice does it once.
 */
export async function guarded<Value>(
  ground: Ground,
  work: () => Promise<Result<Value>>,
): Promise<Result<Value>> {
  return told(ground, async () => {
    for (let tries = 1; ; tries += 1) {
      try {
        // oxlint-disable-next-line no-await-in-loop -- one try after another
        return await work();
      } catch (error) {
        const wait = ground.pauseBeforeNext(error, tries);
        if (wait === null) throw error;
        // oxlint-disable-next-line no-await-in-loop -- one try after another
        await pause(wait);
      }
    }
  });
}

/** What a database does wrong for a reason that a person can mend is answered as a problem. */
export async function told<Value>(
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
