import { readCurrency } from "#core/price";
import {
  bad,
  good,
  type PracticeDocument,
  type Problem,
  practiceDocumentSchema,
  problem,
  type ReadDocument,
  readDocument,
  type Result,
} from "#core/words";
import { Temporal } from "temporal-polyfill";

/** Problems: those of readDocument, "name-missing", "currency-unknown", "zone-unknown". */
export function readPractice(input: unknown): Result<ReadDocument<PracticeDocument>> {
  const read = readDocument(practiceDocumentSchema, input);
  if (!read.ok) return read;
  const { name, currency, zone } = read.value.value;
  const known = readCurrency(currency);
  const problems: readonly Problem[] = [
    ...(name.trim() === "" ? [nameMissing()] : []),
    ...(known.ok ? [] : known.problems),
    ...(isZone(zone) ? [] : [zoneUnknown(zone)]),
  ];
  return problems.length === 0 ? good(read.value) : bad(...problems);
}

function isZone(zone: string): boolean {
  try {
    Temporal.PlainDate.from("2026-01-01").toZonedDateTime(zone);
    return true;
  } catch {
    return false;
  }
}

function nameMissing(): Problem {
  return problem(
    "name-missing",
    "name",
    "The practice has no name.",
    "Give your own name or a trading name.",
  );
}

function zoneUnknown(zone: string): Problem {
  const says = `“${zone.slice(0, 60)}” is not a time zone.`;
  return problem("zone-unknown", "zone", says, "Give it like Europe/London or America/Chicago.");
}
