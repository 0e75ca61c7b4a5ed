import { guessesBehind, isPlanningGuess, planningOf } from "#core/class";
import { chanceText, type HeadsJson, type PriceJson, type UncertainHeads, uncertainHeads } from "#core/price";
import { Fraction } from "fraction.js";
import { peopleWords, priceAmounts } from "./price-amounts.ts";
import { atTheClass, type ReadyQuestion } from "./price-question.ts";
import type { PricesAsked } from "./prices-asked.ts";
import type { PriceSheetInput } from "./price-sheet.ts";
import { type SheetPart, saidOn, type SheetWorking, unsound } from "./sheet-part.ts";

/** One number of people, how often it comes, and what the evening then leaves. */
export type ChanceRow = {
  readonly heads: number;
  readonly chance: number;
  /** the same if people came by chance alone */
  readonly plainChance: number;
  readonly loses: boolean;
  readonly says: string;
  readonly plainSays: string;
  readonly leaves: string;
};

export type SurePart = SheetPart<{ readonly rows: readonly ChanceRow[]; readonly uneven: boolean }>;

/** How surely an evening and a term pay, when nobody knows how many will come. */
export function surePart(input: PriceSheetInput, asked: PricesAsked): SurePart {
  if (asked.kind !== "ready") return asked;
  if (!asked.answer.ok) return unsound(asked.answer.problems.map(atTheClass));
  const json = asked.answer.value;
  const plain = byChanceAlone(asked);
  const uneven = planningOf(input.document).dispersion !== 1;
  const says = [
    ...lossSentences(json.heads),
    ...leavesSentences(json.heads, input),
    ...(uneven ? [plainSentence(plain)] : []),
    "Each evening is taken by itself; a term in which people stay away together is less sure than this.",
  ];
  const { document } = input;
  const guesses = [
    ...guessesBehind(document, "ordinary evening"),
    ...(["dispersion", "termEvenings"] as const)
      .filter((name) => isPlanningGuess(document, name))
      .map((name) => `planning.${name}`),
  ];
  return {
    ...saidOn(input, [...new Set(guesses)], says, workingsOf(json)),
    rows: rowsOf(json.heads, plain, input),
    uneven,
  };
}

/** The same evening with people who come by chance alone; its problems would have been those of the question. */
function byChanceAlone({ evening, document }: ReadyQuestion): Plain {
  const { yield: brings, costPerHead, cost, heads } = evening;
  return uncertainHeads({
    demand: { kind: "poisson", mean: heads.valueOf() },
    capacity: document.capacity,
    margin: brings.sub(costPerHead),
    cost: new Fraction(cost),
    sessions: document.sessions ?? 1,
  });
}

type Plain = Pick<UncertainHeads, "chances" | "chanceOfLoss" | "term">;

function lossSentences({ chanceOfLoss, term, usualHeads, chanceFull }: HeadsJson): readonly string[] {
  const [few, many] = usualHeads;
  const evenings = term.sessions === 1 ? "a term of 1 evening" : `a term of ${term.sessions} evenings`;
  return [
    `An evening loses money with a chance of ${chanceText(chanceOfLoss)}, ${evenings} with ${chanceText(term.chanceOfLoss)}.`,
    `Eight evenings of ten have ${few === many ? peopleWords(few) : `${few} to ${peopleWords(many)}`}; the hall is full ${chanceText(chanceFull)} of the time.`,
  ];
}

function leavesSentences(heads: HeadsJson, input: PriceSheetInput): readonly string[] {
  const { write, writeAbsolute } = priceAmounts(input);
  const { expectedContribution, contributionAtMean, expectedHeads, term, worstQuarter } = heads;
  const short = Number(expectedContribution) < 0;
  const off = Number(contributionAtMean) - Number(expectedContribution);
  return [
    `On average it ${short ? `is ${writeAbsolute(expectedContribution)} short` : `leaves ${write(expectedContribution)}`} with ${peopleWords(expectedHeads)} on mats; the worst quarter of the evenings average ${write(worstQuarter)}.`,
    ...(Math.abs(off) < 0.005
      ? []
      : [
          `The sum with the mean alone says ${write(contributionAtMean)}, too ${off > 0 ? "much" : "little"}, because a full hall turns people away.`,
        ]),
    `Nine terms of ten leave at least ${write(term.nineOfTen)}.`,
  ];
}

function plainSentence({ chanceOfLoss, term }: Plain): string {
  return `If people came by chance alone it would be ${chanceText(chanceOfLoss)} and ${chanceText(term.chanceOfLoss)}.`;
}

function rowsOf(heads: HeadsJson, plain: Plain, input: PriceSheetInput): readonly ChanceRow[] {
  const { write } = priceAmounts(input);
  return heads.chances.map(({ heads: count, chance, contribution }, at) => {
    const plainChance = plain.chances[at]?.chance ?? 0;
    return {
      heads: count,
      chance,
      plainChance,
      loses: Number(contribution) < 0,
      says: chanceText(chance),
      plainSays: chanceText(plainChance),
      leaves: write(contribution),
    };
  });
}

function workingsOf({ working }: PriceJson): readonly SheetWorking[] {
  return [{ title: "An evening on average", lines: working.filter(({ part }) => part === "heads") }];
}
