import { withoutNoise } from "../without-noise.ts";
import { bad, type CurrencyCode, good, problem, type Result, readDocument } from "#core/words";
import { Fraction } from "fraction.js";
import { type ChangeJson, changeJson } from "../change/change-json.ts";
import { type AmountWriter, coinText, plainAmount, type Reply } from "../reply.ts";
import { candidatesOf } from "./candidates.ts";
import { compareChanges } from "./compare-changes.ts";
import { type CompareDocument, compareDocumentSchema } from "./compare-document.ts";
import { compareSentences } from "./compare-sentences.ts";
import type { Comparison, Excluded, HallLine, Leaves, LostTo } from "./compare-types.ts";
import { compareWorking } from "./compare-working.ts";
import { type Differing, differingOrders } from "./differing-orders.ts";
import { hallLine, type Measure, ordered, type View } from "./hall-lines.ts";
import type { PartLine } from "../reply.ts";
import { sumOf } from "./sum-of.ts";
import { readComparison } from "./read-comparison.ts";

export type LeavesJson = {
  readonly heads: number;
  readonly perSession: string;
  readonly perYear: string;
  readonly perHour: string;
};

type Orders = Readonly<Record<Measure, readonly string[]>>;

/** Amounts are decimal strings to the coin; orders name the halls from the one that leaves most. */
export type CompareJson = {
  readonly format: "hallful/compare-answer@1";
  readonly sentences: readonly string[];
  readonly currency: string;
  readonly halls: readonly {
    readonly hall: string;
    readonly said: string;
    /** how the mats stand, where it is named */
    readonly arrangement: string | null;
    /** "Tuesday 18:30" */
    readonly slot: string;
    readonly capacity: number;
    readonly sessions: number;
    readonly lostDates: number;
    readonly lostTo: readonly LostTo[];
    readonly costPerSession: string;
    readonly doorToDoorMinutes: number;
    readonly expected: LeavesJson;
    readonly full: LeavesJson;
  }[];
  readonly excluded: readonly { readonly said: string; readonly why: string }[];
  readonly orders: Readonly<Record<View, Orders>>;
  readonly differences: readonly Differing[];
  readonly changes: readonly ChangeJson[];
  readonly working: readonly PartLine[];
};

/**
 * Compares halls for one class, with the same people and with each hall full: what a session, a year and an hour
 * from door to door leave, in what order, where the orders differ, and what would change who leads.
 * Problems: those of the document, all at once; "halls-none-left" when no hall can be had.
 */
export function compareAnswer(input: unknown, write: AmountWriter = plainAmount): Result<Reply<CompareJson>> {
  const read = readDocument(compareDocumentSchema, input);
  if (!read.ok) return read;
  const { value: document, unused } = read.value;
  const comparison = readComparison(document);
  if (!comparison.ok) return comparison;
  const { can, cannot } = candidatesOf(comparison.value);
  if (can.length === 0) return noneLeft(cannot);
  const lines = can.map((candidate) => hallLine(candidate, comparison.value.demand, comparison.value.margin));
  return good({ json: withoutNoise(compareJson(document, comparison.value, lines, cannot, write)), unused });
}

const measures = { session: "perSession", year: "perYear", hour: "perHour" } as const;

function compareJson(
  document: CompareDocument,
  comparison: Comparison,
  lines: readonly HallLine[],
  cannot: readonly Excluded[],
  write: AmountWriter,
): CompareJson {
  const { currency } = comparison;
  const measure = measures[document.by];
  const differences = differingOrders(lines, currency, write);
  const flips = compareChanges(
    comparison,
    lines.map(({ candidate }) => candidate),
    measure,
    document.guesses,
  );
  const changes = flips.map((flip) => changeJson(flip, (said) => `${said} comes first`, currency, write));
  return {
    format: "hallful/compare-answer@1",
    sentences: compareSentences({ comparison, lines, cannot, measure, differences, changes, write }),
    currency,
    halls: lines.map((line) => hallJson(line, currency)),
    excluded: cannot.map(({ said, why }) => ({ said, why })),
    orders: { expected: ordersOf(lines, "expected"), full: ordersOf(lines, "full") },
    differences,
    changes,
    working: compareWorking(comparison, lines),
  };
}

function hallJson(
  { candidate, expected, full }: HallLine,
  currency: CurrencyCode,
): CompareJson["halls"][number] {
  return {
    hall: candidate.name,
    said: candidate.said,
    arrangement: candidate.way,
    slot: candidate.slot.said,
    capacity: candidate.capacity,
    sessions: candidate.sessions,
    lostDates: sumOf(candidate.lostTo),
    lostTo: candidate.lostTo,
    costPerSession: coinText(new Fraction(candidate.yearCost).div(candidate.sessions), currency),
    doorToDoorMinutes: candidate.doorToDoor,
    expected: leavesJson(expected, currency),
    full: leavesJson(full, currency),
  };
}

function leavesJson({ heads, perSession, perYear, perHour }: Leaves, currency: CurrencyCode): LeavesJson {
  const coins = (amount: number): string => coinText(new Fraction(Math.round(amount)), currency);
  return { heads, perSession: coins(perSession), perYear: coins(perYear), perHour: coins(perHour) };
}

function ordersOf(lines: readonly HallLine[], view: View): Orders {
  const by = (measure: Measure): readonly string[] =>
    ordered(lines, view, measure).map(({ candidate }) => candidate.said);
  return { perSession: by("perSession"), perYear: by("perYear"), perHour: by("perHour") };
}

function noneLeft(cannot: readonly Excluded[]): Result<never> {
  const says = `No hall can be had: ${cannot.map(({ said, why }) => `${said}, ${why}`).join("; ")}.`;
  const next = "Add another time of the week, or look at the free hours, terms and closures.";
  return bad(problem("halls-none-left", "halls", says, next));
}
