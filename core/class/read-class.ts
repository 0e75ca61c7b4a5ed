import { type CurrencyCode, branded, good, type Result, readDocument } from "#core/words";
import { type ClassDocument, classDocumentSchema } from "./class-document.ts";
import { readClassParts } from "./read-class-parts.ts";

// A class document has no currency of its own; without one any amount with as many decimals as some
// currency has will do, and the dinar of Kuwait has three.
const FINEST = branded<CurrencyCode>("KWD");

/** Reads a class document and looks at all of it; every problem at once, each with its place. */
export function readClass(input: unknown, currency: CurrencyCode = FINEST): Result<ClassDocument> {
  const read = readDocument(classDocumentSchema, input);
  if (!read.ok) return read;
  const parts = readClassParts(read.value.value, currency);
  return parts.ok ? good(read.value.value) : parts;
}
