// Barnes's bound on identical rectangles a × b, turned by 90° as wished, in X × Y, all whole numbers: F. W. Barnes, Packing
// the maximum number of m × n tiles in a large p × q rectangle, Discrete Mathematics 26, 1979 (from memory, not looked
// up). Bars 1 × n in X × Y leave at least min(r·s, (n − r)(n − s)) free, r and s being X and Y modulo n. A
// rectangle a × b is made of bars of length a, and of bars of length b, so what is free is at least the greater of the
// two; and it differs from X·Y by a multiple of a·b.
import { describe, expect, it } from "vitest";
import { areaBound, mostPlan } from "#kernels/packing";

type Pallet = { readonly X: number; readonly Y: number; readonly a: number; readonly b: number };

function barnes({ X, Y, a, b }: Pallet): number {
  const least = Math.max(freeWithBars(X, Y, a), freeWithBars(X, Y, b));
  let free = (X * Y) % (a * b);
  while (free < least) free += a * b;
  return (X * Y - free) / (a * b);
}

function freeWithBars(X: number, Y: number, n: number): number {
  const [r, s] = [X % n, Y % n];
  return Math.min(r * s, (n - r) * (n - s));
}

const none = { side: 0, end: 0, wall: 0 };

function inHundreds({ X, Y, a, b }: Pallet) {
  const outline = [
    [0, 0],
    [100 * X, 0],
    [100 * X, 100 * Y],
    [0, 100 * Y],
  ] as const;
  return {
    floor: { outline, fixtures: [], keepClear: [] },
    piece: { length: 100 * a, width: 100 * b },
  };
}

describe("Barnes's bound", () => {
  it("is 24 for bars of 4 on a board of 10 by 10, one less than by area", () => {
    // r = s = 2: min(4, 4) = 4 free, and 100 − 4 is a multiple of 4
    expect(barnes({ X: 10, Y: 10, a: 4, b: 1 })).toBe(24);
    const { floor, piece } = inHundreds({ X: 10, Y: 10, a: 4, b: 1 });
    expect(areaBound(floor, piece, none)).toBe(25);
    expect(mostPlan(floor, piece, none, [0], 400)).toMatchObject({ count: 24, bound: 24, proven: true });
  });

  // X, Y, a, b and the greatest number known for them (proven apart from this program where it is in the check on pallets)
  it.each([
    { X: 22, Y: 16, a: 5, b: 3, known: 23 },
    { X: 40, Y: 25, a: 7, b: 3, known: 47 },
    { X: 57, Y: 34, a: 7, b: 4, known: 69 },
    { X: 14, Y: 10, a: 3, b: 2, known: 23 },
    { X: 20, Y: 20, a: 7, b: 3, known: 18 },
    { X: 50, Y: 33, a: 9, b: 4, known: 44 },
  ])("is not below the optimum $known of $a × $b in $X × $Y, nor above the area", ({ known, ...pallet }) => {
    expect(barnes(pallet)).toBeGreaterThanOrEqual(known);
    expect(barnes(pallet)).toBeLessThanOrEqual(Math.floor((pallet.X * pallet.Y) / (pallet.a * pallet.b)));
  });

  it("is never exceeded by a plan, proven or not, on small boards of every remainder", () => {
    for (let X = 7; X <= 11; X++)
      for (let Y = X; Y <= 11; Y += 2)
        for (const [a, b] of [
          [4, 1],
          [3, 2],
          [5, 2],
        ] as const) {
          const { floor, piece } = inHundreds({ X, Y, a, b });
          const plan = mostPlan(floor, piece, none, [0], 30);
          expect(plan.count, `${a} × ${b} in ${X} × ${Y}`).toBeLessThanOrEqual(barnes({ X, Y, a, b }));
          expect(plan.bound).toBeLessThanOrEqual(areaBound(floor, piece, none));
        }
  });
});
