import type { WeekHead } from "#core/week";
import { expect, it } from "vitest";
import { compareWeeks } from "./week-compare.ts";

const write = { amount: (text: string) => `£${text}`, name: (id: string) => id.toUpperCase() };
const head = (part: Partial<WeekHead>): WeekHead => ({
  sentences: [],
  earns: "9000.00",
  wishes: "100.00",
  leaves: "8900.00",
  bound: "8900.00",
  proven: true,
  load: { classes: 7, days: 5, evenings: 3, doorToDoorMinutes: 1000 },
  days: [],
  chosen: ["a", "b"],
  ties: [],
  nextBestLeavesLess: null,
  guessedWays: [],
  working: [],
  ...part,
});

it("tells the difference first, then which classes come and go, then figure by figure", () => {
  const load = { classes: 6, days: 5, evenings: 2, doorToDoorMinutes: 880 };
  const told = compareWeeks(
    head({}),
    head({ earns: "8500.10", leaves: "8400.10", load, chosen: ["a", "c"] }),
    write,
  );
  // 9000.00 − 8500.10 = 499.90; 1000 − 880 = 120 minutes
  expect(told.says).toBe(
    "The week on trial earns £499.90 a year less, with 2 h a week less from door to door.",
  );
  expect(told.changes).toBe("C would come and B go.");
  expect(told.rows.map(({ label, more }) => [label, more])).toEqual([
    ["Earned a year after travel", "−£499.90"],
    ["Wishes not met, at your prices", ""],
    ["Left of both", "−£499.90"],
    ["Classes a week", "−1"],
    ["Days with a class", ""],
    ["Evenings", "−1"],
    ["Door to door a week", "−2 h"],
  ]);
});

it("tells where nothing changes, and where classes only come or only go", () => {
  expect(compareWeeks(head({}), head({}), write)).toMatchObject({
    says: "The week on trial earns as much, in as much time.",
    changes: "The same classes are in both.",
  });
  expect(compareWeeks(head({}), head({ chosen: ["a"] }), write).changes).toBe("B would go and nothing come.");
  expect(compareWeeks(head({}), head({ chosen: ["a", "b", "c"] }), write).changes).toBe(
    "C would come and nothing go.",
  );
});
