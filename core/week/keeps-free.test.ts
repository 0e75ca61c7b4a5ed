import { loadSolver } from "#kernels/search";
import { expect, it } from "vitest";
import { bestWeek, weekSearch } from "./best-week.ts";
import { countWeek } from "./check-week.ts";
import { conflict } from "./conflict.ts";
import { readWeek } from "./read-week.ts";
import type { WeekDocumentInput } from "./week-document.ts";
import { weekDocumentSchema } from "./week-document.ts";
import type { Week } from "./week-types.ts";
import { bindingWords } from "./week-words.ts";

// thirty minutes and 10 to spare to the barn: a class at 17:00 is left for at 16:20 and home from at 18:30
const at = (id: string, start: string, fixed = false) => ({
  id,
  name: id,
  kind: "own" as const,
  place: "barn",
  weekday: 3,
  start,
  minutes: { teach: 60 },
  contribution: "40.00",
  sessions: 40,
  fixed,
});

function read(part: Partial<WeekDocumentInput>) {
  return readWeek(
    weekDocumentSchema.parse({
      currency: "GBP",
      home: "home",
      places: [{ id: "home" }, { id: "barn" }],
      travel: [{ from: "home", to: "barn", minutes: 30, km: 10 }],
      candidates: [at("late", "17:00")],
      ...part,
    }),
  );
}

function weekOf(part: Partial<WeekDocumentInput>): Week {
  const week = read(part);
  if (!week.ok) throw new Error(JSON.stringify(week.problems));
  return week.value;
}

async function chosenOf(part: Partial<WeekDocumentInput>): Promise<readonly number[]> {
  const found = bestWeek(weekSearch(weekOf(part), await loadSolver()), { goal: "leaves" });
  return found.kind === "found" ? found.chosen : [];
}

const run = (from: string, until: string, weekday = 3) => [{ name: "School run", weekday, from, until }];

it("WEEK-8: a fixed time may end when she has to leave and begin when she is home, not a minute more", async () => {
  expect(await chosenOf({ commitments: run("15:00", "16:20") })).toEqual([0]);
  expect(await chosenOf({ commitments: run("15:00", "16:21") })).toEqual([]);
  expect(await chosenOf({ commitments: run("18:30", "19:00") })).toEqual([0]);
  expect(await chosenOf({ commitments: run("18:29", "19:00") })).toEqual([]);
  expect(await chosenOf({ commitments: run("16:00", "19:00", 4) })).toEqual([0]);
});

it("WEEK-8: between two classes it is kept when she goes home for it", async () => {
  const candidates = [at("early", "10:00"), at("late", "17:00")];
  // home from the first at 11:30, left for the second at 16:20
  expect(await chosenOf({ candidates, commitments: run("11:30", "16:20") })).toEqual([0, 1]);
  expect(await chosenOf({ candidates, commitments: run("11:29", "16:20") })).toEqual([1]);
});

it("WEEK-8: who is home after midnight is not free on the next day's first minutes, Sunday before Monday", async () => {
  const candidates = [{ ...at("late", "22:45"), weekday: 7 }];
  const limits = { freeDays: 0, restHours: 0 };
  // home at 0:15 on Monday
  expect(await chosenOf({ candidates, limits, commitments: run("00:15", "01:00", 1) })).toEqual([0]);
  expect(await chosenOf({ candidates, limits, commitments: run("00:10", "01:00", 1) })).toEqual([]);
});

it("WEEK-8: the checker finds a week that does not keep it free", () => {
  expect(countWeek(weekOf({ commitments: run("16:00", "16:30") }), [0]).faults).toEqual([
    "School run is not kept free",
  ]);
  expect(countWeek(weekOf({ commitments: run("18:30", "19:00") }), [0]).faults).toEqual([]);
});

it("WEEK-14: a fixed time is among what is in each other's way", async () => {
  const week = weekOf({ candidates: [at("late", "17:00", true)], commitments: run("15:00", "16:45") });
  const found = conflict(weekSearch(week, await loadSolver()));
  expect(found?.map((it) => bindingWords(week, it))).toEqual([
    "the promise of late",
    "School run on Wednesday, 15:00 to 16:45",
  ]);
});

it("WEEK-8: fixed times that overlap, or end before they begin, are told with their names", () => {
  const both = read({
    candidates: [at("late", "17:00", true)],
    commitments: [...run("17:30", "18:30"), { weekday: 3, from: "18:00", until: "19:00" }],
  });
  expect(both.ok ? [] : both.problems.map(({ code, says }) => [code, says])).toEqual([
    ["fixed-overlap", "late and School run are both fixed, and they overlap."],
    ["fixed-overlap", "School run and What is fixed on Wednesday are both fixed, and they overlap."],
  ]);
  const back = read({ commitments: run("18:00", "17:00") });
  expect(back.ok ? [] : back.problems).toMatchObject([
    { code: "commitment-backwards", place: "commitments[0].until" },
  ]);
});
