import { type AmountWriter, plainAmount, type Reply, withoutNoise } from "#core/price";
import { good, type Result, readDocument } from "#core/words";
import { outlookDocumentSchema } from "./outlook-document.ts";
import { outlookFound } from "./outlook-found.ts";
import { type OutlookJson, outlookJson } from "./outlook-json.ts";
import { outlookSentences } from "./outlook-sentences.ts";
import { outlookWorking } from "./outlook-working.ts";
import { readOutlook } from "./read-outlook.ts";

/**
 * Reads an outlook document and answers what to expect of the class, with bands, and what to do next. The same
 * document with the same seed gives the same answer. Problems: those of the document, all at once.
 */
export function outlookAnswer(input: unknown, write: AmountWriter = plainAmount): Result<Reply<OutlookJson>> {
  const read = readDocument(outlookDocumentSchema, input);
  if (!read.ok) return read;
  const outlook = readOutlook(read.value.value);
  if (!outlook.ok) return outlook;
  const found = outlookFound(outlook.value);
  const json = outlookJson(outlook.value, found, {
    sentences: outlookSentences(outlook.value, found, write),
    working: outlookWorking(outlook.value, found),
  });
  return good({ json: withoutNoise(json), unused: read.value.unused });
}
