import type { Writer } from "#core/words";
import { cutOff } from "./cut-off.ts";
import { instantOf, secondsBetween } from "./instants.ts";
import { momentWords, spanWords } from "./moment-words.ts";
import type { NoticeRule } from "./notice-rule.ts";
import { ruleWords } from "./rule-words.ts";

export type NoticeAsked = {
  readonly rule: NoticeRule;
  /** the zone of the hall */
  readonly zone: string;
  readonly starts: string;
  /** the instant at which it was given up, mended by `madeAt` when the device's clock was off */
  readonly made: string;
  /** the instant at which the record heard of it; the same as made unless the device had no signal */
  readonly arrived: string;
};

export type NoticeFound = {
  /** after the cut-off; exactly at it is in time */
  readonly late: boolean;
  readonly cutOff: string;
  /** whole minutes between the cut-off and giving up: how early or how late; a begun minute late is one */
  readonly minutes: number;
  /** it was made in time and arrived late, which does not matter */
  readonly arrivedAfter: boolean;
  /** what the student reads */
  readonly sentence: string;
};

/**
 * Whether something was given up in time: by the instant it was made, whenever it arrived. At the very
 * second of the cut-off is in time.
 */
export function noticeOf(asked: NoticeAsked, writer: Writer): NoticeFound {
  const last = cutOff(asked.rule, asked.starts, asked.zone);
  const seconds = secondsBetween(last, asked.made);
  const late = seconds > 0;
  const found = {
    late,
    cutOff: last,
    minutes: late ? Math.ceil(seconds / 60) : Math.floor(Math.abs(seconds) / 60),
    arrivedAfter: !late && instantOf(asked.arrived).epochMilliseconds > instantOf(last).epochMilliseconds,
  };
  return { ...found, sentence: sentenceOf(asked, found, writer) };
}

function sentenceOf(asked: NoticeAsked, found: Omit<NoticeFound, "sentence">, writer: Writer): string {
  const say = (instant: string) => momentWords(instant, asked.zone, writer);
  const limit = `${say(found.cutOff)} (${ruleWords(asked.rule, asked.starts, asked.zone, writer)})`;
  const by = spanWords(found.minutes);
  const main = found.late
    ? `You gave up your place on ${say(asked.made)}. The last moment was ${limit}, so it was late by ${by}.`
    : `You gave up your place on ${say(asked.made)}, in time: it could be given up until ${limit}.`;
  return found.arrivedAfter
    ? `${main} We heard of it on ${say(asked.arrived)}, but what counts is when you did it.`
    : main;
}
