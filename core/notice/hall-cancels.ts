import type { Writer } from "#core/words";
import { cutOff } from "./cut-off.ts";
import { inZone, secondsBetween } from "./instants.ts";
import type { NoticeRule } from "./notice-rule.ts";
import { plainRuleWords } from "./rule-words.ts";

export type HallCancelled = {
  readonly zone: string;
  readonly starts: string;
  /** when the hall told her */
  readonly told: string;
  /** what the hall promised her; null when its conditions let it close at any time */
  readonly promised: NoticeRule | null;
  readonly hire: number;
  readonly currency: string;
};

export type HallCancels = {
  readonly daysBefore: number;
  /** it told her later than it promised */
  readonly short: boolean;
  /** of the hire: nothing is payable for a date that the hall took back */
  readonly payable: 0;
  readonly sentence: string;
};

/** The hall takes a date back: whether it kept its own notice, and that the hire is not payable. */
export function hallCancels(asked: HallCancelled, writer: Writer): HallCancels {
  const { promised, starts, zone, told } = asked;
  const [date, day] = [inZone(starts, zone).toPlainDate(), inZone(told, zone).toPlainDate()];
  const daysBefore = day.until(date, { largestUnit: "days" }).days;
  const short = promised !== null && secondsBetween(cutOff(promised, starts, zone), told) > 0;
  const when = daysBefore === 1 ? "1 day before" : `${daysBefore} days before`;
  const main = `The hall said on ${writer.day(day.toString())}, ${when}, that it is shut on ${writer.day(date.toString())}. The hire of ${writer.money(asked.hire, asked.currency)} is not payable.`;
  return { daysBefore, short, payable: 0, sentence: `${main} ${keptWords(promised, short, writer)}` };
}

function keptWords(promised: NoticeRule | null, short: boolean, writer: Writer): string {
  if (promised === null)
    return "Its conditions let it close without notice; look whether they promise more than the hire back.";
  const rule = plainRuleWords(promised, writer);
  return short
    ? `It promised to say so ${rule}, so it was late: worth raising when the hire is renewed.`
    : `It promised to say so ${rule}, and did.`;
}
