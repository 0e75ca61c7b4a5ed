import { setTimeout as pause } from "node:timers/promises";
import type { Result } from "#core/words";
import type { ControlledTransaction, Transaction } from "kysely";
import type { Ground } from "./ground.ts";
import type { Tables } from "./tables.ts";

type Work<Value> = (transaction: Transaction<Tables>) => Promise<Result<Value>>;

/**
 * All changes or none: a problem, or a value that is not to be kept, rolls the transaction back. The work may be done
 * again from the start when another transaction was in its way.
 */
export async function allOrNothing<Value>(
  ground: Ground,
  work: Work<Value>,
  isKept: (value: Value) => boolean = () => true,
): Promise<Result<Value>> {
  for (let tries = 1; ; tries += 1) {
    try {
      // oxlint-disable-next-line no-await-in-loop -- one try after another
      return await tried(await ground.begin(), work, isKept);
    } catch (error) {
      const wait = ground.pauseBeforeNext(error, tries);
      if (wait === null) throw error;
      // oxlint-disable-next-line no-await-in-loop -- one try after another
      await pause(wait);
    }
  }
}

async function tried<Value>(
  transaction: ControlledTransaction<Tables>,
  work: Work<Value>,
  isKept: (value: Value) => boolean,
): Promise<Result<Value>> {
  try {
    const done = await work(transaction);
    await (done.ok && isKept(done.value) ? transaction.commit() : transaction.rollback()).execute();
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
