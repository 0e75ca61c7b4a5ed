import { type ClassYear, classYear, headsRange, hireOf, onlyNeeded } from "#core/class";
import { readCurrency } from "#core/price";
import { exactNumber } from "#core/words";
import { Fraction } from "fraction.js";
import type { ClassSheetInput } from "./class-sheet-input.ts";
import { dateWords, monthWords } from "./date-words.ts";
import { hireKnown } from "./hire-known.ts";
import { type SheetPart, said, unsound } from "./sheet-part.ts";

export type MonthRow = {
  /** "May 2027" */
  readonly month: string;
  readonly sessions: number;
  readonly hire: string;
  readonly leaves: string;
};

export type LostRow = { readonly date: string; readonly says: string };

export type YearPart = SheetPart<{
  readonly sessions: number;
  readonly months: readonly MonthRow[];
  readonly lost: readonly LostRow[];
}>;

/** What a year of the class's real dates leaves, month by month. */
export function yearPart(input: ClassSheetInput): YearPart {
  const { document, practice, today } = input;
  const known = hireKnown(input);
  if (known.kind === "missing") return known;
  const currency = readCurrency(practice.currency);
  if (!currency.ok) return unsound(currency.problems);
  const hire = hireOf(known.hall, currency.value);
  if (!hire.ok) return unsound(hire.problems);
  const needed = onlyNeeded(document, "year", currency.value, today);
  const read = classYear(needed, hire.value, currency.value);
  return read.ok ? readyYear(input, read.value) : unsound(read.problems);
}

function readyYear(input: ClassSheetInput, year: ClassYear): YearPart {
  const { money, practice } = input;
  const says = [
    leavesSentence(input, year),
    ...rangeSentences(input, year),
    ...costsSentences(input, year),
    ...lostSentences(year),
    CAUTION,
  ];
  return {
    ...said(input, "year", says, [{ title: "The year", lines: year.working }]),
    sessions: year.dates.length,
    months: year.months.map(({ month, sessions, hire, contribution }) => ({
      month: monthWords(month),
      sessions,
      hire: money(new Fraction(hire)),
      leaves: money(contribution),
    })),
    lost: year.lost.map(({ date, why }) => ({ date, says: `${dateWords(date, practice.locale)}: ${why}` })),
  };
}

const CAUTION =
  "Every evening is counted at its ordinary number of people and none is lost to illness. " +
  "What is left is before tax: ask the tax office or an accountant.";

function leavesSentence({ money, practice }: ClassSheetInput, year: ClassYear): string {
  const { locale } = practice;
  const count = year.dates.length === 1 ? "1 evening" : `${year.dates.length} evenings`;
  const when = `from ${dateWords(year.from, locale)} to ${dateWords(year.until, locale)}`;
  const fixed = year.fixed === 0 ? "" : ` after ${money(new Fraction(year.fixed))} of fixed costs`;
  const { leaves } = year;
  return leaves.lt(0)
    ? `A year of ${count} ${when} is ${money(leaves.abs())} short${fixed}.`
    : `A year of ${count} ${when} leaves ${money(leaves)}${fixed}.`;
}

/** While the number of people is a guess, the year with a quarter fewer and a quarter more. */
function rangeSentences({ document, capacity, money }: ClassSheetInput, year: ClassYear): readonly string[] {
  const range = headsRange(document, capacity?.capacity ?? null);
  if (range === null) return [];
  const [low, high] = range.map((heads) => money(leavesWith(heads, document.heads, year)));
  return [`How many come is a guess: with ${range[0]} it would be ${low}, with ${range[1]} ${high}.`];
}

function leavesWith(heads: number, ordinary: number, { leaves, margin, dates }: ClassYear): Fraction {
  return exactNumber(heads).sub(exactNumber(ordinary)).mul(margin).mul(dates.length).add(leaves);
}

/** Only when evenings differ: winter heating or a new rate. */
function costsSentences({ money }: ClassSheetInput, { costs }: ClassYear): readonly string[] {
  const all = costs.map(({ cost }) => cost);
  if (all.length < 2) return [];
  const [least, most] = [Math.min(...all), Math.max(...all)].map((cost) => money(new Fraction(cost)));
  return [`Over the year an evening costs from ${least} to ${most}.`];
}

function lostSentences({ lost }: ClassYear): readonly string[] {
  if (lost.length === 0)
    return ["No date of its weekday is closed: few halls are open every week of a year."];
  const reasons = [...new Set(lost.map(({ why }) => why))].map(
    (why) => `${why} ${lost.filter((it) => it.why === why).length}`,
  );
  return [`${lost.length === 1 ? "1 date is" : `${lost.length} dates are`} lost: ${reasons.join(", ")}.`];
}
