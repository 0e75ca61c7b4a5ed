import type { KeepClear } from "#core/hall";
import { expect, test } from "vitest";
import { nextPlaceLabel, placesOf, withoutPlace } from "./places-of.ts";

const exit: KeepClear = { label: "Way out", outline: [] };
const bay: KeepClear = {
  label: "Place 1 for a wheelchair or a chair",
  outline: [],
  place: { number: 1, part: "bay" },
};
const way: KeepClear = {
  label: "Way to: Wheelchair or chair",
  outline: [],
  place: { number: 1, part: "way" },
};
const other: KeepClear = {
  label: "Place 2 for a wheelchair or a chair",
  outline: [],
  place: { number: 2, part: "bay" },
};

test("a bay and its way are one place, and go together", () => {
  expect(placesOf({ keepClear: [exit, bay, way, other] }).map((it) => it.number)).toEqual([1, 2]);
  expect(withoutPlace([exit, bay, way, other], 1)).toEqual([exit, other]);
});

test("a place is named by the number that it will have, also where an earlier one has gone", () => {
  expect(nextPlaceLabel({ keepClear: [exit] })).toBe("Place 1 for a wheelchair or a chair");
  expect(nextPlaceLabel({ keepClear: [exit, other] })).toBe("Place 3 for a wheelchair or a chair");
});
