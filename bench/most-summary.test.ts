import { expect, it } from "vitest";
import type { MostRecord } from "./most-measure.ts";
import { summariseMost } from "./most-summary.ts";

const record: MostRecord = {
  hall: "any",
  axes: 1,
  axesSettled: 1,
  lines: 24,
  count: 30,
  bound: 30,
  proven: true,
  areaBound: 35,
  steps: 9,
  faults: 0,
  msToFirst: 5,
  msToBest: 900,
  msToBound: 950,
  msInAll: 950,
  msLongestStep: 8,
  peakMb: 90,
  heapMb: 50,
  peer: { columns: 9, rows: 9, entries: 99, outcome: "best", count: 30, bound: 30, ms: 2000 },
};

it("counts what is proven, what is near, what came within a second, and who was sooner", () => {
  const open = { ...record, count: 40, bound: 43, proven: false, msToBest: 1001, peer: null };
  const near = { ...record, count: 41, bound: 42, proven: false, faults: 2 };
  const slower = { ...record, msInAll: 2001 };
  expect(summariseMost([record, open, near, slower])).toEqual({
    halls: 4,
    proven: 2,
    provenShare: 0.5,
    withinOne: 3,
    greatestGap: 3,
    bestWithinSecond: 3,
    faults: 2,
    // 6 + 16 + 17 + 6
    matsMoreThanLines: 45,
    msLongestStep: 8,
    peer: { halls: 3, tooLarge: 1, solved: 3, searchSooner: 1, peerSooner: 1 },
  });
});
