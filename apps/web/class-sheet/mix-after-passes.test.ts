import { expect, test } from "vitest";
import { mixAfterPasses } from "./mix-after-passes.ts";

const of = (...sizes: readonly number[]) => sizes.map((classes) => ({ classes }));

test("a share follows its pass to another size", () => {
  expect(mixAfterPasses({ single: 0.4, "pass-10": 0.6 }, of(10), of(12))).toEqual({
    single: 0.4,
    "pass-12": 0.6,
  });
});

test("the people of a pass that is taken away pay singles", () => {
  // 0.25 + 0.5
  expect(mixAfterPasses({ single: 0.25, "pass-10": 0.5, free: 0.25 }, of(10), of())).toEqual({
    single: 0.75,
    free: 0.25,
  });
});

test("a new pass begins with nobody", () => {
  expect(mixAfterPasses({ single: 1 }, of(), of(10))).toEqual({ single: 1, "pass-10": 0 });
});

test("a size half typed that is another pass's loses no share on the way: 10, 5, 50", () => {
  const half = mixAfterPasses({ "pass-5": 0.25, "pass-10": 0.75 }, of(5, 10), of(5, 5));
  expect(half).toEqual({ "pass-5": 0.25, "pass-10": 0.75 });
  expect(mixAfterPasses(half, of(5, 5), of(5, 50))).toEqual({ "pass-5": 0.25, "pass-50": 0.75 });
});
