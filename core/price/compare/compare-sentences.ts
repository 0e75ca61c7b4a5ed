import { Fraction } from "fraction.js";
import type { ChangeJson } from "../change/change-json.ts";
import { plainDecimal } from "../chance-text.ts";
import type { AmountWriter } from "../reply.ts";
import type { Comparison, Excluded, HallLine } from "./compare-types.ts";
import type { Differing } from "./differing-orders.ts";
import { type Measure, ordered } from "./hall-lines.ts";

export type ComparedInWords = {
  readonly comparison: Comparison;
  readonly lines: readonly HallLine[];
  readonly cannot: readonly Excluded[];
  readonly measure: Measure;
  readonly differences: readonly Differing[];
  readonly changes: readonly ChangeJson[];
  readonly write: AmountWriter;
};

// Six halls have fifteen pairs; more than the first few of them nobody reads in sentences.
const MOST_DIFFERENCES = 6;

/** The answer first: who leads and by how much, where the orders differ, who is left out, what would change it. */
export function compareSentences(compared: ComparedInWords): readonly string[] {
  const { lines, cannot, differences, changes, comparison } = compared;
  const [nearest] = changes.filter(({ at }) => at !== null);
  return [
    ...ordered(lines, "expected", compared.measure)
      .slice(0, 1)
      .map((line) => leaderSentence(line, compared)),
    ...(differences.length > 0 || lines.length < 2
      ? differences.slice(0, MOST_DIFFERENCES).map(({ says }) => says)
      : [sameOrderSentence(lines)]),
    ...cannot.map(({ said, why }) => `${said} is left out: ${why}.`),
    ...notStated(lines),
    ...(nearest === undefined
      ? ["No single figure, within reason, would change which hall comes first."]
      : [nearest.says]),
    ...(comparison.margin.lte(0)
      ? ["One person brings no more than she costs, so the emptiest hall loses least."]
      : []),
    "The hall’s own posted number and the fire service decide how many people may be in the room.",
  ];
}

const measured: Readonly<Record<Measure, string>> = {
  perSession: "a session",
  perYear: "a year",
  perHour: "an hour from door to door",
};

function leaderSentence(
  { candidate, expected }: HallLine,
  { comparison, measure, write }: ComparedInWords,
): string {
  const amount = (value: number): string => write(new Fraction(Math.round(value)), comparison.currency);
  const people = plainDecimal(comparison.demand.mean, 1);
  const sums = `${amount(expected.perSession)} a session, ${amount(expected.perYear)} a year of ${candidate.sessions} sessions, ${amount(expected.perHour)} an hour from door to door`;
  return `With ${people} people who would like to come, ${candidate.said} leaves most ${measured[measure]}: ${sums}.`;
}

function sameOrderSentence(lines: readonly HallLine[]): string {
  const names = ordered(lines, "expected", "perSession").map(({ candidate }) => candidate.said);
  return `By the session, the year and the hour, as it is and full, the order is the same: ${names.join("; ")}.`;
}

function notStated(lines: readonly HallLine[]): readonly string[] {
  const names = [
    ...new Set(
      lines.filter(({ candidate }) => !candidate.freeIsStated).map(({ candidate }) => candidate.name),
    ),
  ];
  return names.length === 0
    ? []
    : [`When it is free has not been stated for: ${names.join("; ")}. Ask before you choose.`];
}
