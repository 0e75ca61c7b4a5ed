import type { Result } from "#core/words";
import type { Transaction } from "kysely";
import type { Ground } from "./ground.ts";
import type { Tables } from "./tables.ts";

type Work<Value> = (transaction: Transaction<Tables>) => Promise<Result<Value>>;

/** All changes or none: a problem, or a value that is not to be kept, rolls the transaction back. */
export async function allOrNothing<Value>(
  ground: Ground,
  work: Work<Value>,
  isKept: (value: Value) => boolean = () => true,
): Promise<Result<Value>> {
  const transaction = await ground.begin();
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
