import { dateOfDay, weekdayOfDay } from "#kernels/calendar";
import { bad, good, type Result } from "#core/words";
import type { Banded, ComingFit, PersonComing, PersonSeen, Records } from "./coming-types.ts";
import { type FittedModel, fittedModel } from "./fitted-model.ts";
import { byName } from "./by-name.ts";
import { aheadProblems, notSeenProblems } from "./weeks-problems.ts";
import { readRecords, type RecordsRead } from "./read-records.ts";

export type ComingQuestion = Records & {
  /** teaching weeks ahead, 12 unless told */
  readonly ahead?: number;
  /** whole teaching weeks without a visit after which a person is listed, 4 unless told: a guess */
  readonly notSeenFor?: number;
  /** bg-bb, unless told, counts a week as one chance to come, as the roll does; bg-nbd is for coming at any time */
  readonly model?: ComingFit["model"];
};

export type Coming = {
  readonly until: string;
  readonly ahead: number;
  readonly notSeenFor: number;
  /** by name */
  readonly people: readonly PersonComing[];
  /** of those, the ones not seen for so long; by name */
  readonly notSeen: readonly PersonComing[];
  readonly visits: number;
  readonly visitsLater: number;
  /** the Mondays of weeks in which nobody came, though the class is taken to have run */
  readonly emptyWeeks: readonly string[];
  readonly cameAgain: number;
  /** true where every visit falls on the same weekday, as in a weekly class */
  readonly oneWeekday: boolean;
  /** null where fewer than four people came more than once */
  readonly fit: ComingFit | null;
  /** visits of all these people in the weeks ahead, in a band that holds what happens four times of five */
  readonly expectedVisits: Banded | null;
  /** visits after the first to expect of somebody new in as many weeks */
  readonly expectedOfNew: number | null;
};

/** With fewer who came more than once nothing is worked out: chance would say it all. */
export const LEAST_CAME_AGAIN = 4;

/**
 * Who is still coming, from dated visits. Time runs in teaching weeks: a week in which the class did not run is no
 * absence. Problems: those of the records; "weeks-ahead-out-of-range", "not-seen-out-of-range".
 */
export function stillComing(question: ComingQuestion): Result<Coming> {
  const { ahead = 12, notSeenFor = 4, model = "bg-bb" } = question;
  const problems = [...aheadProblems(ahead), ...notSeenProblems(notSeenFor)];
  const read = readRecords(question);
  if (!read.ok) return bad(...problems, ...read.problems);
  if (problems.length > 0) return bad(...problems);
  const cameAgain = read.value.people.filter(({ days }) => days.length > 1).length;
  const found = cameAgain < LEAST_CAME_AGAIN ? null : fittedModel(read.value, model, ahead);
  const people = read.value.people.map((person) =>
    personComing(read.value, person, found?.figuresOf ?? null),
  );
  const inOrder = people.sort(byName);
  return good({
    until: dateOfDay(read.value.until),
    ahead,
    notSeenFor,
    people: inOrder,
    notSeen: inOrder.filter((it) => it.weeksSince >= notSeenFor),
    visits: read.value.visits,
    visitsLater: read.value.visitsLater,
    emptyWeeks: read.value.emptyWeeks.map(dateOfDay),
    cameAgain,
    oneWeekday: new Set(read.value.people.flatMap(({ days }) => days.map(weekdayOfDay))).size === 1,
    fit: found?.fit ?? null,
    expectedVisits: found?.total ?? null,
    expectedOfNew: found?.ofNew ?? null,
  });
}

function personComing(
  { time, until }: RecordsRead,
  { person, days }: PersonSeen,
  figuresOf: FittedModel["figuresOf"] | null,
): PersonComing {
  const last = days.at(-1) ?? until;
  const none = { stillComing: null, comesAgain: null, expectedVisits: null };
  return {
    person,
    visits: days.length,
    firstSeen: dateOfDay(days[0] ?? until),
    lastSeen: dateOfDay(last),
    weeksSince: Math.floor(time.at(until) - time.at(last) + 1e-9),
    ...(figuresOf === null ? none : figuresOf({ person, days })),
  };
}
