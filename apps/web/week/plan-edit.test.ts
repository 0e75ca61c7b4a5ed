import { type WeekPlan, weekPlanSchema } from "#core/week";
import { expect, test } from "vitest";
import { ownOf, withOffered, withoutOther, withoutPlace, withOwn, withWay } from "./plan-edit.ts";
import { withGuess } from "../fields/with-guess.ts";
import { planOf } from "./plan-form.ts";

const plan: WeekPlan = weekPlanSchema.parse({
  places: [{ id: "home" }, { id: "mill" }, { id: "yard" }],
  travel: [
    { from: "home", to: "mill", minutes: 10, km: 5 },
    { from: "mill", to: "yard", minutes: 7, km: 3 },
  ],
  candidates: [
    {
      id: "cover",
      kind: "cover",
      place: "mill",
      weekday: 2,
      start: "09:30",
      minutes: { teach: 60 },
      contribution: "27.00",
      sessions: 18,
    },
  ],
  wishes: [
    { kind: "rather-not", candidate: "cover", perWeek: "3.00" },
    { kind: "day-free", weekday: 6, perWeek: "12.00" },
  ],
  guesses: ["candidates.cover.sessions", "travel.home.mill.km", "travel.mill.yard.km"],
});

test("what is said of a class of hers is kept only while it says something", () => {
  const out = withOwn(plan, "tuesday", { out: true });
  expect(out.own).toEqual([{ class: "tuesday", out: true, fixed: false }]);
  const priced = withOwn(out, "tuesday", { out: false, contribution: "50.00" });
  expect(ownOf(priced, "tuesday").contribution).toBe("50.00");
  expect(withOwn(priced, "tuesday", { contribution: undefined }).own).toEqual([]);
});

test("a class is left out or promised alike, hers or another", () => {
  expect(withOffered(plan, "cover", { fixed: true }).candidates[0]?.fixed).toBe(true);
  expect(withOffered(plan, "tuesday", { out: true }).own).toHaveLength(1);
});

test("what goes takes with it what is only about it", () => {
  const without = withoutOther(plan, "cover");
  expect([without.candidates, without.wishes.map(({ kind }) => kind)]).toEqual([[], ["day-free"]]);
  expect(without.guesses).toEqual(["travel.home.mill.km", "travel.mill.yard.km"]);
  const placeless = withoutPlace(plan, "yard");
  expect(placeless.travel.map(({ to }) => to)).toEqual(["mill"]);
  expect(placeless.guesses).toEqual(["candidates.cover.sessions", "travel.home.mill.km"]);
});

test("a way is stated in its place, added when it is new, and forgotten when it is emptied", () => {
  const changed = withWay(plan, "home", "mill", { minutes: 12, km: 5 });
  expect(changed.travel.map(({ minutes }) => minutes)).toEqual([12, 7]);
  expect(withWay(plan, "mill", "home", { minutes: 20, km: 6 }).travel).toHaveLength(3);
  expect(withWay(plan, "home", "mill", null).travel).toHaveLength(1);
});

test("a guess is marked once and taken off", () => {
  const twice = withGuess(withGuess(plan, "a", true), "a", true);
  expect(twice.guesses.filter((it) => it === "a")).toEqual(["a"]);
  expect(withGuess(twice, "a", false).guesses).toEqual(plan.guesses);
});

test("a plan that was never written, or cannot be read, is an empty one with a home", () => {
  for (const document of [{}, { own: "none" }])
    expect(planOf(document)).toMatchObject({ home: "home", places: [{ id: "home", name: "Home" }], own: [] });
});
