import { withoutNoise } from "../without-noise.ts";
import { exactText, good, type Result, readDocument } from "#core/words";
import { Fraction } from "fraction.js";
import { type ChangeJson, changeJson } from "../change/change-json.ts";
import type { Flip } from "../change/what-would-change.ts";
import type { LadderFacts } from "../ladder/ladder-checks.ts";
import { type AmountWriter, coinText, plainAmount, type Reply } from "../reply.ts";
import { eveningChanges, studioChanges } from "./price-changes.ts";
import { type PriceDocument, priceDocumentSchema } from "./price-document.ts";
import type { PriceJson } from "./price-json.ts";
import { askedParts, saidOf } from "./asked-parts.ts";
import { curveJson, headsJson, ladderJson, studioJson } from "./price-parts.ts";
import type { PriceQuestion } from "./price-question.ts";
import { priceSentences } from "./price-sentences.ts";
import { type PriceSums, priceSums } from "./price-sums.ts";
import { priceWorking } from "./price-working.ts";
import { readPriceQuestion } from "./read-price-question.ts";

/**
 * Reads a price document and answers it: the ladder and what is wrong with it, how many come and what is left,
 * the price curve, rises, a target pay, own class or studio, and what would change the answer.
 * Problems: those of the document, all at once; what is wrong with a sound ladder stands in its findings.
 */
export function priceAnswer(input: unknown, write: AmountWriter = plainAmount): Result<Reply<PriceJson>> {
  const read = readDocument(priceDocumentSchema, input);
  if (!read.ok) return read;
  const { value: document, unused } = read.value;
  const question = readPriceQuestion(document);
  if (!question.ok) return question;
  return good({ json: withoutNoise(priceJson(document, question.value, write)), unused });
}

function priceJson(document: PriceDocument, question: PriceQuestion, write: AmountWriter): PriceJson {
  const { currency } = question;
  const sums = priceSums(question);
  const ladder = ladderJson(question, sums, factsOf(question, sums, write));
  const asked = askedParts(question, sums, write);
  const studio = studioJson(sums, question);
  const changes = changesOf(document, question, write);
  return {
    format: "hallful/price-answer@1",
    sentences: priceSentences({
      question,
      sums,
      findings: ladder.findings,
      asked: saidOf(asked),
      changes,
      write,
    }),
    currency,
    yield: exactText(sums.yield, currency),
    breakEven: sums.breakEven,
    ladder,
    ...asked,
    heads: headsJson(sums, currency),
    curve: curveJson(sums, question),
    survey: surveyJson(sums, question),
    studio,
    changes,
    working: priceWorking(question, sums),
  };
}

function factsOf(
  { currency, perHead, deepest }: PriceQuestion,
  { chanceFull }: PriceSums,
  write: AmountWriter,
): LadderFacts {
  return { currency, perHead: new Fraction(perHead), chanceFull, deepest, write };
}

function changesOf(
  document: PriceDocument,
  question: PriceQuestion,
  write: AmountWriter,
): PriceJson["changes"] {
  const { studio, doorToDoor, currency } = question;
  const told = (flips: readonly Flip<boolean>[], yes: string, no: string): readonly ChangeJson[] =>
    flips.map((flip) => changeJson(flip, (decision) => (decision ? yes : no), currency, write));
  return {
    evening: told(
      eveningChanges(question, document.guesses),
      "an evening pays for itself on average",
      "an evening loses on average",
    ),
    studio:
      studio === null || doorToDoor === null
        ? null
        : told(
            studioChanges(question, studio, doorToDoor, document.guesses),
            "your own class earns at least as much an hour",
            `${studio.name} earns more an hour`,
          ),
  };
}

function surveyJson({ survey }: PriceSums, { currency }: PriceQuestion): PriceJson["survey"] {
  if (survey === null) return null;
  const text = (amount: number): string => coinText(new Fraction(amount), currency);
  return {
    count: survey.count,
    least: text(survey.least),
    median: text(survey.median),
    most: text(survey.most),
  };
}
