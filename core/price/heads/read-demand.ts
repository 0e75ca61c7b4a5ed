import { bad, good, problem, type Result } from "#core/words";
import type { CountModel } from "#kernels/statistics";

/**
 * How people come: 9 on average with a variance of 1.5 × 9. Dispersion 0 is always the same number, 1 is by
 * chance alone. Problems: "heads-out-of-range", "dispersion-out-of-range".
 */
export function readDemand(heads: number, dispersion: number, place = ""): Result<CountModel> {
  const at = (field: string): string => (place === "" ? field : `${place}.${field}`);
  if (!(heads >= 0 && heads <= MOST_HEADS)) {
    const says = `${heads} people on mats cannot be meant.`;
    const next = `Give the people of an ordinary evening, 0 to ${MOST_HEADS}; a mean like 9.5 is fine.`;
    return bad(problem("heads-out-of-range", at("heads"), says, next));
  }
  if (dispersion === 0) return good({ kind: "steady", mean: heads });
  if (dispersion === 1) return good({ kind: "poisson", mean: heads });
  if (dispersion > 1 && dispersion <= 20) return good({ kind: "varied", mean: heads, dispersion });
  const says = `A dispersion of ${dispersion} cannot be meant.`;
  const next =
    "Give 0 for always the same number, 1 for chance alone, and up to 20 for more uneven evenings.";
  return bad(problem("dispersion-out-of-range", at("dispersion"), says, next));
}

const MOST_HEADS = 1000;
const MOST_PLACES = 1000;

/** Problems: "capacity-zero", "capacity-out-of-range". */
export function readCapacity(capacity: number, place: string): Result<number> {
  if (capacity === 0) {
    const says = "A hall with no places takes nobody, so there is nothing to work out.";
    return bad(
      problem("capacity-zero", place, says, "Look at its mat plan and its posted number, or leave it out."),
    );
  }
  if (Number.isInteger(capacity) && capacity > 0 && capacity <= MOST_PLACES) return good(capacity);
  const says = `${capacity} places cannot be meant.`;
  return bad(problem("capacity-out-of-range", place, says, `Give whole places, 1 to ${MOST_PLACES}.`));
}
