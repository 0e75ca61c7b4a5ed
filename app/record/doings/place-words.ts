import { momentWords, noticeOf } from "#core/notice";
import type { SessionState } from "#core/roll";
import type { Writer } from "#core/words";
import type { Desk } from "../desk.ts";

/** "It can be given up until Monday 30 November 2026 at 18:30.", or that this moment was before it was taken. */
export function untilSentence(
  { notice: rule, starts, zone }: SessionState,
  { made, arrived, writer }: Pick<Desk, "made" | "arrived" | "writer">,
): string {
  const { late, cutOff } = noticeOf({ rule, zone, starts, made, arrived }, writer);
  const until = momentWords(cutOff, zone, writer);
  return late
    ? `It was taken past its notice, which ended on ${until}.`
    : `It can be given up until ${until}.`;
}

/** "Slow Tuesday on Tuesday 1 December 2026" */
export function sessionWords({ name, date }: SessionState, writer: Writer): string {
  return `${name} on ${writer.day(date)}`;
}
