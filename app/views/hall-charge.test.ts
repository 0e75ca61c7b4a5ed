import { plainWriter } from "#core/words";
import { expect, test } from "vitest";
import { hallCharge } from "./hall-charge.ts";

const writer = plainWriter("en-GB");
const thursday = {
  zone: "Europe/London",
  starts: "2026-05-07T17:30:00Z",
  hire: 2700,
  currency: "GBP",
  noticeDays: null,
} as const;

test("a hall that takes its date back twelve days before asks nothing for it", () => {
  const found = hallCharge({ ...thursday, why: "hall shut", now: "2026-04-25T10:00:00Z" }, writer);
  expect(found.charged).toBe(0);
  expect(found.sentence).toContain("12 days before");
  expect(found.sentence).toContain("The hire of 27.00 GBP is not payable.");
});

test("she pays all of it past the notice of her class sheet, or of 28 days where that says nothing", () => {
  // 7 May less 28 days is 9 April: told on that day it is free, a day later it is not
  expect([by("2026-04-09T10:00:00Z"), by("2026-04-10T10:00:00Z")]).toEqual([0, 2700]);
  // seven days' notice: free until 30 April
  expect([by("2026-04-30T10:00:00Z", 7), by("2026-05-01T10:00:00Z", 7)]).toEqual([0, 2700]);
});

function by(now: string, noticeDays: number | null = null): number {
  return hallCharge({ ...thursday, why: "teacher", now, noticeDays }, writer).charged;
}
