import { cutOff, momentWords } from "#core/notice";
import type { SessionState } from "#core/roll";
import type { Writer } from "#core/words";

/** "It can be given up until Monday 30 November 2026 at 18:30." */
export function untilSentence({ notice, starts, zone }: SessionState, writer: Writer): string {
  return `It can be given up until ${momentWords(cutOff(notice, starts, zone), zone, writer)}.`;
}

/** "Slow Tuesday on Tuesday 1 December 2026" */
export function sessionWords({ name, date }: SessionState, writer: Writer): string {
  return `${name} on ${writer.day(date)}`;
}
