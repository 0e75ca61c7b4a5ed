import { bad, type CurrencyCode, good, problem, type Result, readAmount, together } from "#core/words";
import type { PricesDocument } from "./evening-document.ts";
import type { PricedRung } from "./priced-rung.ts";

/** Problems besides those of amounts: "average-below-floor". */
export function readPayWhatYouCan(
  chosen: PricesDocument["payWhatYouCan"],
  currency: CurrencyCode,
): Result<readonly PricedRung[]> {
  if (chosen === undefined) return good([]);
  const place = "prices.payWhatYouCan";
  const read = together({
    floor: readAmount(chosen.floor, currency, `${place}.floor`),
    average: readAmount(chosen.average ?? chosen.floor, currency, `${place}.average`),
  });
  if (!read.ok) return read;
  const { floor, average } = read.value;
  const key = "pay-what-you-can";
  if (average >= floor) return good([{ key, kind: key, place, price: average, classes: 1, floor }]);
  const says = "People cannot give less on average than the floor.";
  return bad(
    problem("average-below-floor", `${place}.average`, says, "Raise the average or lower the floor."),
  );
}
