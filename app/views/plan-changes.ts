import type { WeekPlan } from "#core/week";
import type { WeekWriter } from "./week-rows.ts";

/** What a plan on trial changes, a few words each: "without Tuesday evening", "6 classes a week at most". */
export function planChanges(before: WeekPlan, after: WeekPlan, write: WeekWriter): readonly string[] {
  return [
    ...ownChanges(before, after, write),
    ...otherChanges(before, after, write),
    ...limitChanges(before, after),
    ...restChanges(before, after, write),
  ];
}

type Own = WeekPlan["own"][number];

function ownChanges(before: WeekPlan, after: WeekPlan, write: WeekWriter): readonly string[] {
  const ids = [...new Set([...before.own, ...after.own].map((it) => it.class))];
  return ids.flatMap((id) => offeredChanges(write.name(id), said(before, id), said(after, id), write));
}

function said({ own }: WeekPlan, id: string): Own {
  return own.find((it) => it.class === id) ?? { class: id, out: false, fixed: false };
}

type Offered = Pick<Own, "out" | "fixed" | "contribution" | "sessions">;

function offeredChanges(name: string, was: Offered, is: Offered, write: WeekWriter): readonly string[] {
  return [
    ...(was.out === is.out ? [] : [is.out ? `without ${name}` : `with ${name} again`]),
    ...(was.fixed === is.fixed ? [] : [is.fixed ? `${name} promised` : `${name} no longer promised`]),
    ...(was.contribution === is.contribution
      ? []
      : [
          is.contribution === undefined
            ? `${name} as its class sheet has it`
            : `${name} at ${write.amount(is.contribution)} a session`,
        ]),
    ...(was.sessions === is.sessions || is.sessions === undefined
      ? []
      : [`${name} for ${is.sessions} sessions a year`]),
  ];
}

function otherChanges(before: WeekPlan, after: WeekPlan, write: WeekWriter): readonly string[] {
  const added = after.candidates.filter(({ id }) => before.candidates.every((it) => it.id !== id));
  const gone = before.candidates.filter(({ id }) => after.candidates.every((it) => it.id !== id));
  const kept = after.candidates.flatMap((is) => {
    const was = before.candidates.find(({ id }) => id === is.id);
    if (was === undefined || was === is) return [];
    const name = is.name ?? is.id;
    const told = offeredChanges(name, was, is, write);
    return told.length > 0 || JSON.stringify(was) === JSON.stringify(is) ? told : [`${name} changed`];
  });
  return [
    ...added.map(({ id, name }) => `${name ?? id} added`),
    ...gone.map(({ id, name }) => `${name ?? id} taken away`),
    ...kept,
  ];
}

type Limits = WeekPlan["limits"];

const limits: readonly (readonly [keyof Limits, (value: Limits[keyof Limits]) => string])[] = [
  [
    "classesAWeek",
    (value) => (value === null ? "any number of classes a week" : `${value} classes a week at most`),
  ],
  [
    "classesADay",
    (value) => (value === null ? "any number of classes a day" : `${value} classes a day at most`),
  ],
  [
    "backToBack",
    (value) => (value === null ? "any number of classes in a row" : `${value} classes in a row at most`),
  ],
  ["evenings", (value) => (value === null ? "any number of evenings" : `${value} evenings at most`)],
  ["freeDays", (value) => `${value} free days at least`],
  ["restHours", (value) => `${value} hours of rest`],
  ["breakMinutes", (value) => `a break is ${value} minutes`],
  ["eveningFrom", (value) => `an evening begins at ${value}`],
  ["buffer", (value) => `${value} minutes to spare on each way`],
];

function limitChanges(before: WeekPlan, after: WeekPlan): readonly string[] {
  return limits.flatMap(([key, says]) =>
    before.limits[key] === after.limits[key] ? [] : [says(after.limits[key])],
  );
}

function restChanges(before: WeekPlan, after: WeekPlan, write: WeekWriter): readonly string[] {
  const target =
    after.target === undefined ? "no target" : `a target of ${write.amount(after.target)} a year`;
  return [
    ...(same(before.commitments, after.commitments) ? [] : ["other fixed times"]),
    ...(same(before.wishes, after.wishes) ? [] : ["other wishes"]),
    ...(same(before.travel, after.travel) && same(before.places, after.places)
      ? []
      : ["other places or ways"]),
    ...(same(before.travelCost, after.travelCost) ? [] : ["another price of travel"]),
    ...(before.weeks === after.weeks ? [] : [`${after.weeks} teaching weeks`]),
    ...(before.homeBetween === after.homeBetween ? [] : [`home between from ${after.homeBetween} minutes`]),
    ...(before.target === after.target ? [] : [target]),
  ];
}

function same(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
