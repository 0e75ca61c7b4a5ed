import { type ExactMinor, exactNumberText, type Locale, word } from "#core/words";
import { Fraction } from "fraction.js";
import type { EveningAnswer } from "./evening-types.ts";

/** Writes an exact amount of minor units for the reader, with the currency's own sign: £28.48. */
export type MoneyWriter = (exact: ExactMinor) => string;

/** The answer first: what an evening costs, who pays for the room, what an ordinary evening leaves. */
export function eveningSentences(
  answer: EveningAnswer,
  locale: Locale,
  money: MoneyWriter,
): readonly string[] {
  return [
    costSentence(answer, locale, money),
    breakEvenSentence(answer, money),
    ordinarySentence(answer, money),
  ];
}

/** "An evening costs £31.40, of which £28.00 is for 120 charged minutes of hire." */
export function costSentence(answer: EveningAnswer, locale: Locale, money: MoneyWriter): string {
  const hire = money(new Fraction(answer.hire));
  const charged = `${answer.chargedMinutes} charged minutes of ${word("hire", locale)}`;
  return `An evening costs ${money(new Fraction(answer.cost))}, of which ${hire} is for ${charged}.`;
}

/** "5 people pay for the room.", or why nobody ever does and what would change it. */
export function breakEvenSentence(answer: EveningAnswer, money: MoneyWriter): string {
  const { breakEven } = answer;
  if (breakEven === 0) return "The room costs nothing, so nobody has to pay for it.";
  if (breakEven === 1) return "1 person pays for the room.";
  if (breakEven !== null) return `${breakEven} people pay for the room.`;
  const brings = money(answer.yield);
  const costs = money(new Fraction(answer.costPerHead));
  return (
    `No number of people pays for the room: one person brings ${brings} on average and costs ${costs}. ` +
    "A higher price, fewer free places or a lower cost per head would change that."
  );
}

/** What an ordinary evening leaves or lacks, and what that is an hour from door to door. */
export function ordinarySentence(answer: EveningAnswer, money: MoneyWriter): string {
  const heads = exactNumberText(answer.heads);
  const people = heads === "1" ? "1 person" : `${heads} people`;
  const each = answer.perDoorToDoorHour;
  const hour = each === null ? "" : `, ${money(each)} for each hour from door to door`;
  return answer.contribution.lt(0)
    ? `An ordinary evening with ${people} is ${money(answer.contribution.abs())} short.`
    : `An ordinary evening with ${people} leaves ${money(answer.contribution)}${hour}.`;
}
