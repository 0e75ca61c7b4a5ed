import { classAnswer, guessesBehind, isPlanningGuess, planningOf, sessionsInYear } from "#core/class";
import type { EveningAnswer, PriceDocumentInput } from "#core/price";
import { moneyText, type Problem } from "#core/words";
import { hireKnown } from "./hire-known.ts";
import type { PriceSheetInput } from "./price-sheet.ts";
import { type Missing, missing, type Unsound, unsound } from "./sheet-part.ts";

export type ReadyQuestion = {
  readonly kind: "ready";
  readonly document: PriceDocumentInput;
  /** the evening whose costs it rests on */
  readonly evening: EveningAnswer;
};

export type PriceQuestionOfClass = ReadyQuestion | Missing | Unsound;

/** A class and its hall as a price document: the next evening's costs, the places of the mat plan. */
export function priceQuestion(input: PriceSheetInput): PriceQuestionOfClass {
  const { document, practice, today, capacity } = input;
  const known = hireKnown(input);
  if (known.kind === "missing") return known;
  if (capacity === null) {
    return missing(
      "How many people there is room for is not worked out yet.",
      "Look at the hall’s floor plan for what stands in the way.",
    );
  }
  const read = classAnswer(document, known.hall, practice.currency, today, "ordinary evening");
  if (!read.ok) return unsound(read.problems);
  return { kind: "ready", evening: read.value, document: documentOf(input, read.value, capacity.capacity) };
}

function documentOf(
  { document }: PriceSheetInput,
  { currency, cost }: EveningAnswer,
  capacity: number,
): PriceDocumentInput {
  const { minutes, mix, heads, costs } = document;
  const { dispersion, termEvenings } = planningOf(document);
  return {
    currency,
    cost: moneyText(cost, currency),
    perHead: costs.perHead,
    prices: withSessions(document, currency),
    mix,
    heads,
    dispersion,
    capacity,
    sessions: termEvenings,
    doorToDoorMinutes: minutes.travel + minutes.setUp + minutes.class + minutes.packDown,
    guesses: guessesOf(document),
  };
}

/** A monthly payment is for the sessions that the class's own dates give, unless it says for how many. */
function withSessions(
  { weekday, year, prices }: PriceSheetInput["document"],
  currency: EveningAnswer["currency"],
): PriceDocumentInput["prices"] {
  const { monthly, ...others } = prices;
  if (monthly === undefined) return prices;
  const counted = sessionsInYear({ weekday, year }, currency);
  return { ...others, monthly: counted === null ? monthly : { sessionsPerYear: counted, ...monthly } };
}

/** The class's guesses by the paths of a price document. */
function guessesOf(document: PriceSheetInput["document"]): string[] {
  const { guesses } = document;
  const cost = guessesBehind(document, "evening cost");
  const time = guesses.some((it) => it.startsWith("minutes."));
  return [
    ...guesses
      .filter((it) => !it.startsWith("planning."))
      .map((it) => (it === "costs.perHead" ? "perHead" : it)),
    ...guesses.filter((it) => it.startsWith("planning.")).map((it) => it.slice("planning.".length)),
    ...(cost.length > 0 ? ["cost"] : []),
    ...(time ? ["doorToDoorMinutes"] : []),
    ...(isPlanningGuess(document, "dispersion") ? ["dispersion"] : []),
  ];
}

const places: readonly (readonly [string, string])[] = [
  ["beliefs", "planning.beliefs"],
  ["survey", "planning.survey"],
  ["studio", "planning.studio"],
  ["dispersion", "planning.dispersion"],
  ["sessions", "planning.termEvenings"],
  ["rises[0]", "planning.rise"],
  ["target", "planning.target"],
  ["perHead", "costs.perHead"],
];

/** A problem of the price document, told at the place of the class that it comes from. */
export function atTheClass(problem: Problem): Problem {
  const { place } = problem;
  const found = places.find(([from]) => place.startsWith(from) && /^($|[.[])/.test(place.slice(from.length)));
  if (found === undefined) return problem;
  const [from, to] = found;
  return { ...problem, place: `${to}${place.slice(from.length)}` };
}
