import { type PriceDocumentInput, type PriceJson, priceAnswer } from "#core/price";
import { good, type Result } from "#core/words";
import { priceQuestion, type ReadyQuestion } from "./price-question.ts";
import type { PriceSheetInput } from "./price-sheet.ts";
import type { Missing, Unsound } from "./sheet-part.ts";

type Answered = Result<PriceJson>;

/** The question of a class with its answers; what is wrong with a belief or an offer keeps back that alone. */
export type PricesAsked =
  | (ReadyQuestion & {
      readonly answer: Answered;
      /** with her beliefs and the prices nearby; null while there are none */
      readonly curve: Answered | null;
      /** with a studio's offer; null while there is none */
      readonly studio: Answered | null;
    })
  | Missing
  | Unsound;

/** Asked once with everything in it; only when that cannot be used, part by part. */
export function pricesAsked(input: PriceSheetInput): PricesAsked {
  const question = priceQuestion(input);
  if (question.kind !== "ready") return question;
  const { beliefs = [], survey = "", studio } = input.document.planning ?? {};
  const curve: Partial<PriceDocumentInput> | null =
    beliefs.length === 0 && survey.trim() === ""
      ? null
      : { survey, ...(beliefs.length === 0 ? {} : { beliefs: [...beliefs] }) };
  const offer: Partial<PriceDocumentInput> | null = studio === undefined ? null : { studio };
  const ask = (more: Partial<PriceDocumentInput> | null): Answered => {
    const read = priceAnswer({ ...question.document, ...more }, (exact) => input.money(exact));
    return read.ok ? good(read.value.json) : read;
  };
  const whole = ask({ ...curve, ...offer });
  if (whole.ok) {
    return { ...question, answer: whole, curve: curve && whole, studio: offer && whole };
  }
  return { ...question, answer: ask(null), curve: curve && ask(curve), studio: offer && ask(offer) };
}
