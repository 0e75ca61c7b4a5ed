import { readHireTerms } from "#core/hall";
import {
  bad,
  type CurrencyCode,
  good,
  type Minor,
  problem,
  type Result,
  readAmount,
  readCurrency,
  readDate,
  readDocument,
  readExact,
  readMinutes,
  together,
} from "#core/words";
import type { Fraction } from "fraction.js";
import { type EveningDocument, eveningDocumentSchema } from "./evening-document.ts";
import type { Evening, EveningMinutes } from "./evening-types.ts";
import { readPayers } from "./read-payers.ts";

/** A sound evening, and the places in the document that nothing reads, like a misspelt key. */
export type ReadEvening = { readonly evening: Evening; readonly unused: readonly string[] };

/** Reads an evening document; every problem with its place in the document. */
export function readEvening(input: unknown): Result<ReadEvening> {
  const read = readDocument(eveningDocumentSchema, input);
  if (!read.ok) return read;
  const { value: document, unused } = read.value;
  const currency = readCurrency(document.currency);
  if (!currency.ok) return currency;
  const parsed = readParts(document, currency.value);
  return parsed.ok ? good({ evening: { currency: currency.value, ...parsed.value }, unused }) : parsed;
}

function readParts(document: EveningDocument, currency: CurrencyCode): Result<Omit<Evening, "currency">> {
  return together({
    date: readDate(document.date, "date"),
    hire: readHireTerms(document.hire, currency, "hire"),
    minutes: readEveningMinutes(document),
    travelCost: readAmount(document.travelCost, currency, "travelCost"),
    otherCost: readAmount(document.otherCost, currency, "otherCost"),
    perHead: readAmount(document.perHead, currency, "perHead"),
    payers: readPayers(document.prices, document.mix, currency),
    heads: readHeads(document.heads),
    fixed: readFixed(document, currency),
  });
}

function readEveningMinutes({ minutes }: EveningDocument): Result<EveningMinutes> {
  return together({
    setUp: readMinutes(minutes.setUp, "minutes.setUp"),
    class: readMinutes(minutes.class, "minutes.class", { least: 1, most: 1440 }),
    packDown: readMinutes(minutes.packDown, "minutes.packDown"),
    travel: readMinutes(minutes.travel, "minutes.travel"),
    // a class adds two figures of a day at most to it: preparation and messages
    other: readMinutes(minutes.other, "minutes.other", { least: 0, most: 2880 }),
  });
}

const MOST_HEADS = 1000;

/** Problem: "heads-out-of-range". */
export function readHeads(heads: number, place = "heads"): Result<Fraction> {
  return readExact(
    heads,
    place,
    { least: 0, most: MOST_HEADS },
    {
      code: "heads-out-of-range",
      says: `${heads} people on mats cannot be meant.`,
      next: `Give the people of an ordinary evening, 0 to ${MOST_HEADS}; a mean like 9.5 is fine.`,
    },
  );
}

/** Problems: "sessions-missing", "sessions-out-of-range". */
function readFixed(document: EveningDocument, currency: CurrencyCode): Result<Evening["fixed"]> {
  const { fixedPerYear, sessionsPerYear } = document;
  if (sessionsPerYear === undefined) {
    if (fixedPerYear === undefined) return good(null);
    const says = "There are fixed costs a year, but not over how many sessions they are spread.";
    return bad(problem("sessions-missing", "sessionsPerYear", says, "Give the sessions of a year."));
  }
  const sessions = readSessions(sessionsPerYear);
  const perYear: Result<Minor> = readAmount(fixedPerYear ?? "0", currency, "fixedPerYear");
  const read = together({ perYear, sessions });
  return read.ok && fixedPerYear === undefined ? good(null) : read;
}

function readSessions(sessions: number): Result<Fraction> {
  return readExact(
    sessions,
    "sessionsPerYear",
    { least: 1, most: 1000 },
    {
      code: "sessions-out-of-range",
      says: `${sessions} sessions a year cannot be meant.`,
      next: "Give the sessions of a year, 1 to 1000.",
    },
  );
}
