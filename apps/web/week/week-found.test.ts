import type { WeekHead, WeekStep } from "#core/week";
import { expect, test } from "vitest";
import { weekSoFar } from "./week-found.ts";

const week = (earns: string): WeekHead => ({
  sentences: [],
  earns,
  wishes: "0.00",
  leaves: earns,
  bound: earns,
  proven: true,
  load: { classes: 1, days: 1, evenings: 0, doorToDoorMinutes: 90 },
  days: [],
  chosen: ["a"],
  ties: [],
  nextBestLeavesLess: null,
  guessedWays: [],
  working: [],
});

test("the pieces are put together, and a later week takes the place of an earlier", () => {
  const steps: readonly WeekStep[] = [
    { kind: "week", week: week("100.00"), sure: false },
    { kind: "week", week: week("120.00"), sure: true },
    { kind: "curve", by: "evenings", points: [] },
    { kind: "rejected", line: { id: "b", name: "B", lacksPerSession: null, withIt: null, noRoomFor: [] } },
  ];
  const found = weekSoFar(steps);
  expect([found.week?.earns, found.sure, found.evenings, found.classes]).toEqual(["120.00", true, [], null]);
  expect(found.rejected.map(({ id }) => id)).toEqual(["b"]);
  expect(weekSoFar(steps.slice(0, 1))).toMatchObject({ sure: false, week: { earns: "100.00" } });
});

test("nothing is known of nothing, and why there is no week is told", () => {
  expect(weekSoFar([])).toMatchObject({ week: null, problem: null, chosen: [] });
  const problem = { code: "week-impossible", place: "limits", says: "No week can.", next: "Let go of one." };
  expect(weekSoFar([{ kind: "none", problem }]).problem).toEqual(problem);
});
