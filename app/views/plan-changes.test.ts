import { type WeekPlan, weekPlanSchema } from "#core/week";
import { expect, it } from "vitest";
import { planChanges } from "./plan-changes.ts";

const write = { amount: (text: string) => `£${text}`, name: (id: string) => id };
const mill = {
  id: "mill",
  name: "Lunch at the mill",
  kind: "corporate",
  place: "home",
  weekday: 2,
  start: "12:15",
  minutes: { teach: 45 },
  contribution: "70.00",
  sessions: 30,
};
const plan: WeekPlan = weekPlanSchema.parse({ candidates: [mill] });
const [one] = plan.candidates;
if (one === undefined) throw new Error("a candidate");
const changes = (part: Partial<WeekPlan>) => planChanges(plan, { ...plan, ...part }, write);

it("tells nothing where nothing is changed", () => {
  expect(changes({})).toEqual([]);
});

it("tells what is done with a class, of her own or another", () => {
  const own = [{ class: "Tuesday", out: true, fixed: false }];
  expect(changes({ own })).toEqual(["without Tuesday"]);
  expect(changes({ candidates: [{ ...one, fixed: true, contribution: "75.00" }] })).toEqual([
    "Lunch at the mill promised",
    "Lunch at the mill at £75.00 a session",
  ]);
  expect(changes({ candidates: [{ ...one, start: "12:30" }] })).toEqual(["Lunch at the mill changed"]);
  expect(changes({ candidates: [] })).toEqual(["Lunch at the mill taken away"]);
  expect(changes({ candidates: [one, { ...one, id: "new", name: "Noon" }] })).toEqual(["Noon added"]);
});

it("tells limits by what they are now, and the rest by name", () => {
  const limits = { ...plan.limits, classesAWeek: null, evenings: 2, restHours: 9 };
  expect(changes({ limits })).toEqual([
    "any number of classes a week",
    "2 evenings at most",
    "9 hours of rest",
  ]);
  expect(
    changes({
      commitments: [{ weekday: 1, from: "15:00", until: "16:00" }],
      wishes: [{ kind: "day-free", weekday: 6, perWeek: "4.00" }],
      travelCost: { perKm: "0.50", perHour: "0" },
      target: "5000.00",
      weeks: 38,
    }),
  ).toEqual([
    "other fixed times",
    "other wishes",
    "another price of travel",
    "38 teaching weeks",
    "a target of £5000.00 a year",
  ]);
});
