import {
  bad,
  type CurrencyCode,
  good,
  problem,
  type Result,
  readAmount,
  together,
  togetherInOrder,
} from "#core/words";
import type { PricesDocument } from "./evening-document.ts";
import { payerKey } from "./payer-key.ts";
import { type PricedRung, sizedRung } from "./priced-rung.ts";

/** Problems besides those of amounts: "course-size", "course-twice". */
export function readCourses(
  courses: NonNullable<PricesDocument["courses"]>,
  currency: CurrencyCode,
): Result<readonly PricedRung[]> {
  const sizes = courses.map(({ sessions }) => sessions);
  return togetherInOrder(
    courses.map(({ sessions, price }, index) => {
      const place = `prices.courses[${index}]`;
      const read = together({
        size: readCourseSize(sessions, sizes.indexOf(sessions) < index, `${place}.sessions`),
        price: readAmount(price, currency, `${place}.price`),
      });
      return read.ok ? good(sizedRung("course", sessions, read.value.price, place)) : read;
    }),
  );
}

function readCourseSize(sessions: number, again: boolean, place: string): Result<number> {
  if (payerKey(`course-${sessions}`) === null) {
    const says = `A course cannot have ${sessions} sessions.`;
    return bad(problem("course-size", place, says, "Give a whole number of sessions, 1 to 999."));
  }
  if (!again) return good(sessions);
  return bad(
    problem("course-twice", place, `There are two courses of ${sessions} sessions.`, "Keep one of them."),
  );
}
