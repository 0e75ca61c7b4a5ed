import {
  bad,
  type CurrencyCode,
  good,
  problem,
  type Result,
  readAmount,
  together,
  togetherInOrder,
} from "#core/words";
import { fitCurves, type PricePoint } from "../curve/demand-curve.ts";
import type { PriceRange } from "../curve/price-curve.ts";
import { readSurvey, type SurveyRow } from "../curve/read-survey.ts";
import type { PriceDocument } from "./price-document.ts";
import type { PriceQuestion } from "./price-question.ts";

type CurveParts = Pick<PriceQuestion, "points" | "curves" | "lookedAt" | "survey">;

/** Beliefs, survey and the curves through them. A survey without beliefs only says what is asked nearby. */
export function readCurveParts(document: PriceDocument, currency: CurrencyCode): Result<CurveParts> {
  const read = together({
    beliefs: readBeliefs(document.beliefs ?? [], currency),
    survey: readSurvey(document.survey ?? [], currency, "survey"),
    lookedAt: readLookedAt(document.lookedAt, currency),
  });
  if (!read.ok) return read;
  const { beliefs, survey, lookedAt } = read.value;
  const points = document.beliefs === undefined ? [] : [...beliefs, ...counted(survey)];
  if (document.beliefs === undefined) return good({ points, curves: [], lookedAt, survey });
  const curves = fitCurves(points, "beliefs");
  return curves.ok
    ? good({ points, curves: curves.value, lookedAt: lookedAt ?? usualRange(points), survey })
    : curves;
}

/** Problems besides those of an amount: "belief-price-zero", "belief-heads-out-of-range". */
function readBeliefs(
  beliefs: NonNullable<PriceDocument["beliefs"]>,
  currency: CurrencyCode,
): Result<readonly PricePoint[]> {
  return togetherInOrder(
    beliefs.map(({ price, heads }, index) => {
      const place = `beliefs[${index}]`;
      const read = together({
        price: readBeliefPrice(price, currency, `${place}.price`),
        heads: readBeliefHeads(heads, `${place}.heads`),
      });
      return read;
    }),
  );
}

function readBeliefPrice(price: string, currency: CurrencyCode, place: string): Result<number> {
  const amount = readAmount(price, currency, place);
  if (!amount.ok || amount.value > 0) return amount;
  const says = "A curve cannot go through a free class: people who pay nothing are other people.";
  return bad(problem("belief-price-zero", place, says, "Give a price above 0."));
}

function readBeliefHeads(heads: number, place: string): Result<number> {
  if (heads > 0 && heads <= 1000) return good(heads);
  const says = `${heads} people cannot be met by a curve.`;
  return bad(
    problem("belief-heads-out-of-range", place, says, "Give more than 0: 0.5 if hardly anybody would come."),
  );
}

/** Survey rows with people counted join the beliefs, each with the same weight. */
function counted(survey: readonly SurveyRow[]): readonly PricePoint[] {
  return survey.flatMap(({ price, heads }) => (heads === null || price === 0 ? [] : [{ price, heads }]));
}

/** Problem: "price-range-backwards". */
function readLookedAt(range: PriceDocument["lookedAt"], currency: CurrencyCode): Result<PriceRange | null> {
  if (range === undefined) return good(null);
  const read = together({
    from: readAmount(range.from, currency, "lookedAt.from"),
    until: readAmount(range.until, currency, "lookedAt.until"),
  });
  if (!read.ok || (read.value.from < read.value.until && read.value.until > 0)) return read;
  const says = `There is no price from ${range.from} up to ${range.until}.`;
  return bad(problem("price-range-backwards", "lookedAt", says, "Give the lower price first."));
}

/** From half of the lowest price she has an idea of to half as much again as the highest. */
function usualRange(points: readonly PricePoint[]): PriceRange {
  const prices = points.map(({ price }) => price);
  return {
    from: Math.max(1, Math.floor(Math.min(...prices) / 2)),
    until: Math.ceil(Math.max(...prices) * 1.5),
  };
}
