import { guessesBehind } from "#core/class";
import { type CurveJson, type PriceJson } from "#core/price";
import { peopleWords, type PriceAmounts, priceAmounts } from "./price-amounts.ts";
import { atTheClass } from "./price-question.ts";
import type { PricesAsked } from "./prices-asked.ts";
import type { PriceSheetInput } from "./price-sheet.ts";
import { missing, type SheetPart, saidOn, type SheetWorking, unsound } from "./sheet-part.ts";

type Curve = CurveJson["curves"][number];

/** A curve as it is drawn: what an evening leaves at each price, in major units of the currency. */
export type DrawnCurve = {
  readonly name: string;
  readonly points: readonly { readonly price: number; readonly leaves: number }[];
  readonly best: number;
};

export type CurvePart = SheetPart<{
  readonly curves: readonly DrawnCurve[];
  /** prices within 5 % of the best on both curves, in major units; null when there are none */
  readonly agreed: { readonly from: number; readonly until: number } | null;
  /** the single price now, in major units and as it is written; null for none */
  readonly now: { readonly price: number; readonly says: string } | null;
}>;

/** Which single price leaves most by what she believes, and which leave nearly as much. */
export function curvePart(input: PriceSheetInput, asked: PricesAsked): CurvePart {
  if (asked.kind !== "ready") return asked;
  if (asked.curve === null) {
    return missing(
      "Which price would leave most nobody can say yet.",
      "Say how many people would like to come at two or three single prices.",
    );
  }
  if (!asked.curve.ok) return unsound(asked.curve.problems.map(atTheClass));
  return answered(input, asked.curve.value);
}

function answered(input: PriceSheetInput, { curve, survey }: PriceJson): CurvePart {
  const amounts = priceAmounts(input);
  const { single } = input.document.prices;
  const says = [
    ...(curve === null
      ? ["The prices nearby alone make no curve: say how many would like to come at two or three prices."]
      : curveSentences(curve, amounts, single)),
    ...surveySentences(survey, amounts),
  ];
  const guesses = [
    ...guessesBehind(input.document, "break-even"),
    ...(curve === null ? [] : ["planning.beliefs"]),
  ];
  const { agreed = null } = curve ?? {};
  return {
    ...saidOn(input, [...new Set(guesses)], says, curve === null ? [] : curve.curves.map(workingOf)),
    curves: (curve?.curves ?? []).map(drawn),
    agreed: agreed === null ? null : { from: Number(agreed.from), until: Number(agreed.until) },
    now: single === undefined ? null : { price: Number(single), says: amounts.write(single) },
  };
}

const names = {
  "constant elasticity": "If each per cent more loses the same share of the people",
  linear: "If each coin more loses the same number of people",
} as const;

function curveSentences(
  { curves, agreed }: CurveJson,
  { write }: PriceAmounts,
  single: string | undefined,
): readonly string[] {
  const first =
    agreed === null
      ? "Your beliefs leave the price open: the two curves share no range."
      : `A single of ${write(agreed.from)} to ${write(agreed.until)} leaves within 5 % of the most, by both curves${nowWords(agreed, single, write)}.`;
  return [first, ...curves.map((curve) => curveSentence(curve, write))];
}

function nowWords(
  { from, until }: NonNullable<CurveJson["agreed"]>,
  single: string | undefined,
  write: PriceAmounts["write"],
): string {
  if (single === undefined) return "";
  const now = Number(single);
  const place = now < Number(from) ? "below" : now > Number(until) ? "above" : "inside";
  return `; yours of ${write(single)} is ${place} it`;
}

function curveSentence({ kind, best, range, atEdge }: Curve, write: PriceAmounts["write"]): string {
  if (range === null) return `${names[kind]}, no price leaves anything; ${write(best.price)} loses least.`;
  const edge =
    atEdge === null ? "" : ` That is the ${atEdge} price looked at, so it says nothing of where to stop.`;
  return `${names[kind]}, ${write(best.price)} leaves most, ${write(best.contribution)} an evening with ${peopleWords(best.heads)}; ${write(range.from)} to ${write(range.until)} leave nearly as much.${edge}`;
}

function surveySentences(survey: PriceJson["survey"], { write }: PriceAmounts): readonly string[] {
  if (survey === null) return [];
  const { count, least, median, most } = survey;
  return [
    count === 1
      ? `The one price nearby is ${write(least)}.`
      : `${count} prices nearby run from ${write(least)} to ${write(most)}; the middle one is ${write(median)}.`,
  ];
}

// More lines than this nobody compares by eye.
const MOST_LINES = 12;

function workingOf({ kind, points, best }: Curve): SheetWorking {
  const every = Math.ceil(points.length / MOST_LINES);
  const some = points.filter((point, at) => at % every === 0 || point.price === best.price);
  const lines = some.map(({ price, heads, contribution }) => ({
    label: `${price} with ${peopleWords(heads)}`,
    sum: "",
    amount: contribution,
  }));
  return { title: `${names[kind]}: what an evening leaves by the single price`, lines };
}

function drawn({ kind, points, best }: Curve): DrawnCurve {
  return {
    name: kind === "linear" ? "a straight line" : "the same share for each per cent",
    points: points.map(({ price, contribution }) => ({ price: Number(price), leaves: Number(contribution) })),
    best: Number(best.price),
  };
}
