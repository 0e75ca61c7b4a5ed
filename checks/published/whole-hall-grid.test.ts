// Mats in whole halls at usual gaps. Common practice, no source: grid sums with side walls 0.5 m, 2.5 m kept for
// the teacher in front and 0.9 m to the exits at the back, mats 0.61 m wide and 1.73 to 1.83 m long, 0.5 m beside
// each other and 0.3 m behind: 6 × 9 m → 10 mats, 7.5 × 11 → 21, 8 × 12 → 24, 9 × 15 → 35. They are whole-room
// grids, so the exact plan must give at least as many.
import { describe, expect, it } from "vitest";
import { checkPlaced, type Floor, linesPlan } from "#kernels/packing";

const gaps = { side: 500, end: 300, wall: 500 };

function block(x: number, y: number, width: number, depth: number): Floor["outline"] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ];
}

/** The strips in front and behind are kept clear; mats may touch them. */
function hall(width: number, depth: number): Floor {
  const keepClear = [block(0, depth - 2500, width, 2500), block(0, 0, width, 900)];
  return { outline: block(0, 0, width, depth), fixtures: [], keepClear };
}

// width − 1.0 m and depth − 3.4 m are free; n mats need n × 0.61 + (n − 1) × 0.5 beside each other and
// n × 1.83 + (n − 1) × 0.3 (or 1.73) one behind the other
const halls = [
  // 5.6 m: 5 beside each other (5.05); 5.0 m: 2 deep (3.96)
  { width: 6000, depth: 9000, grid: 10, long: 10, short: 10 },
  // 7.6 m: 7 beside each other (7.27); 6.5 m: 3 deep (6.09)
  { width: 7500, depth: 11000, grid: 21, long: 21, short: 21 },
  // 7.0 m: 6 beside each other (6.16); 8.6 m: 4 deep (8.22)
  { width: 8000, depth: 12000, grid: 24, long: 24, short: 24 },
  // 8.0 m: 7 beside each other (7.27), 11.6 m: 5 deep (10.35); of 1.73 m mats 10 beside each other (10.6), 4 deep (7.82)
  { width: 9000, depth: 15000, grid: 35, long: 35, short: 40 },
] as const;

describe("whole halls at usual gaps", () => {
  for (const { width, depth, grid, long, short } of halls)
    it(`${width / 1000} × ${depth / 1000} m takes the grid's ${grid} mats or more: ${long} long ones, ${short} short ones`, () => {
      for (const [length, count] of [
        [1830, long],
        [1730, short],
      ] as const) {
        const [floor, mat] = [hall(width, depth), { length, width: 610 }];
        const plan = linesPlan(floor, mat, gaps, "auto");
        const placed = plan.lines.flatMap((line) => line.pieces);
        expect(checkPlaced(floor, mat, gaps, placed)).toEqual([]);
        expect(plan.count).toBeGreaterThanOrEqual(grid);
        expect(plan).toMatchObject({ count, bound: count, proven: true });
      }
    });
});
