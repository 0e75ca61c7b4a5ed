import { type ClassDocument, classDocumentSchema, readClass } from "#core/class";
import { type CurrencyCode, good, type ReadDocument, readDocument, type Result } from "#core/words";

/** A class document that is sound in every part, guesses and all; its amounts are in the given currency. */
export function checkClass(input: unknown, currency: CurrencyCode): Result<ReadDocument<ClassDocument>> {
  const read = readDocument(classDocumentSchema, input);
  if (!read.ok) return read;
  const sound = readClass(input, currency);
  return sound.ok ? good(read.value) : sound;
}
