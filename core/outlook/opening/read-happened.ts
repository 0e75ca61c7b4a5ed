import { bad, good, problem, type Result, together } from "#core/words";
import { readCount } from "../read-count.ts";
import type { Happened } from "./learned-shares.ts";
import type { OpeningDocument } from "./opening-document.ts";

/** Problems: those of counts, "came-more-than-accepted", "returned-more-than-came". */
export function readHappened({ happened }: OpeningDocument): Result<Happened | null> {
  if (happened === undefined) return good(null);
  const range = { least: 0, most: 10_000 };
  const read = together({
    accepted: readCount(happened.accepted, "happened.accepted", "people accepted", range),
    came: readCount(happened.came, "happened.came", "people who came", range),
    returned:
      happened.returned === undefined
        ? good(null)
        : readCount(happened.returned, "happened.returned", "people who came again", range),
  });
  if (!read.ok) return read;
  const { accepted, came, returned } = read.value;
  if (came > accepted) return bad(moreCame(came, accepted));
  return returned !== null && returned > came ? bad(moreReturned(returned, came)) : good(read.value);
}

function moreCame(came: number, accepted: number) {
  const says = `${came} came of ${accepted} accepted.`;
  const next = "Count those who came without a word apart, or look at the numbers again.";
  return problem("came-more-than-accepted", "happened.came", says, next);
}

function moreReturned(returned: number, came: number) {
  const says = `${returned} came again of ${came} who came.`;
  return problem("returned-more-than-came", "happened.returned", says, "Look at the numbers again.");
}
