import { bad, good, problem, type Result, readExact, together, togetherInOrder } from "#core/words";
import type { Fraction } from "fraction.js";
import { readHireFactor } from "./hire-factor.ts";
import type { HireBand } from "./hire-terms.ts";
import type { HireTermsDocument } from "./hire-terms-document.ts";

const HOURS_IN_A_YEAR = 8784;

/** Volume bands in the order of their hours. Problems: "hire-hours-absurd", "hire-band-twice". */
export function readHireBands(
  bands: NonNullable<HireTermsDocument["bands"]>,
  place: string,
): Result<readonly HireBand[]> {
  const read = togetherInOrder(
    bands.map((band, index) =>
      together({
        fromHours: readHours(band.fromHoursPerYear, `${place}[${index}].fromHoursPerYear`),
        factor: readHireFactor(band.factor, `${place}[${index}].factor`),
      }),
    ),
  );
  if (!read.ok) return read;
  const hours = bands.map((band) => band.fromHoursPerYear);
  const twice = hours.findIndex((from, index) => hours.indexOf(from) < index);
  if (twice >= 0) {
    const says = `Two volume bands begin at ${hours[twice] ?? ""} hours a year.`;
    return bad(problem("hire-band-twice", `${place}[${twice}].fromHoursPerYear`, says, "Keep one of them."));
  }
  return good([...read.value].sort((a, b) => a.fromHours.compare(b.fromHours)));
}

/** Hours a year, or null when she has not stated them. */
export function readHoursPerYear(hours: number | undefined, place: string): Result<Fraction | null> {
  return hours === undefined ? good(null) : readHours(hours, place);
}

function readHours(hours: number, place: string): Result<Fraction> {
  return readExact(
    hours,
    place,
    { least: 0, most: HOURS_IN_A_YEAR },
    {
      code: "hire-hours-absurd",
      says: `${hours} hours a year cannot be meant.`,
      next: `Give hours a year from 0 to ${HOURS_IN_A_YEAR}.`,
    },
  );
}
