import { describe, expect, it } from "vitest";
import { rectangleAt, rectangleFloor } from "#core/hall";
import { millimetresFromMetres } from "#core/words";
import { headEnd, matCorners } from "./mat-corners.ts";

const mat = { length: millimetresFromMetres(1.8), width: millimetresFromMetres(0.6) };

describe("matCorners", () => {
  it("stands a mat of angle 90 upright about its centre", () => {
    // 2000 ± 300 across, 3000 ± 900 up
    const corners = matCorners(mat, { centre: [2000, 3000], angle: 90 });
    expect(corners.map(([x, y]) => [Math.round(x), Math.round(y)])).toEqual([
      [1700, 3900],
      [2300, 3900],
      [2300, 2100],
      [1700, 2100],
    ]);
  });
});

describe("headEnd", () => {
  const upright = [{ centre: [2000, 3000], angle: 90 }] as const;
  const outline = rectangleFloor(8000, 12_000);

  it("points at the top of the drawing, the front of a hall without a teacher’s place", () => {
    expect(headEnd(upright, { outline, teacher: null })).toBe(1);
  });

  it("points down where the teacher stands at the bottom wall", () => {
    expect(headEnd(upright, { outline, teacher: { outline: rectangleAt([3000, 0], 2000, 1000) } })).toBe(-1);
  });

  it("points left where the mats lie from left to right", () => {
    expect(headEnd([{ centre: [2000, 3000], angle: 0 }], { outline, teacher: null })).toBe(-1);
  });
});
