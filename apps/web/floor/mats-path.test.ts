import { expect, test } from "vitest";
import { rectangleFloor } from "#core/hall";
import { millimetresFromMetres } from "#core/words";
import { matsPath } from "./mats-path.ts";
import type { Viewport } from "./viewport.ts";

const mat = { length: millimetresFromMetres(1.6), width: millimetresFromMetres(0.6) };
const floor = { outline: rectangleFloor(8000, 10_000), teacher: null };
// 0.1 px a millimetre, the top left of the sheet at 0, 10000
const view: Viewport = { width: 800, height: 1000, scale: 0.1, left: 0, top: 10_000 };

test("a mat is its outline, a bar an eighth from the head and a dot between the bar and the end", () => {
  // centre 2000, 3000 is 200 px across and 700 px down; the head, up, is 80 px above; 160 ÷ 8 = 20 and 160 ÷ 16 = 10
  expect(matsPath({ mats: [{ centre: [2000, 3000], angle: 90 }] }, mat, floor, view)).toEqual({
    outlines: "M170.0 620.0L230.0 620.0L230.0 780.0L170.0 780.0Z",
    bars: "M170.0 640.0L230.0 640.0",
    dots: "M200.0 630.0L200.0 630.0",
  });
});

test("every mat of the plan is in the paths", () => {
  const mats = Array.from({ length: 7 }, (_, index) => ({
    centre: [1000 * index, 3000] as const,
    angle: 90,
  }));
  expect(matsPath({ mats }, mat, floor, view).outlines.match(/Z/g)).toHaveLength(7);
});

test("no mats are empty paths", () => {
  expect(matsPath({ mats: [] }, mat, floor, view)).toEqual({ outlines: "", bars: "", dots: "" });
});
