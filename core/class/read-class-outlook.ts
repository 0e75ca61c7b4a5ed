import { openingDocumentSchema, outlookDocumentSchema, readOpening, readOutlook } from "#core/outlook";
import { bad, type CurrencyCode, good, type Problem, type Result } from "#core/words";
import type { ClassDocument } from "./class-document.ts";
import { classOpeningQuestion, classOutlookQuestion } from "./outlook-questions.ts";

type Planned = Pick<ClassDocument, "outlook">;

/**
 * What a class's outlook says, looked at as far as it stands alone: its places, its money and its record come with
 * the answer. Problems: those of readOutlook and readOpening.
 */
export function readClassOutlook(document: Planned, currency: CurrencyCode): Result<null> {
  if (document.outlook === undefined) return good(null);
  const problems = [
    ...rollProblems(document, currency),
    ...eveningProblems(document.outlook, currency),
    ...openingProblems(document, currency),
  ];
  return problems.length > 0 ? bad(...problems) : good(null);
}

/** Nobody has to pay anything and one place is enough: whatever is wrong then is wrong with what was entered. */
const ALONE = { capacity: 1, money: { yield: "1", cost: "0" } };

function rollProblems(document: Planned, currency: CurrencyCode): readonly Problem[] {
  const question = { ...ALONE, currency, ...classOutlookQuestion(document) };
  return toldAt(readOutlook(outlookDocumentSchema.parse(question)), "outlook.");
}

/** One evening is asked of twice, to be run and to be covered; what is wrong with it is told once. */
function eveningProblems(
  { evening }: NonNullable<ClassDocument["outlook"]>,
  currency: CurrencyCode,
): readonly Problem[] {
  if (evening === undefined) return [];
  const { expected = 0, avoidable, fee, ...rest } = evening;
  const asked = { ...rest, expected, hall: "0" };
  const tonight = { ...asked, ...(avoidable === undefined ? {} : { avoidable }) };
  const question = {
    ...ALONE,
    currency,
    tonight,
    ...(fee === undefined ? {} : { cover: { ...asked, fee } }),
  };
  const told = toldAt(readOutlook(outlookDocumentSchema.parse(question)), "outlook.");
  return told
    .filter(({ place }) => !place.startsWith("outlook.cover") || place === "outlook.cover.fee")
    .map((it) => ({ ...it, place: it.place.replace(/^outlook\.(tonight|cover)/, "outlook.evening") }));
}

function openingProblems(document: Planned, currency: CurrencyCode): readonly Problem[] {
  const question = { mats: 1, currency, ...classOpeningQuestion(document) };
  return toldAt(readOpening(openingDocumentSchema.parse(question)), "outlook.opening.");
}

function toldAt(read: Result<unknown>, within: string): readonly Problem[] {
  return read.ok ? [] : read.problems.map((it) => ({ ...it, place: `${within}${it.place}` }));
}
