import { assert, integer, property } from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point } from "#kernels/geometry";
import { fitViewport, toFloor, toPaper } from "./viewport.ts";

const hall: readonly Point[] = [
  [0, 0],
  [8000, 0],
  [8000, 12000],
  [0, 12000],
];

describe("fitViewport", () => {
  it("takes the width as the limit when there is height enough", () => {
    // (360 − 2 × 40) ÷ 8000 = 0.035 px a mm; 12000 × 0.035 + 80 = 500 px high
    const view = fitViewport(hall, { width: 360, maxHeight: 900, margin: 40 });
    expect(view.scale).toBeCloseTo(0.035, 9);
    expect(view.height).toBeCloseTo(500, 9);
  });

  it("takes the height as the limit on a wide sheet and centres the floor", () => {
    // (560 − 80) ÷ 12000 = 0.04; the floor is 320 px wide in 1000: it starts at 340
    const view = fitViewport(hall, { width: 1000, maxHeight: 560, margin: 40 });
    expect(view.scale).toBeCloseTo(0.04, 9);
    expect(toPaper(view, [0, 12000])[0]).toBeCloseTo(340, 9);
  });

  it("puts the top wall of the floor at the top of the paper", () => {
    const view = fitViewport(hall, { width: 360, maxHeight: 900, margin: 40 });
    expect(toPaper(view, [0, 12000])[1]).toBeCloseTo(40, 9);
    expect(toPaper(view, [0, 0])[1]).toBeCloseTo(460, 9);
  });

  it("keeps a finite scale when all corners lie on one point", () => {
    const view = fitViewport([[5, 5]], { width: 360, maxHeight: 900, margin: 40 });
    expect(Number.isFinite(view.scale)).toBe(true);
  });

  it("comes back to the same place on the floor from the paper", () => {
    assert(
      property(
        integer({ min: -50_000, max: 50_000 }),
        integer({ min: -50_000, max: 50_000 }),
        integer({ min: 200, max: 2000 }),
        (x, y, width) => {
          const view = fitViewport([...hall, [x, y]], { width, maxHeight: 700, margin: 30 });
          const back = toFloor(view, toPaper(view, [x, y]));
          expect(back[0]).toBeCloseTo(x, 5);
          expect(back[1]).toBeCloseTo(y, 5);
        },
      ),
    );
  });
});
