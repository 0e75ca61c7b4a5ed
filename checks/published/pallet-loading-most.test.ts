// Manufacturer's pallet loading: the most rectangles a × b, turned by 90° as wished, in X × Y. (22,16,5,3)=23,
// (40,25,7,3)=47 and (57,34,7,4)=69 stand in the literature (Bischoff and Dowsland 1982; Morabito and Morales 1998;
// Birgin, Lobato and Morabito 2010: named from memory); all six optima were computed and proven apart from this
// program, with an independent integer programme.
import { beforeAll, describe, expect, it } from "vitest";
import { checkPlaced, mostPlan } from "#kernels/packing";
import { loadSolver, type Solver } from "#kernels/search";

const cases = [
  { X: 22, Y: 16, a: 5, b: 3, optimum: 23 },
  { X: 40, Y: 25, a: 7, b: 3, optimum: 47 },
  { X: 57, Y: 34, a: 7, b: 4, optimum: 69 },
  { X: 14, Y: 10, a: 3, b: 2, optimum: 23 },
  { X: 20, Y: 20, a: 7, b: 3, optimum: 18 },
  { X: 50, Y: 33, a: 9, b: 4, optimum: 44 },
];

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

describe("the most rectangles on a pallet", () => {
  it.each(cases)("are $optimum of $a × $b in $X × $Y, proven", ({ X, Y, a, b, optimum }) => {
    const floor = { outline: rectangle(100 * X, 100 * Y), fixtures: [], keepClear: [] };
    const [piece, gaps] = [
      { length: 100 * a, width: 100 * b },
      { side: 0, end: 0, wall: 0 },
    ];
    const plan = mostPlan(floor, piece, gaps, [0], 4000, { solver });
    expect(checkPlaced(floor, piece, gaps, plan.pieces)).toEqual([]);
    expect(plan.pieces).toHaveLength(plan.count);
    expect([plan.count, plan.bound, plan.proven]).toEqual([optimum, optimum, true]);
  });
});

function rectangle(width: number, depth: number) {
  return [
    [0, 0],
    [width, 0],
    [width, depth],
    [0, depth],
  ] as const;
}
