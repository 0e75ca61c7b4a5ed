import { bad, type CurrencyCode, good, problem, readDate, type Result, together } from "#core/words";
import { Temporal } from "temporal-polyfill";
import type { YearMoneyDocument } from "./money-document.ts";
import type { Move } from "./money-types.ts";
import { readSpread } from "./read-amounts.ts";

type MoveDocument = YearMoneyDocument["moves"][number];

/**
 * Money besides the classes: on one date, or again every so many months until the last day; the 31st is the last day
 * of a shorter month. Problems: "every-months" and those of amounts, bands and dates.
 */
export function readMove(
  move: MoveDocument,
  currency: CurrencyCode,
  lastDay: Temporal.PlainDate,
  place: string,
): Result<Move> {
  const read = together({
    amount: readSpread(move.amount, currency, `${place}.amount`),
    on: readDate(move.on, `${place}.on`),
    until: move.until === undefined ? good(lastDay) : readDate(move.until, `${place}.until`),
    every: readEvery(move.everyMonths, place),
  });
  if (!read.ok) return read;
  const { amount, on, until, every } = read.value;
  const last = Temporal.PlainDate.compare(until, lastDay) < 0 ? until : lastDay;
  const { name, way, business } = move;
  return good({ name, way, business, amount, dates: datesOf(on, last, every) });
}

function readEvery(months: number | undefined, place: string): Result<number | null> {
  if (months === undefined) return good(null);
  if (Number.isInteger(months) && months >= 1 && months <= 36) return good(months);
  const says = `Every ${months} months cannot be meant.`;
  return bad(
    problem("every-months", `${place}.everyMonths`, says, "Give whole months from 1 to 36, or leave it out."),
  );
}

// a monthly payment that began a hundred years ago
const MOST = 1200;

function datesOf(on: Temporal.PlainDate, last: Temporal.PlainDate, every: number | null): readonly string[] {
  if (every === null) return [on.toString()];
  const dates: string[] = [];
  for (let count = 0; count < MOST; count += 1) {
    const date = on.add({ months: count * every });
    if (Temporal.PlainDate.compare(date, last) > 0) break;
    dates.push(date.toString());
  }
  return dates;
}
