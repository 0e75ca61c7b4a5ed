import { type ClassGrowth, classGrowth, type ClassGrowthInput } from "#app/views";
import { outlookAnswer } from "#core/outlook";
import { isCurrency } from "#core/words";
import { type LineRequest, replyTo } from "../prices/worker-line.ts";
import { moneyWords } from "../words/money-words.ts";

/** A class whose outlook is asked what it will bring; how money is written the worker knows by itself. */
export type GrowthJob = Omit<ClassGrowthInput, "money">;

addEventListener("message", (event: MessageEvent<LineRequest<GrowthJob>>) => {
  postMessage(replyTo(event.data, answered));
});

function answered(job: GrowthJob): ClassGrowth {
  const { currency, locale } = job.practice;
  if (!isCurrency(currency)) throw new RangeError(`not a currency: ${currency}`);
  return classGrowth({ ...job, money: (exact) => moneyWords(exact, currency, locale) }, outlookAnswer);
}
