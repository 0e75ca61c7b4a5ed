import { type PriceSheet, type PriceSheetInput, priceSheet } from "#app/views";
import { isCurrency } from "#core/words";
import { moneyWords } from "../words/money-words.ts";
import { type LineRequest, replyTo } from "./worker-line.ts";

/** A question of the class sheet; how money is written the worker knows by itself. */
export type PriceJob = Omit<PriceSheetInput, "money">;

addEventListener("message", (event: MessageEvent<LineRequest<PriceJob>>) => {
  postMessage(replyTo(event.data, answered));
});

function answered(job: PriceJob): PriceSheet {
  const { currency, locale } = job.practice;
  if (!isCurrency(currency)) throw new RangeError(`not a currency: ${currency}`);
  return priceSheet({ ...job, money: (exact) => moneyWords(exact, currency, locale) });
}
