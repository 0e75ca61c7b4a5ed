import {
  bad,
  type CurrencyCode,
  good,
  type Minor,
  problem,
  type Result,
  readAmount,
  together,
  togetherInOrder,
} from "#core/words";
import type { z } from "zod";
import type { pricesSchema } from "./evening-document.ts";

type PricesDocument = z.output<typeof pricesSchema>;

export type PassPrice = { readonly classes: number; readonly price: Minor };
export type Prices = {
  readonly single: Minor | null;
  readonly concession: Minor | null;
  readonly passes: readonly PassPrice[];
};

/** Problems: those of an amount, "pass-size", "pass-twice". `place` is where the prices stand. */
export function readPrices(prices: PricesDocument, currency: CurrencyCode, place = "prices"): Result<Prices> {
  return together({
    single: readOptional(prices.single, currency, `${place}.single`),
    concession: readOptional(prices.concession, currency, `${place}.concession`),
    passes: readPasses(prices.passes, currency, `${place}.passes`),
  });
}

function readOptional(text: string | undefined, currency: CurrencyCode, place: string): Result<Minor | null> {
  return text === undefined ? good(null) : readAmount(text, currency, place);
}

function readPasses(
  passes: PricesDocument["passes"],
  currency: CurrencyCode,
  place: string,
): Result<readonly PassPrice[]> {
  const sizes = passes.map(({ classes }) => classes);
  const twice = sizes.findIndex((size, index) => sizes.indexOf(size) < index);
  if (twice >= 0) {
    const says = `There are two passes of ${sizes[twice] ?? ""} classes.`;
    return bad(problem("pass-twice", `${place}[${twice}].classes`, says, "Keep one of them."));
  }
  return togetherInOrder(
    passes.map((pass, index) =>
      together({
        classes: readSize(pass.classes, `${place}[${index}].classes`),
        price: readAmount(pass.price, currency, `${place}[${index}].price`),
      }),
    ),
  );
}

const MOST_CLASSES = 999;

function readSize(classes: number, place: string): Result<number> {
  if (Number.isInteger(classes) && classes >= 1 && classes <= MOST_CLASSES) return good(classes);
  const next = `Give a whole number of classes, 1 to ${MOST_CLASSES}.`;
  return bad(problem("pass-size", place, `A pass cannot hold ${classes} classes.`, next));
}
