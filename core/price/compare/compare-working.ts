import { exactNumberText, exactText, type WorkingLine } from "#core/words";
import { Fraction } from "fraction.js";
import { plainDecimal } from "../chance-text.ts";
import { coinText, type PartLine, partLines } from "../reply.ts";
import type { Candidate, Comparison, HallLine } from "./compare-types.ts";
import { sumOf } from "./sum-of.ts";

/** For each hall: who comes, what they leave, what a session costs, and the year and the hour that follow. */
export function compareWorking(comparison: Comparison, lines: readonly HallLine[]): readonly PartLine[] {
  return lines.flatMap((line) => partLines(line.candidate.said, hallWorking(comparison, line)));
}

function hallWorking(comparison: Comparison, { candidate, expected }: HallLine): readonly WorkingLine[] {
  const { currency, margin, demand } = comparison;
  const coins = (amount: number): string => coinText(new Fraction(Math.round(amount)), currency);
  const cost = candidate.yearCost / candidate.sessions;
  const heads = plainDecimal(expected.heads, 3);
  return [
    {
      label: "People on average",
      sum: `${plainDecimal(demand.mean, 2)} would like to come, ${candidate.capacity} places`,
      amount: heads,
    },
    {
      label: "They leave",
      sum: `${heads} × ${exactText(margin, currency)}`,
      amount: coins(expected.heads * margin.valueOf()),
    },
    {
      label: "A session costs on average",
      sum: `${coins(candidate.yearCost)} ÷ ${candidate.sessions}`,
      amount: coins(cost),
    },
    { label: "A session leaves", sum: "", amount: coins(expected.perSession), total: true },
    {
      label: "A year leaves",
      sum: datesWords(candidate),
      amount: coins(expected.perYear),
    },
    {
      label: "An hour leaves",
      sum: `÷ ${exactNumberText(new Fraction(candidate.doorToDoor))} min × 60`,
      amount: coins(expected.perHour),
    },
  ];
}

/** "39 of 46 dates; lost: 6 to half-term, 1 to polling station" */
export function datesWords({ sessions, lostTo }: Pick<Candidate, "sessions" | "lostTo">): string {
  const all = `${sessions} of ${sessions + sumOf(lostTo)} dates`;
  if (lostTo.length === 0) return all;
  return `${all}; lost: ${lostTo.map(({ why, dates }) => `${dates} to ${why}`).join(", ")}`;
}
