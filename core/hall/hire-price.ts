import {
  bad,
  type CurrencyCode,
  good,
  problem,
  type Result,
  readAmount,
  readDate,
  together,
  togetherInOrder,
} from "#core/words";
import type { HirePrice, HireRate } from "./hire-terms.ts";
import type { HireTermsDocument } from "./hire-terms-document.ts";

type Priced = { readonly perHour?: string | undefined; readonly perSession?: string | undefined };

/** Problems: "hire-price-missing", "hire-price-both" and those of an amount. */
export function readHirePrice(priced: Priced, currency: CurrencyCode, place: string): Result<HirePrice> {
  const { perHour, perSession } = priced;
  const at = (field: string): string => (place === "" ? field : `${place}.${field}`);
  if (perHour !== undefined && perSession !== undefined) {
    const next = "Keep perHour or perSession and take the other out.";
    return bad(
      problem("hire-price-both", place, "The hall has a price an hour and a price a session.", next),
    );
  }
  if (perHour !== undefined) return priceOf("hour", readAmount(perHour, currency, at("perHour")));
  if (perSession !== undefined) return priceOf("session", readAmount(perSession, currency, at("perSession")));
  const next = "Give perHour or perSession.";
  return bad(problem("hire-price-missing", place, "What the hall charges is missing.", next));
}

function priceOf(per: HirePrice["per"], read: ReturnType<typeof readAmount>): Result<HirePrice> {
  return read.ok ? good({ per, amount: read.value }) : read;
}

type RatesDocument = NonNullable<HireTermsDocument["rates"]>;

/** New rates in the order of their dates. Problem besides those of a price: "hire-rate-twice". */
export function readHireRates(
  rates: RatesDocument,
  currency: CurrencyCode,
  place: string,
): Result<readonly HireRate[]> {
  const read = togetherInOrder(
    rates.map((rate, index) =>
      together({
        from: readDate(rate.from, `${place}[${index}].from`),
        price: readHirePrice(rate, currency, `${place}[${index}]`),
      }),
    ),
  );
  if (!read.ok) return read;
  const twice = rates.findIndex((rate, index) => rates.findIndex(({ from }) => from === rate.from) < index);
  if (twice >= 0) {
    const says = `Two rates begin on ${rates[twice]?.from ?? ""}.`;
    return bad(problem("hire-rate-twice", `${place}[${twice}].from`, says, "Keep one of them."));
  }
  return good([...read.value].sort((a, b) => (a.from.toString() < b.from.toString() ? -1 : 1)));
}
