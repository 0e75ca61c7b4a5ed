// The manufacturer's pallet loading problem: most rectangles a × b, each turned by 90° or not, in X × Y without
// gaps. The optima were computed and proven with an independent integer programme; (22, 16, 5, 3) = 23,
// (40, 25, 7, 3) = 47 and (57, 34, 7, 4) = 69 also stand in the literature: Bischoff and Dowsland 1982; Morabito
// and Morales 1998; Birgin, Lobato and Morabito 2010 (named from memory). They mix both directions, so straight
// lines of one direction can only give as many or fewer.
import { describe, expect, it } from "vitest";
import { checkPlaced, linesByScanning, linesPlan } from "#kernels/packing";

const touching = { side: 0, end: 0, wall: 0 };

// lines: the better of ⌊X/a⌋·⌊Y/b⌋ and ⌊X/b⌋·⌊Y/a⌋
const pallets = [
  { x: 22, y: 16, a: 5, b: 3, optimum: 23, lines: 21 }, // 4 × 5 = 20, 7 × 3 = 21
  { x: 40, y: 25, a: 7, b: 3, optimum: 47, lines: 40 }, // 5 × 8 = 40, 13 × 3 = 39
  { x: 57, y: 34, a: 7, b: 4, optimum: 69, lines: 64 }, // 8 × 8 = 64, 14 × 4 = 56
  { x: 14, y: 10, a: 3, b: 2, optimum: 23, lines: 21 }, // 4 × 5 = 20, 7 × 3 = 21
  { x: 20, y: 20, a: 7, b: 3, optimum: 18, lines: 12 }, // 2 × 6 = 12 either way
  { x: 50, y: 33, a: 9, b: 4, optimum: 44, lines: 40 }, // 5 × 8 = 40, 12 × 3 = 36
] as const;

describe("pallet loading", () => {
  for (const { x, y, a, b, optimum, lines } of pallets)
    it(`lines give ${lines} of ${a} × ${b} in ${x} × ${y}, where any positions give ${optimum}`, () => {
      const outline = [
        [0, 0],
        [x, 0],
        [x, y],
        [0, y],
      ] as const;
      const [floor, piece] = [
        { outline, fixtures: [], keepClear: [] },
        { length: a, width: b },
      ];
      const plan = linesPlan(floor, piece, touching, "auto");
      const placed = plan.lines.flatMap((line) => line.pieces);
      expect(checkPlaced(floor, piece, touching, placed)).toEqual([]);
      expect(plan).toMatchObject({ count: lines, bound: lines, proven: true });
      expect(plan.count).toBeLessThanOrEqual(optimum);
      expect(linesByScanning(floor, piece, touching, [0])).toBe(lines);
    });
});
