import { expect, test } from "vitest";
import { remembered } from "./remembered.ts";

test("a question that holds the same is worked out once, another one anew", () => {
  let worked = 0;
  const count = remembered(() => {
    worked += 1;
    return worked;
  });
  expect([
    count({ heads: [3] }),
    count({ heads: [3] }),
    count({ heads: [4] }),
    count({ heads: [3] }),
  ]).toEqual([1, 1, 2, 3]);
});
