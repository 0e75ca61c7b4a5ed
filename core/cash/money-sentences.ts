import type { AmountWriter } from "#core/price";
import { exactNumber } from "#core/words";
import type { MoneyFound } from "./money-found.ts";
import type { MoneyYear } from "./money-types.ts";
import { owedAt } from "./owed-at.ts";
import { potAt } from "./pot-at.ts";
import { pathSentences } from "./path-sentences.ts";
import { taxSentences } from "./tax-sentences.ts";

export type Say = (coins: number) => string;

export type MoneySays = {
  readonly cash: readonly string[];
  readonly tax: readonly string[];
  readonly path: readonly string[];
  readonly caution: readonly string[];
};

/** The answer first: when the bank is lowest; then what to keep there, what tax takes, and when what can go. */
export function moneySentences(year: MoneyYear, found: MoneyFound, write: AmountWriter): MoneySays {
  const say: Say = (coins) => write(exactNumber(coins), year.currency);
  return {
    cash: cashSentences(year, found, say),
    tax: year.tax === null ? [] : taxSentences(year, year.tax, found.cases.middle, say),
    path: year.path === null || found.path === null ? [] : pathSentences(year, year.path, found.path, say),
    caution: [
      ...guessSentence(year.guesses),
      year.tax === null
        ? "Tax is not in this."
        : "Tax is an estimate from dated rates that you can change; the tax authority or an accountant decides.",
    ],
  };
}

function cashSentences(year: MoneyYear, found: MoneyFound, say: Say): readonly string[] {
  const { book } = found.cases.middle;
  const over = book.months.find(({ lowest }) => lowest < 0);
  return [
    `The bank is lowest on ${book.lowestOn} with ${say(book.lowest)}, and holds ${say(book.end)} at the end of ${year.until.toString()}.`,
    ...(over === undefined
      ? []
      : [
          `That is below nought, in ${over.month} for the first time: ${say(-book.lowest)} more is needed by then, or something has to be paid later.`,
        ]),
    ...bandSentence(found, say),
    reserveSentence(year, found, say),
    ...owedSentence(found.cases.middle, say),
    ...hersSentence(year, found.cases.middle, say),
  ];
}

function bandSentence({ uncertain, cases }: MoneyFound, say: Say): readonly string[] {
  if (!uncertain) return [];
  const { low, high } = cases;
  return [
    `With every uncertain figure at its low at once it is lowest on ${low.book.lowestOn} with ${say(low.book.lowest)} and ends with ${say(low.book.end)}; with every one at its high, ${say(high.book.lowest)} and ${say(high.book.end)}. Chance seldom goes so far either way.`,
  ];
}

function reserveSentence(year: MoneyYear, { uncertain, cases }: MoneyFound, say: Say): string {
  const { reserve } = cases.middle;
  const more = reserve.advised - year.opening;
  const have =
    more <= 0
      ? `You have ${say(year.opening)}: enough.`
      : `You have ${say(year.opening)}: ${say(more)} short.`;
  const why =
    reserve.fall === 0
      ? `it never falls below that, and a month of what goes out is ${say(reserve.month)}`
      : `it falls by ${say(reserve.fall)} to its lowest, and a month of what goes out, ${say(reserve.month)}, stays`;
  const low = uncertain ? ` In the low case ${say(cases.low.reserve.advised)}.` : "";
  return `Have ${say(reserve.advised)} there on ${year.from.toString()}: ${why}. ${have}${low}`;
}

/** What is owed in classes on the lowest day; where that is nothing, the most that is owed at any day's end. */
function owedSentence({ owed, book }: MoneyFound["cases"]["middle"], say: Say): readonly string[] {
  if (owed.length === 0) return [];
  const then = owedAt(owed, book.lowestOn);
  if (then > 0) {
    const more = then - book.lowest;
    return [
      `On the lowest day ${say(then)} is owed in classes that passes have paid and that are not taught yet${more > 0 ? `: ${say(more)} more than the bank then holds` : ""}.`,
    ];
  }
  const days = owed.flatMap(({ after }) => after.map(({ date }) => date)).sort();
  const most = days.reduce(
    (best, date) => {
      const coins = owedAt(owed, date);
      return coins > best.coins ? { date, coins } : best;
    },
    { date: "", coins: 0 },
  );
  if (most.coins === 0) return [];
  return [
    `At most ${say(most.coins)} is owed in classes that passes have paid and that are not taught yet, on ${most.date}.`,
  ];
}

/** The month's end at which least of the bank is hers: what lies in the tax pot and what is owed is not. */
function hersSentence(
  { tax }: MoneyYear,
  { book, owed, taxYears, taxDates, flows }: MoneyFound["cases"]["middle"],
  say: Say,
): readonly string[] {
  if (tax === null && owed.length === 0) return [];
  const ends = book.months.map(({ month, end }) => {
    const day = `${month}-31`;
    const pot = tax === null ? 0 : potAt(day, tax, taxYears, flows, taxDates);
    const classes = owedAt(owed, day);
    return { month, end, pot, classes, hers: end - pot - classes };
  });
  const least = ends.reduce((best, it) => (it.hers < best.hers ? it : best));
  if (least.pot === 0 && least.classes === 0) return [];
  const hers = least.hers < 0 ? `${say(-least.hers)} is missing` : `${say(least.hers)} is yours`;
  return [
    `Least of it is yours at the end of ${least.month}: of ${say(least.end)}, ${say(least.pot)} belongs in the tax pot and ${say(least.classes)} is owed in classes; ${hers}.`,
  ];
}

function guessSentence(guesses: readonly string[]): readonly string[] {
  if (guesses.length === 0) return [];
  return [
    guesses.length === 1
      ? "One of these figures is a guess."
      : `${guesses.length} of these figures are guesses.`,
  ];
}
