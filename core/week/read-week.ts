import { isZone } from "#kernels/calendar";
import {
  bad,
  good,
  type Problem,
  problem,
  readAmount,
  readCurrency,
  readMinutes,
  type Result,
  together,
} from "#core/words";
import { readCandidates } from "./read-candidates.ts";
import { commitmentOverlaps, readCommitments } from "./read-commitments.ts";
import { clockChangeProblems } from "./clock-change-hours.ts";
import { readLimits } from "./read-limits.ts";
import { missingWays, placeUnknown, readWays } from "./read-ways.ts";
import { readWhole } from "./read-whole.ts";
import { readWishes } from "./read-wishes.ts";
import type { WeekDocument } from "./week-document.ts";
import type { Place, Week } from "./week-types.ts";

/**
 * A week document as sound values. Problems: "place-twice", "place-unknown", "zone-unknown", "two-zones",
 * "map-point-out-of-range", "estimate-out-of-range" and those of the ways, candidates, commitments, limits and
 * wishes.
 */
export function readWeek(document: WeekDocument): Result<Week> {
  const currency = readCurrency(document.currency);
  const places = readPlaces(document);
  if (!currency.ok || !places.ok) return joined(currency, places);
  const home = places.value.findIndex(({ id }) => id === document.home);
  const read = together({
    home: home < 0 ? bad(placeUnknown("home", document.home)) : good(home),
    ways: readWays(document, places.value),
    perKm: readAmount(document.travelCost.perKm, currency.value, "travelCost.perKm"),
    perHour: readAmount(document.travelCost.perHour, currency.value, "travelCost.perHour"),
    homeBetween: readMinutes(document.homeBetween, "homeBetween"),
    commitments: readCommitments(document.commitments),
    candidates: readCandidates(document.candidates, places.value, currency.value),
    limits: readLimits(document.limits),
    weeks: readWhole(document.weeks, "weeks", "teaching weeks a year", 1, 53),
    target:
      document.target === undefined ? good(null) : readAmount(document.target, currency.value, "target"),
  });
  if (!read.ok) return read;
  const { ways, candidates, weeks, ...rest } = read.value;
  const faults = [
    ...missingWays(ways, places.value, rest.home, candidates),
    ...commitmentOverlaps(rest.commitments, candidates),
    ...clockChangeProblems(candidates, zoneOf(document)),
  ];
  if (faults.length > 0) return bad(...faults);
  const wishes = readWishes(document, weeks, candidates, currency.value);
  if (!wishes.ok) return wishes;
  const { guesses } = document;
  const base = { currency: currency.value, places: places.value, guesses };
  return good({ ...rest, ...base, ways, candidates, wishes: wishes.value });
}

function joined(...parts: readonly Result<unknown>[]): Result<never> {
  return bad(...parts.flatMap((part) => (part.ok ? [] : part.problems)));
}

function readPlaces(document: WeekDocument): Result<readonly Place[]> {
  const { places, estimate } = document;
  const problems = [...placesTwice(places), ...zoneProblems(document), ...mapProblems(places)];
  if (!(estimate.detour >= 1 && estimate.detour <= 5 && estimate.kmPerHour >= 2 && estimate.kmPerHour <= 130))
    problems.push(
      problem(
        "estimate-out-of-range",
        "estimate",
        "The guess of travel rests on a detour or a speed that cannot be meant.",
        "Give a detour from 1 to 5, and 2 to 130 km an hour.",
      ),
    );
  if (problems.length > 0) return bad(...problems);
  return good(places.map(({ id, name }) => ({ id, name: name ?? id })));
}

function placesTwice(places: WeekDocument["places"]): readonly Problem[] {
  return places.flatMap(({ id }, at) => {
    if (places.findIndex((it) => it.id === id) === at) return [];
    const says = `Two places are called “${id.slice(0, 40)}”.`;
    return [problem("place-twice", `places[${at}].id`, says, "Give each an id of its own.")];
  });
}

function zoneOf({ zone, home, places }: WeekDocument): string | undefined {
  return zone ?? places.find(({ id }) => id === home)?.zone;
}

/** One week is planned in one zone: times of two cannot be put in an order with a pencil. */
function zoneProblems(document: WeekDocument): readonly Problem[] {
  const { zone, places } = document;
  const own = zoneOf(document);
  const unknown = [zone, ...places.map((it) => it.zone)].filter((it) => it !== undefined && !isZone(it));
  if (unknown.length > 0) {
    const says = `“${String(unknown[0]).slice(0, 40)}” is not a zone we know.`;
    return [problem("zone-unknown", "zone", says, "Give an IANA name like Europe/London.")];
  }
  return places.flatMap((place, at) => {
    if (place.zone === undefined || place.zone === own) return [];
    const where = own === undefined ? "the others have none stated" : `the week is in ${own}`;
    const says = `${place.name ?? place.id} is in ${place.zone}, and ${where}.`;
    const next = "Plan a week in one zone, and write all times as the clock at home shows them.";
    return [problem("two-zones", `places[${at}].zone`, says, next)];
  });
}

function mapProblems(places: WeekDocument["places"]): readonly Problem[] {
  return places.flatMap(({ id, name, at: point }, at) => {
    if (point === undefined || (Math.abs(point.latitude) <= 90 && Math.abs(point.longitude) <= 180))
      return [];
    const says = `${name ?? id} is nowhere on the map.`;
    const next = "Give latitude from −90 to 90 and longitude from −180 to 180.";
    return [problem("map-point-out-of-range", `places[${at}].at`, says, next)];
  });
}
