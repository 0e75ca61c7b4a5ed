import { chanceText, plainDecimal } from "../chance-text.ts";
import type { AmountWriter } from "../reply.ts";
import { owedClasses } from "./owed-classes.ts";
import type { PassDocument } from "./pass-document.ts";
import type { PassUseBy, WeeksLine } from "./pass-use-by.ts";
import type { LivePasses } from "./read-live-passes.ts";
import type { UseByDate } from "./use-by-date.ts";

/** The answer first: the weeks, who loses classes, the date, the debt, and who decides about refunds. */
export function passSentences(
  document: PassDocument,
  useBy: PassUseBy,
  given: WeeksLine | null,
  dated: UseByDate | null,
  live: LivePasses | null,
  write: AmountWriter,
): readonly string[] {
  return [
    weeksSentence(useBy),
    losingSentence(useBy),
    ...(given === null ? [] : [givenSentence(given, useBy)]),
    ...(dated === null ? [] : [dateSentence(dated)]),
    ...(live === null ? [] : [owedSentence(live, write)]),
    ...(document.guesses.includes("attendance")
      ? ["The attendance is a guess; your register will know better."]
      : []),
    "What a pass must allow, like a refund, differs from place to place: check the local law.",
  ];
}

function weeksSentence({ classes, attendance, teachingWeeks }: PassUseBy): string {
  const pass = classes === 1 ? "A pass of 1 class" : `A pass of ${classes} classes`;
  const holder = `a holder who comes to ${chanceText(attendance)} of the sessions`;
  return `${pass} should run for ${weeks(teachingWeeks)}, for ${holder}.`;
}

function losingSentence({ shareLosingClasses, expectedClassesLost }: PassUseBy): string {
  const lost = plainDecimal(expectedClassesLost, 2);
  return `${chanceText(shareLosingClasses)} of such holders would lose classes, ${lost} each on average over all of them.`;
}

function givenSentence({ teachingWeeks, shareLosingClasses }: WeeksLine, useBy: PassUseBy): string {
  const given = `With the ${weeks(teachingWeeks)} given now ${chanceText(shareLosingClasses)} would lose classes`;
  const short = useBy.teachingWeeks - teachingWeeks;
  return short > 0
    ? `${given}: ${short === 1 ? "1 week is" : `${short} weeks are`} missing.`
    : `${given}: that is enough.`;
}

function dateSentence({ date, withoutClosures, lost }: UseByDate): string {
  if (lost.length === 0) return `As a date that is ${date.toString()}; nothing is closed before it.`;
  const closed = lost.length === 1 ? "1 closed date moves" : `${lost.length} closed dates move`;
  return `As a date that is ${date.toString()}; ${closed} it from ${withoutClosures.toString()}.`;
}

function owedSentence({ currency, passes }: LivePasses, write: AmountWriter): string {
  const { classes, amount } = owedClasses(passes);
  const owed = classes === 1 ? "1 class" : `${classes} classes`;
  return `You owe ${owed}, ${write(amount, currency)} in all: a debt until they are taken or run out.`;
}

function weeks(count: number): string {
  return count === 1 ? "1 teaching week" : `${count} teaching weeks`;
}
