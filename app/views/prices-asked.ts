import type { Planning } from "#core/class";
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
      /** with a rise or a pay that she thinks of; null while there is neither */
      readonly higher: Answered | null;
      /** with a studio's offer; null while there is none */
      readonly studio: Answered | null;
    })
  | Missing
  | Unsound;

/** Asked once with everything in it; only when that cannot be used, part by part. */
export function pricesAsked(input: PriceSheetInput): PricesAsked {
  const question = priceQuestion(input);
  if (question.kind !== "ready") return question;
  const { curve, higher, offer } = wishesOf(input.document.planning ?? {});
  const ask = (more: Partial<PriceDocumentInput> | null): Answered => {
    const read = priceAnswer({ ...question.document, ...more }, (exact) => input.money(exact));
    return read.ok ? good(read.value.json) : read;
  };
  const whole = ask({ ...curve, ...higher, ...offer });
  const part = (wish: Wish): Answered | null => (wish === null ? null : whole.ok ? whole : ask(wish));
  return {
    ...question,
    answer: whole.ok ? whole : ask(null),
    curve: part(curve),
    higher: part(higher),
    studio: part(offer),
  };
}

type Wish = Partial<PriceDocumentInput> | null;

/** What the planning asks besides the prices themselves; null where it asks nothing. */
function wishesOf({ beliefs = [], survey = "", rise, target, studio }: Planning): {
  readonly curve: Wish;
  readonly higher: Wish;
  readonly offer: Wish;
} {
  const nothing = beliefs.length === 0 && survey.trim() === "";
  return {
    curve: nothing ? null : { survey, ...(beliefs.length === 0 ? {} : { beliefs: [...beliefs] }) },
    higher:
      rise === undefined && target === undefined
        ? null
        : { ...(rise === undefined ? {} : { rises: [rise] }), ...(target === undefined ? {} : { target }) },
    offer: studio === undefined ? null : { studio },
  };
}
