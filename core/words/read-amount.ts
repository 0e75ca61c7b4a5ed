import type { CurrencyCode } from "./currency.ts";
import { type Minor, minor, readMoney } from "./money.ts";
import { bad, problem, type Result } from "./problem.ts";

// Keeps every product of an amount with hours, factors and heads inside whole numbers, in any currency.
const MOST_MAJOR = "1000000000";

/**
 * An amount that is asked or paid: not negative and not beyond a thousand million.
 * Problems: those of readMoney, "money-negative", "money-absurd".
 */
export function readAmount(text: string, currency: CurrencyCode, place: string): Result<Minor> {
  const read = readMoney(text, currency, place);
  if (!read.ok) return read;
  if (read.value < 0) {
    const says = `${text.trim()} is below nought.`;
    return bad(problem("money-negative", place, says, "Give what is paid, 0 or more."));
  }
  const most = readMoney(MOST_MAJOR, currency, place);
  if (read.value > (most.ok ? most.value : minor(0))) {
    return bad(
      problem("money-absurd", place, `${text.trim()} is too much to be meant.`, "Look at the figure again."),
    );
  }
  return read;
}
