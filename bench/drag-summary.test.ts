import { expect, test } from "vitest";
import { summariseDrags } from "./drag-summary.ts";

const record = { moves: 3, drawn: 3, medianMs: 0, workerMedianMs: 0 };

test("the middle and the worst are over the moves of all halls", () => {
  const summary = summariseDrags([
    { ...record, hall: "crypt", times: [10, 30, 60], worstMs: 60 },
    { ...record, hall: "tower", times: [20, 40], worstMs: 40 },
  ]);
  // 10 20 30 40 60: the middle is 30; 4 of 5 are under 50
  expect(summary).toEqual({
    halls: 2,
    moves: 5,
    medianMs: 30,
    worstMs: 60,
    worstHall: "crypt",
    withinAim: 0.8,
  });
});
