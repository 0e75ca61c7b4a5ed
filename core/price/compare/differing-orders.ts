import type { CurrencyCode } from "#core/words";
import { Fraction } from "fraction.js";
import type { AmountWriter } from "../reply.ts";
import type { HallLine } from "./compare-types.ts";
import { isAhead, type Measure, ordered } from "./hall-lines.ts";

/** Two halls that a session and another measure, or people and a full hall, put in different orders, and why. */
export type Differing = {
  /** ahead by the session */
  readonly first: string;
  readonly second: string;
  readonly by: "year" | "hour" | "full hall";
  readonly says: string;
};

type Writer = (amount: number) => string;

/**
 * Where the three orders differ, pair by pair, in words; those that are ahead by the session come first. Two halls
 * are told of once for each measure, at the time and with the mats with which they come first.
 */
export function differingOrders(
  lines: readonly HallLine[],
  currency: CurrencyCode,
  write: AmountWriter,
): readonly Differing[] {
  const amount: Writer = (value) => write(new Fraction(Math.round(value)), currency);
  const told = new Set<string>();
  return pairs(ordered(lines, "expected", "perSession")).flatMap(([first, second]) => {
    const found = [byYear, byHour, byFullHall].flatMap((by) => by(first, second, amount));
    return found.filter(({ by }) => {
      const key = `${first.candidate.hall} ${second.candidate.hall} ${by}`;
      const fresh = !told.has(key);
      told.add(key);
      return fresh;
    });
  });
}

function pairs(lines: readonly HallLine[]): readonly (readonly [HallLine, HallLine])[] {
  return lines.flatMap((first, index) =>
    lines
      .slice(index + 1)
      .flatMap((second) =>
        isAhead(first, second, "expected", "perSession") ? [[first, second] as const] : [],
      ),
  );
}

function said({ candidate }: HallLine): string {
  return candidate.said;
}

/** "By the session A leaves 3.10 more than B" */
function bySession(first: HallLine, second: HallLine, amount: Writer): string {
  return `By the session ${said(first)} leaves ${amount(more(first, second, "perSession"))} more than ${said(second)}`;
}

function more(first: HallLine, second: HallLine, measure: Measure): number {
  return first.expected[measure] - second.expected[measure];
}

function byYear(first: HallLine, second: HallLine, amount: Writer): readonly Differing[] {
  if (!isAhead(second, first, "expected", "perYear")) return [];
  const [few, many] = [first.candidate.sessions, second.candidate.sessions];
  const says = `${bySession(first, second, amount)}, but by the year ${said(second)} leaves ${amount(more(second, first, "perYear"))} more: it can be had on ${many} dates and ${said(first)} on ${few}${lostWords(first)}.`;
  return [{ first: said(first), second: said(second), by: "year", says }];
}

function byHour(first: HallLine, second: HallLine, amount: Writer): readonly Differing[] {
  if (!isAhead(second, first, "expected", "perHour")) return [];
  const [long, short] = [first.candidate.doorToDoor, second.candidate.doorToDoor];
  const says = `${bySession(first, second, amount)}, but by the hour ${said(second)} leaves ${amount(more(second, first, "perHour"))} more: it takes ${short} minutes from door to door and ${said(first)} ${long}.`;
  return [{ first: said(first), second: said(second), by: "hour", says }];
}

function byFullHall(first: HallLine, second: HallLine, amount: Writer): readonly Differing[] {
  if (!isAhead(second, first, "full", "perSession")) return [];
  const gain = amount(second.full.perSession - first.full.perSession);
  const says = `${bySession(first, second, amount)}, but when both are full ${said(second)} leaves ${gain} more: it takes ${second.candidate.capacity} people and ${said(first)} ${first.candidate.capacity}.`;
  return [{ first: said(first), second: said(second), by: "full hall", says }];
}

/** ", with 4 lost to half-term and 1 lost to floor resealed" */
function lostWords({ candidate: { lostTo } }: HallLine): string {
  if (lostTo.length === 0) return "";
  return `, with ${lostTo.map(({ why, dates }) => `${dates} lost to ${why}`).join(" and ")}`;
}
