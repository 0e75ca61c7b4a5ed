import { type YearCalendarJson, yearAnswer, type YearDocumentInput, type YearPicture } from "#core/year";
import { good, type Result } from "#core/words";
import { type LineRequest, replyTo } from "../prices/worker-line.ts";

/** The dates of a year, asked of a worker. */
export type YearJob = { readonly document: YearDocumentInput };

export type YearReply = { readonly json: YearCalendarJson; readonly picture: YearPicture };

addEventListener("message", (event: MessageEvent<LineRequest<YearJob>>) => {
  postMessage(replyTo(event.data, answered));
});

function answered({ document }: YearJob): Result<YearReply> {
  const read = yearAnswer(document);
  return read.ok ? good({ json: read.value.json, picture: read.value.picture }) : read;
}
