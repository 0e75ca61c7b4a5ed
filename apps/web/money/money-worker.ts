import { moneyAnswer, type MoneyJson, type YearMoneyDocument } from "#core/cash";
import { good, type Locale, type Result } from "#core/words";
import { type LineRequest, replyTo } from "../prices/worker-line.ts";
import { moneyWords } from "../words/money-words.ts";

/** The money of a year, asked of a worker. */
export type MoneyJob = {
  readonly document: YearMoneyDocument;
  readonly practice: { readonly currency: string; readonly locale: Locale };
};

addEventListener("message", (event: MessageEvent<LineRequest<MoneyJob>>) => {
  postMessage(replyTo(event.data, answered));
});

function answered({ document, practice }: MoneyJob): Result<MoneyJson> {
  const read = moneyAnswer(document, (exact, currency) => moneyWords(exact, currency, practice.locale));
  return read.ok ? good(read.value.json) : read;
}
