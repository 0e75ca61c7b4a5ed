import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { type ClosedSpan, useByDate } from "./use-by-date.ts";

const day = (text: string): Temporal.PlainDate => Temporal.PlainDate.from(text);
const closed = (from: string, until: string, why: string): ClosedSpan => ({
  from: day(from),
  until: day(until),
  why,
});

// Tuesdays from Tuesday 12 January 2027
const tuesdays = { from: day("2027-01-12"), weekday: 2 };

function dated(spans: readonly ClosedSpan[], weeks: number): string {
  const found = useByDate({ ...tuesdays, closed: spans }, weeks);
  return found.ok ? found.value.date.toString() : (found.problems[0]?.code ?? "");
}

test("PRICE-22 with nothing closed the eighth Tuesday is seven weeks after the first", () => {
  expect(dated([], 8)).toBe("2027-03-02");
  expect(dated([], 1)).toBe("2027-01-12");
});

test("PRICE-22 half-term takes a Tuesday and moves the date by a week", () => {
  expect(dated([closed("2027-02-15", "2027-02-19", "half-term")], 8)).toBe("2027-03-09");
});

test("PRICE-22 a closure that the moved date falls into moves it again", () => {
  const spans = [
    closed("2027-02-15", "2027-02-19", "half-term"),
    closed("2027-03-09", "2027-03-09", "an election"),
  ];
  const found = useByDate({ ...tuesdays, closed: spans }, 8);
  if (!found.ok) throw new Error("not ok");
  expect(found.value.date.toString()).toBe("2027-03-16");
  expect(found.value.withoutClosures.toString()).toBe("2027-03-02");
  expect(found.value.lost.map(({ date, why }) => `${date.toString()} ${why}`)).toEqual([
    "2027-02-16 half-term",
    "2027-03-09 an election",
  ]);
});

test("PRICE-22 a closure on other days or after the date moves nothing", () => {
  expect(
    dated([closed("2027-02-17", "2027-02-22", "a sale"), closed("2027-03-09", "2027-03-09", "late")], 8),
  ).toBe("2027-03-02");
});

test("a pass bought on a Friday counts from the next Tuesday", () => {
  const found = useByDate({ from: day("2027-01-15"), weekday: 2, closed: [] }, 2);
  expect(found.ok && found.value.date.toString()).toBe("2027-01-26");
});

test("a hall that is shut for a lifetime has no use-by", () => {
  expect(dated([closed("2027-01-01", "2090-01-01", "sold")], 8)).toBe("use-by-out-of-sight");
});
