import type { Locale } from "#core/words";
import { monthOf, weekdayOf } from "./words-of-dates.ts";

/** A date in a line as it is written: parts may be missing, "26" in "26–30 October" has only its day. */
export type WrittenDate = {
  readonly day: number;
  readonly month?: number;
  readonly year?: number;
  /** the day of the week beside it, 1 is Monday */
  readonly weekday?: number;
};

/** The dates of a line in their order, and the words that are left when they are taken out. */
export type FoundDates = { readonly dates: readonly WrittenDate[]; readonly words: string };

const ORDINAL = "(\\d{1,2})(?:st|nd|rd|th)?";
const UNTIL = "(?:-|–|—|to|until|till|through)";
const WORD = "((?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*)\\.?";
const YEAR = "(?:,?\\s+(\\d{4})\\b)?";
const WEEKDAY = "(?:\\b((?:mon|tue|wed|thu|fri|sat|sun)[a-z]*)\\.?,?\\s+(?:the\\s+)?)?";

/**
 * Finds "2026-10-26", "26/10/2026", "Mon 26th October 2026", "October 26, 2026", and of "26–30 October" both ends.
 * Numbers alone have the day first, in en-US the month. Nothing is judged here: "31/02/2026" is found too.
 */
export function findDates(line: string, locale: Locale): FoundDates {
  const found: { readonly at: number; readonly length: number; readonly dates: readonly WrittenDate[] }[] =
    [];
  let rest = line;
  for (const { pattern, read } of patterns(locale)) {
    rest = rest.replace(pattern, (...match: readonly unknown[]) => {
      const groups = match.slice(0, -2).map((it) => (typeof it === "string" ? it : undefined));
      const dates = read(groups);
      const [all = ""] = groups;
      const at = match.at(-2);
      if (dates === null || typeof at !== "number") return all;
      found.push({ at, length: all.length, dates });
      // as long as before, so that later places still count from the same beginning
      return "\uE000".repeat(all.length);
    });
  }
  const dates = found.toSorted((a, b) => a.at - b.at).flatMap((it) => it.dates);
  return { dates, words: tidy(rest) };
}

type Groups = readonly (string | undefined)[];
type Pattern = { readonly pattern: RegExp; readonly read: (groups: Groups) => readonly WrittenDate[] | null };

function patterns(locale: Locale): readonly Pattern[] {
  return [
    { pattern: /\b(\d{4})-(\d{1,2})-(\d{1,2})\b/g, read: ([, y, m, d]) => [numbers(d, m, y)] },
    {
      pattern: /\b(\d{1,2})[/.](\d{1,2})[/.](\d{4}|\d{2})\b/g,
      read: ([, a, b, y]) => [locale === "en-US" ? numbers(b, a, y) : numbers(a, b, y)],
    },
    // 26–30 October 2026, Mon 26th to Fri 30th October
    {
      pattern: new RegExp(
        `${WEEKDAY}\\b${ORDINAL}\\s*${UNTIL}\\s*${WEEKDAY}${ORDINAL}\\s+${WORD}\\b${YEAR}`,
        "gi",
      ),
      read: ([, day, from, other, until, name, y]) => pair([name, from, y, day], [name, until, y, other]),
    },
    // October 26–30, 2026
    {
      pattern: new RegExp(`\\b${WORD}\\s+${ORDINAL}\\s*${UNTIL}\\s*${ORDINAL}\\b${YEAR}`, "gi"),
      read: ([, name, from, until, y]) => pair([name, from, y], [name, until, y]),
    },
    // Monday 26th of October 2026
    {
      pattern: new RegExp(`${WEEKDAY}\\b${ORDINAL}\\s+(?:of\\s+)?${WORD}${YEAR}`, "gi"),
      read: ([, weekday, d, name, y]) => named(name, d, y, weekday),
    },
    // Monday, October 26, 2026
    {
      pattern: new RegExp(`${WEEKDAY}\\b${WORD}\\s+${ORDINAL}\\b${YEAR}`, "gi"),
      read: ([, weekday, name, d, y]) => named(name, d, y, weekday),
    },
  ];
}

function numbers(day = "", month = "", year = ""): WrittenDate {
  // "26" is 2026: nobody plans a class for the last century
  const whole = year.length === 2 ? 2000 + Number(year) : Number(year);
  return { day: Number(day), month: Number(month), year: whole };
}

type Parts = Parameters<typeof named>;

function pair(from: Parts, until: Parts): readonly WrittenDate[] | null {
  const ends = [named(...from), named(...until)];
  return ends.some((it) => it === null) ? null : ends.flatMap((it) => it ?? []);
}

function named(name = "", day = "", year?: string, weekday?: string): readonly WrittenDate[] | null {
  const month = monthOf(name);
  if (month === undefined) return null;
  const dayOfWeek = weekday === undefined ? undefined : weekdayOf(weekday);
  return [
    {
      day: Number(day),
      month,
      ...(year === undefined ? {} : { year: Number(year) }),
      ...(dayOfWeek === undefined ? {} : { weekday: dayOfWeek }),
    },
  ];
}

/** What is left of a line beside its dates, without the marks and little words that joined them. */
function tidy(rest: string): string {
  return rest
    .replace(/\uE000+\s*(?:-|–|—|to|until|till|through|and|\.\.)?\s*(?=\uE000)/gi, "")
    .replace(/\uE000+/g, " ")
    .replace(/\b(?:from|on|the)\s*$/i, "")
    .replace(/\(\s*\)/g, " ")
    .replace(/^[\s:,;–—-]+|[\s:,;–—-]+$/g, "")
    .replace(/\s+/g, " ")
    .trim();
}
