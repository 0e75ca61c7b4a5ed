import { expect, test } from "vitest";
import { paceOf } from "./register-pace.ts";

test("a pace is all actions over the time of all rounds, and its 99th percentile the slowest but one in a hundred", () => {
  // 200 actions of 1 … 200 ms in two rounds of 500 ms: 200 in 1 s; the 198th of 200 is the 99th percentile
  const one = Array.from({ length: 100 }, (_, index) => 2 * index + 1);
  const other = Array.from({ length: 100 }, (_, index) => 2 * index + 2);
  expect(
    paceOf([
      [...one, 500],
      [...other, 500],
    ]),
  ).toEqual({ count: 200, perSecond: 200, median: 100, p99: 198 });
});
