import { bad, good, type Problem, problem, type Result, together, togetherInOrder } from "#core/words";
import { readClock } from "./read-candidates.ts";
import { readWhole } from "./read-whole.ts";
import type { WeekDocument } from "./week-document.ts";
import type { Candidate, Commitment } from "./week-types.ts";
import { dayName } from "./week-words.ts";

/** When she is not free. Problems: "time-unreadable", "week-count", "commitment-backwards". */
export function readCommitments(documents: WeekDocument["commitments"]): Result<readonly Commitment[]> {
  return togetherInOrder(documents.map((it, at) => readOne(it, `commitments[${at}]`)));
}

function readOne(document: WeekDocument["commitments"][number], place: string): Result<Commitment> {
  const read = together({
    weekday: readWhole(document.weekday, `${place}.weekday`, "a weekday", 1, 7),
    from: readClock(document.from, `${place}.from`),
    until: readClock(document.until, `${place}.until`),
  });
  if (!read.ok) return read;
  const { name } = document;
  const called =
    name === undefined || name.trim() === "" ? `What is fixed on ${dayName(read.value.weekday)}` : name;
  if (read.value.until > read.value.from) return good({ name: called, ...read.value });
  const says = `${called} ends at ${document.until}, which is not after ${document.from}.`;
  const next = "Put the later time at its end; what goes over midnight is two, one for each day.";
  return bad(problem("commitment-backwards", `${place}.until`, says, next));
}

/** Fixed times that overlap each other or a promised class, by their names. Problem: "fixed-overlap". */
export function commitmentOverlaps(
  commitments: readonly Commitment[],
  candidates: readonly Candidate[],
): readonly Problem[] {
  const promised = candidates.flatMap(({ fixed, name, weekday, accessFrom, accessUntil }) =>
    fixed ? [{ name, weekday, from: accessFrom, until: accessUntil }] : [],
  );
  return commitments.flatMap((one, at) =>
    [...promised, ...commitments.slice(0, at)].flatMap((other) => {
      if (one.weekday !== other.weekday || one.from >= other.until || other.from >= one.until) return [];
      const says = `${other.name} and ${one.name} are both fixed, and they overlap.`;
      const next = "Let one of them go, or look at the times with what comes before and after.";
      return [problem("fixed-overlap", `commitments[${at}]`, says, next)];
    }),
  );
}
