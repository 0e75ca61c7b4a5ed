import { contributionOf, type EveningAnswer, type MoneyWriter } from "#core/price";
import { type ExactMinor, moneyText, roundToMinor } from "#core/words";
import { Fraction } from "fraction.js";

export type HeadsMark = "pays for the room" | "ordinary evening" | "full";

/** One line of the table over heads, and one dot of its plot. */
export type HeadsRow = {
  readonly heads: number;
  readonly takings: string;
  readonly leaves: string;
  /** what it leaves in major units of the currency, to the coin, for a plot */
  readonly amount: number;
  readonly marks: readonly HeadsMark[];
};

const LEAST_ROWS = 20;
const MOST_ROWS = 60;

/**
 * What an evening leaves with nobody, one, two … people: as many as there is room for, or up to the
 * ordinary evening and the break-even while nobody knows the room; 60 rows at most.
 */
export function headsRows(
  answer: EveningAnswer,
  capacity: number | null,
  money: MoneyWriter,
): readonly HeadsRow[] {
  const most = Math.min(
    MOST_ROWS,
    capacity ?? Math.max(LEAST_ROWS, ordinaryHeads(answer), answer.breakEven ?? 0),
  );
  const margin = answer.yield.sub(answer.costPerHead);
  return Array.from({ length: most + 1 }, (_, heads): HeadsRow => {
    const leaves = contributionOf(new Fraction(heads), margin, answer.cost);
    return {
      heads,
      takings: money(answer.yield.mul(heads)),
      leaves: money(leaves),
      amount: majorUnits(leaves, answer),
      marks: marksAt(heads, answer, capacity),
    };
  });
}

/** An ordinary evening of 9.5 people is marked at the nearest row, 10. */
function ordinaryHeads({ heads }: EveningAnswer): number {
  return Number(heads.round());
}

function marksAt(heads: number, answer: EveningAnswer, capacity: number | null): readonly HeadsMark[] {
  const marks: HeadsMark[] = [];
  if (heads === answer.breakEven) marks.push("pays for the room");
  if (heads === ordinaryHeads(answer)) marks.push("ordinary evening");
  if (heads === capacity) marks.push("full");
  return marks;
}

function majorUnits(exact: ExactMinor, { currency }: EveningAnswer): number {
  return Number(moneyText(roundToMinor(exact), currency));
}
