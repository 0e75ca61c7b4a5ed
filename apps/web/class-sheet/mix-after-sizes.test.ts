import { expect, test } from "vitest";
import { mixAfterSizes } from "./mix-after-sizes.ts";

test("a share follows its pass to another size", () => {
  expect(mixAfterSizes({ single: 0.4, "pass-10": 0.6 }, "pass", [10], [12])).toEqual({
    single: 0.4,
    "pass-12": 0.6,
  });
});

test("the people of a pass that is taken away pay singles", () => {
  // 0.25 + 0.5
  expect(mixAfterSizes({ single: 0.25, "pass-10": 0.5, free: 0.25 }, "pass", [10], [])).toEqual({
    single: 0.75,
    free: 0.25,
  });
});

test("a new pass begins with nobody", () => {
  expect(mixAfterSizes({ single: 1 }, "pass", [], [10])).toEqual({ single: 1, "pass-10": 0 });
});

test("a size half typed that is another pass's loses no share on the way: 10, 5, 50", () => {
  const half = mixAfterSizes({ "pass-5": 0.25, "pass-10": 0.75 }, "pass", [5, 10], [5, 5]);
  expect(half).toEqual({ "pass-5": 0.25, "pass-10": 0.75 });
  expect(mixAfterSizes(half, "pass", [5, 5], [5, 50])).toEqual({ "pass-5": 0.25, "pass-50": 0.75 });
});

test("a course has shares of its own and leaves those of passes alone", () => {
  const mix = { single: 0.5, "pass-6": 0.25, "course-6": 0.25 };
  expect(mixAfterSizes(mix, "course", [6], [8])).toEqual({ single: 0.5, "pass-6": 0.25, "course-8": 0.25 });
  // 0.5 + 0.25
  expect(mixAfterSizes(mix, "course", [6], [])).toEqual({ single: 0.75, "pass-6": 0.25 });
});
