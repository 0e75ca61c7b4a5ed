import { type AskOutlook, type OutlookSheet, type OutlookSheetInput, outlookSheet } from "#app/views";
import { outlookAnswer } from "#core/outlook";
import { bad, isCurrency, problem } from "#core/words";
import { type LineRequest, replyTo } from "../prices/worker-line.ts";
import { moneyWords } from "../words/money-words.ts";
import { remembered } from "./remembered.ts";

/** A question of the class sheet about its future; how money is written the worker knows by itself. */
export type OutlookJob = Omit<OutlookSheetInput, "money">;

/** A changed name or note asks the same question again: what was learned for it is still right. */
const ask: AskOutlook = remembered((input) => {
  try {
    return outlookAnswer(input);
  } catch {
    // a fault of ours, which must not take the opening away as well
    const says = "This record could not be learned from.";
    const next = "It is kept. Look at its numbers and at the guesses; one of them may be a slip.";
    return bad(problem("record-not-learned", "happened", says, next));
  }
});

addEventListener("message", (event: MessageEvent<LineRequest<OutlookJob>>) => {
  postMessage(replyTo(event.data, answered));
});

function answered(job: OutlookJob): OutlookSheet {
  const { currency, locale } = job.practice;
  if (!isCurrency(currency)) throw new RangeError(`not a currency: ${currency}`);
  return outlookSheet({ ...job, money: (exact) => moneyWords(exact, currency, locale) }, ask);
}
