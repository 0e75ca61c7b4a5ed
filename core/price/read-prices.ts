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
import type { PricesDocument } from "./evening-document.ts";
import { oneClass, type PricedRung, sizedRung } from "./priced-rung.ts";
import { readCourses } from "./read-courses.ts";
import { readMonthly } from "./read-monthly.ts";
import { readPayWhatYouCan } from "./read-pay-what-you-can.ts";

/**
 * Every price that is stated, from the single on, each with the key of the mix by which somebody pays it.
 * Problems: those of an amount, "pass-size", "pass-twice", those of courses, "average-below-floor", "sessions-out-of-range".
 */
export function readPrices(prices: PricesDocument, currency: CurrencyCode): Result<readonly PricedRung[]> {
  const read = together({
    single: readOptional(prices.single, currency, "prices.single"),
    concession: readOptional(prices.concession, currency, "prices.concession"),
    passes: readPasses(prices.passes, currency),
    courses: readCourses(prices.courses ?? [], currency),
    chosen: readPayWhatYouCan(prices.payWhatYouCan, currency),
    monthly: readMonthly(prices.monthly, currency),
  });
  if (!read.ok) return read;
  const { single, concession, passes, courses, chosen, monthly } = read.value;
  return good([
    ...oneClass("single", single),
    ...passes,
    ...oneClass("concession", concession),
    ...courses,
    ...chosen,
    ...monthly,
  ]);
}

function readOptional(text: string | undefined, currency: CurrencyCode, place: string): Result<Minor | null> {
  return text === undefined ? good(null) : readAmount(text, currency, place);
}

function readPasses(passes: PricesDocument["passes"], currency: CurrencyCode): Result<readonly PricedRung[]> {
  const sizes = passes.map(({ classes }) => classes);
  const twice = sizes.findIndex((size, index) => sizes.indexOf(size) < index);
  if (twice >= 0) {
    const says = `There are two passes of ${sizes[twice] ?? ""} classes.`;
    return bad(problem("pass-twice", `prices.passes[${twice}].classes`, says, "Keep one of them."));
  }
  return togetherInOrder(
    passes.map(({ classes, price }, index) => {
      const place = `prices.passes[${index}]`;
      const read = together({
        classes: readSize(classes, `${place}.classes`),
        price: readAmount(price, currency, `${place}.price`),
      });
      return read.ok ? good(sizedRung("pass", read.value.classes, read.value.price, place)) : read;
    }),
  );
}

const MOST_CLASSES = 999;

function readSize(classes: number, place: string): Result<number> {
  if (Number.isInteger(classes) && classes >= 1 && classes <= MOST_CLASSES) return good(classes);
  const next = `Give a whole number of classes, 1 to ${MOST_CLASSES}.`;
  return bad(problem("pass-size", place, `A pass cannot hold ${classes} classes.`, next));
}
