import type { PastAction } from "#app/record";
import type { ClassDocument } from "#core/class";
import { chargedSlot, type HallDocument, readHireTerms } from "#core/hall";
import { isCurrency, readDate } from "#core/words";
import type { PastClass } from "./past-class.ts";

/** Nothing is told after this moment. */
const TOLD_UNTIL = "2026-11-25T00:00:00Z";

/**
 * What the hall of a class charges for each evening, owed from that evening on, and its invoice for a month, which is
 * paid from the bank on the second of the next.
 */
export function hallCosts(
  past: PastClass,
  { minutes }: ClassDocument,
  hall: HallDocument,
): readonly PastAction[] {
  const due = past.evenings.map(({ date }) => ({ date, amount: chargeOf(hall, minutes, date) }));
  const months = [...new Set(due.map(({ date }) => date.slice(0, 7)))];
  const paid = months.map((month) => ({
    date: `${monthAfter(month)}-02`,
    amount: due.reduce((sum, { date, amount }) => (date.startsWith(month) ? sum + amount : sum), 0),
  }));
  return [
    ...due.map(({ date, amount }) =>
      cost(past, amount, date, `${date}T22:30:00Z`, "due", `${past.class}.${date}`),
    ),
    ...paid.map(({ date, amount }) => cost(past, amount, date, `${date}T10:00:00Z`, "due paid")),
  ].filter(({ at }) => at < TOLD_UNTIL);
}

function cost(
  { hall }: PastClass,
  amount: number,
  on: string,
  at: string,
  how: "due" | "due paid",
  session?: string,
): PastAction {
  const it = { kind: "write cost", cost: "hall", to: hall, amount, currency: "GBP", on, how } as const;
  return { at, do: session === undefined ? it : { ...it, session } };
}

function chargeOf({ hire, currency }: HallDocument, minutes: ClassDocument["minutes"], date: string): number {
  if (hire === undefined || currency === undefined || !isCurrency(currency))
    throw new RangeError("a hall of the demo without its hire");
  const [terms, day] = [readHireTerms(hire, currency, ""), readDate(date, "")];
  if (!terms.ok || !day.ok) throw new RangeError(`no charge on ${date}`);
  return chargedSlot(terms.value, minutes, day.value).hire;
}

/** "2026-12" after "2026-11", "2027-01" after "2026-12". */
function monthAfter(month: string): string {
  const [year = 0, number = 0] = month.split("-").map(Number);
  return number === 12 ? `${year + 1}-01` : `${year}-${String(number + 1).padStart(2, "0")}`;
}
