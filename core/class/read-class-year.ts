import {
  bad,
  type CurrencyCode,
  good,
  problem,
  type Result,
  readAmount,
  readDate,
  together,
  togetherInOrder,
} from "#core/words";
import type { DateSpan } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import type { ClassDocument } from "./class-document.ts";
import type { ClassParts, Closure } from "./class-parts.ts";

type YearDocument = ClassDocument["year"];
type YearParts = Pick<ClassParts, "year" | "closures" | "fixedPerYear">;

/** Problems besides those of dates and amounts: "year-backwards", "year-too-long" and those of closures. */
export function readClassYear(document: YearDocument, currency: CurrencyCode): Result<YearParts> {
  return together({
    year: readYear(document),
    closures: togetherInOrder(document.closures.map((closure, index) => readClosure(closure, index))),
    fixedPerYear: readAmount(document.fixedPerYear, currency, "year.fixedPerYear"),
  });
}

const MOST_YEARS = 2;

function readYear(document: YearDocument): Result<DateSpan> {
  const read = together({
    from: readDate(document.from, "year.from"),
    until: readDate(document.until, "year.until"),
  });
  if (!read.ok) return read;
  const { from, until } = read.value;
  if (Temporal.PlainDate.compare(until, from) < 0) {
    const next = "Give a last day on or after the first.";
    return bad(
      problem("year-backwards", "year.until", `The year ends on ${document.until}, before it begins.`, next),
    );
  }
  if (Temporal.PlainDate.compare(until, from.add({ years: MOST_YEARS })) < 0) return read;
  const says = `From ${document.from} until ${document.until} is more than ${MOST_YEARS} years.`;
  return bad(problem("year-too-long", "year.until", says, "Plan a year or two at a time."));
}

/** Problems: "closure-backwards", "closure-without-reason". */
function readClosure(closure: YearDocument["closures"][number], index: number): Result<Closure> {
  const place = `year.closures[${index}]`;
  const read = together({
    from: readDate(closure.from, `${place}.from`),
    until: readDate(closure.until, `${place}.until`),
    why: readReason(closure.why, `${place}.why`),
  });
  if (!read.ok || Temporal.PlainDate.compare(read.value.until, read.value.from) >= 0) return read;
  const says = `A closure ends on ${closure.until}, before it begins on ${closure.from}.`;
  return bad(problem("closure-backwards", `${place}.until`, says, "Give a last day on or after the first."));
}

function readReason(why: string, place: string): Result<string> {
  if (why.trim() !== "") return good(why);
  const next = "Say why, like Christmas or floor resealed, so that the lost date can be explained.";
  return bad(problem("closure-without-reason", place, "A closure has no reason.", next));
}
