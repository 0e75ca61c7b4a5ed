import {
  bad,
  type CurrencyCode,
  good,
  problem,
  type Result,
  readAmount,
  readCurrency,
  together,
  togetherInOrder,
} from "#core/words";
import { readCapacity, readDemand } from "../heads/read-demand.ts";
import { type MonthlySpread, monthlySpread } from "../ladder/course-terms.ts";
import { readTiers } from "../ladder/read-tiers.ts";
import { readPart } from "../read-part.ts";
import { readMonthly } from "../read-monthly.ts";
import { readStudio } from "../studio/read-studio.ts";
import type { PriceDocument } from "./price-document.ts";
import type { PriceQuestion } from "./price-question.ts";
import { readCurveParts } from "./read-curve-parts.ts";

/** Reads what a price document says, every problem at its place. */
export function readPriceQuestion(document: PriceDocument): Result<PriceQuestion> {
  const currency = readCurrency(document.currency);
  if (!currency.ok) return currency;
  const code = currency.value;
  const read = together({
    cost: readAmount(document.cost, code, "cost"),
    perHead: readAmount(document.perHead, code, "perHead"),
    tiers: readTiers(document.prices, document.mix, code),
    monthly: readSpread(document, code),
    demand: readDemand(document.heads, document.dispersion),
    capacity: readCapacity(document.capacity, "capacity"),
    sessions: readTermSessions(document.sessions),
    doorToDoor: readDoorToDoor(document),
    deepest: readPart(document.deepest, "deepest"),
    rises: togetherInOrder(document.rises.map((rise, index) => readAmount(rise, code, `rises[${index}]`))),
    target: readTarget(document.target, code),
    curve: readCurveParts(document, code),
    studio: readStudio(document.studio, code),
  });
  if (!read.ok) return read;
  const { curve, ...parts } = read.value;
  return good({ currency: code, ...parts, ...curve });
}

/** Problem: "sessions-missing"; those of its figures are told with the prices. */
function readSpread({ prices }: PriceDocument, currency: CurrencyCode): Result<MonthlySpread | null> {
  const { monthly } = prices;
  if (monthly === undefined || !readMonthly(monthly, currency).ok) return good(null);
  const { perSession, sessionsPerYear } = monthly;
  if (sessionsPerYear === undefined) {
    const says = "There is a monthly payment, but not for how many sessions a year.";
    const next = "Give the sessions of a year.";
    return bad(problem("sessions-missing", "prices.monthly.sessionsPerYear", says, next));
  }
  const price = readAmount(perSession, currency, "prices.monthly.perSession");
  return price.ok ? good(monthlySpread(price.value, sessionsPerYear)) : price;
}

// forty evenings are a year; the exact sum over more than that only takes long
function readTermSessions(sessions: number): Result<number> {
  if (Number.isInteger(sessions) && sessions >= 1 && sessions <= 60) return good(sessions);
  const says = `${sessions} sessions cannot be meant.`;
  return bad(problem("sessions-out-of-range", "sessions", says, "Give whole sessions, 1 to 60."));
}

/** Problems: "door-to-door-missing", "minutes-out-of-range". */
function readDoorToDoor({ doorToDoorMinutes, target, studio }: PriceDocument): Result<number | null> {
  const place = "doorToDoorMinutes";
  if (doorToDoorMinutes === undefined) {
    if (target === undefined && studio === undefined) return good(null);
    const says = "An hour from door to door was asked for, and how long a class takes is missing.";
    return bad(
      problem("door-to-door-missing", place, says, "Add the minutes of travel, set-up, class and pack-down."),
    );
  }
  if (Number.isInteger(doorToDoorMinutes) && doorToDoorMinutes >= 1 && doorToDoorMinutes <= 1440) {
    return good(doorToDoorMinutes);
  }
  const says = `${doorToDoorMinutes} minutes cannot be meant.`;
  return bad(problem("minutes-out-of-range", place, says, "Give whole minutes from 1 to 1440."));
}

function readTarget(
  target: PriceDocument["target"],
  currency: CurrencyCode,
): Result<PriceQuestion["target"]> {
  if (target === undefined) return good(null);
  return together({
    perHour: readAmount(target.perHour, currency, "target.perHour"),
    taxShare: readPart(target.taxShare, "target.taxShare"),
  });
}
