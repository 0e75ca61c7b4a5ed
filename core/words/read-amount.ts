import type { CurrencyCode } from "./currency.ts";
import { type Minor, readMoney } from "./money.ts";
import { bad, problem, type Result } from "./problem.ts";

// In coins: a thousand million pounds, a hundred thousand million yen. A month of five sessions of four
// days at a hundredfold rate stays below 2^53 with it: 1e11 × 96 h × 100 × 5 = 4.8e15.
const MOST = 100_000_000_000;

/**
 * An amount that is asked or paid: not negative and not beyond 1e11 coins.
 * Problems: those of readMoney, "money-negative", "money-absurd".
 */
export function readAmount(text: string, currency: CurrencyCode, place: string): Result<Minor> {
  const read = readMoney(text, currency, place);
  if (!read.ok) return read;
  if (read.value < 0) {
    const says = `${text.trim()} is below nought.`;
    return bad(problem("money-negative", place, says, "Give what is paid, 0 or more."));
  }
  if (read.value > MOST) {
    const says = `${text.trim()} is too much to be meant.`;
    return bad(problem("money-absurd", place, says, "Look at the figure again."));
  }
  return read;
}
