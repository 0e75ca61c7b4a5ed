import type { AmountWriter } from "#core/price";
import { moneyWriter } from "./money-writer.ts";

/** "£28.48" for pounds, "$28.48" for dollars: to the coin, as each currency's own country writes it. */
export const amountWriter: AmountWriter = (exact, currency) =>
  moneyWriter(currency, currency === "USD" ? "en-US" : "en-GB")(exact);
