import { type AskOutlook, type OutlookSheet, type OutlookSheetInput, outlookSheet } from "#app/views";
import { outlookAnswer } from "#core/outlook";
import { isCurrency } from "#core/words";
import { type LineRequest, replyTo } from "../prices/worker-line.ts";
import { moneyWords } from "../words/money-words.ts";
import { remembered } from "./remembered.ts";

/** A question of the class sheet about its future; how money is written the worker knows by itself. */
export type OutlookJob = Omit<OutlookSheetInput, "money">;

/** A changed name or note asks the same question again: what was learned for it is still right. */
const ask: AskOutlook = remembered((input) => outlookAnswer(input));

addEventListener("message", (event: MessageEvent<LineRequest<OutlookJob>>) => {
  postMessage(replyTo(event.data, answered));
});

function answered(job: OutlookJob): OutlookSheet {
  const { currency, locale } = job.practice;
  if (!isCurrency(currency)) throw new RangeError(`not a currency: ${currency}`);
  try {
    return outlookSheet({ ...job, money: (exact) => moneyWords(exact, currency, locale) }, ask);
  } catch (cause) {
    // a fault of ours: she is told what she can do, and the cause goes with it
    const says = "This record could not be learned from. It is kept; look at its numbers and at the guesses.";
    throw new Error(says, { cause });
  }
}
