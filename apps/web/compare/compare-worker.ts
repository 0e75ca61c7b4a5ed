import { type CompareSheet, type CompareSheetInput, compareSheet, type HallOffered } from "#app/views";
import { isCurrency } from "#core/words";
import { type LineRequest, replyTo } from "../prices/worker-line.ts";
import { moneyWords } from "../words/money-words.ts";
import { waysOf } from "./ways-of.ts";

/** A comparison as the page asks for it: how many each hall takes is planned here. */
export type CompareJob = Omit<CompareSheetInput, "money" | "halls"> & {
  readonly halls: readonly Omit<HallOffered, "ways">[];
};

addEventListener("message", (event: MessageEvent<LineRequest<CompareJob>>) => {
  postMessage(replyTo(event.data, answered));
});

function answered(job: CompareJob): CompareSheet {
  const { currency, locale } = job.practice;
  if (!isCurrency(currency)) throw new RangeError(`not a currency: ${currency}`);
  return compareSheet({
    ...job,
    halls: job.halls.map((it) => ({ ...it, ways: waysOf(job.document, it.document) })),
    money: (exact) => moneyWords(exact, currency, locale),
  });
}
