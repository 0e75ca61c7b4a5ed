import { bad, good, problem, type Result, together } from "#core/words";
import { readCount, readMean, readShare } from "../read-count.ts";
import type { Alike, RollRates } from "../roll/roll-rates.ts";
import type { OutlookDocument } from "./outlook-document.ts";

export type RollRead = {
  readonly rates: RollRates;
  readonly alike: Alike;
  readonly regulars: number;
  readonly startedBefore: boolean;
  readonly onRoll: number | null;
  readonly echo: number;
  /** people expected to an opening ahead */
  readonly opensTo: number | null;
  readonly luck: number;
};

/** Problems: "mean-out-of-range", "share-out-of-range", "share-certain", "alike-out-of-range", those of counts. */
export function readRoll({
  roll,
  regulars,
  startedBefore,
  onRoll,
  opening,
}: OutlookDocument): Result<RollRead> {
  const read = together({
    newcomers: readMean(roll.newcomers, "roll.newcomers", "newcomers a week", { least: 0.01, most: 200 }),
    stays: readOpenShare(roll.stays, "roll.stays", "who stay"),
    attends: readOpenShare(roll.attends, "roll.attends", "of the sessions"),
    leaves: readOpenShare(roll.leaves, "roll.leaves", "who stop each week"),
    alike: readAlike(roll.alike),
    regulars: readCount(regulars, "regulars", "regulars", { least: 0, most: 2000 }),
    luck: readShare(roll.luck, "roll.luck", "A luck of evenings", 0.8),
    echo: readShare(roll.echo, "roll.echo", "An echo", 5),
    opensTo:
      opening === undefined
        ? good(null)
        : readMean(opening, "opening", "people at the opening", { least: 0, most: 1000 }),
    onRoll:
      onRoll === undefined
        ? good(null)
        : readMean(onRoll, "onRoll", "regulars before", { least: 1, most: 2000 }),
  });
  if (!read.ok) return read;
  const { newcomers, stays, attends, leaves, ...rest } = read.value;
  return good({ rates: { newcomers, stays, attends, leaves }, startedBefore, ...rest });
}

/** A guess of nobody or of everybody is no guess: no register could move it. */
function readOpenShare(value: number, place: string, of: string): Result<number> {
  if (value >= 0.001 && value <= 0.999) return good(value);
  const says = `A share of ${value} ${of} cannot be a guess.`;
  const next =
    value > 1 && value < 100
      ? `Give a share: ${value / 100} for ${value} %.`
      : "Give a share from 0.001 to 0.999; the register will move it.";
  return bad(problem("share-certain", place, says, next));
}

function readAlike(alike: number | null): Result<Alike> {
  if (alike === null || (alike >= 2 && alike <= 1000)) return good(alike);
  const says = `${alike} cannot be how alike regulars are in stopping.`;
  const next = "Give 2 for very unlike, 4 as usual, or null when all are the same.";
  return bad(problem("alike-out-of-range", "roll.alike", says, next));
}
