import * as fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { checkAnswer, loadSolver, type Programme, type Solver } from "./index.ts";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const column = (gain: number, most = Infinity, whole = false) => ({ gain, least: 0, most, whole });
const atMost = (most: number, columns: readonly number[], values?: readonly number[]) =>
  values === undefined ? { least: -Infinity, most, columns } : { least: -Infinity, most, columns, values };

describe("the solver", () => {
  it("finds the best of a small linear programme, with the price of each row", () => {
    // 3x + 2y, x + y ≤ 4, x + 3y ≤ 6: the corners give 12 at (4, 0), 11 at (3, 1), 4 at (0, 2)
    const outcome = solver.solve({
      columns: [column(3), column(2)],
      rows: [atMost(4, [0, 1]), atMost(6, [0, 1], [1, 3])],
    });
    expect(outcome).toMatchObject({ kind: "best", value: 12, columns: [4, 0], prices: [3, 0] });
  });

  it("takes whole numbers where asked: three pairs of which no two may both be taken hold one, not one and a half", () => {
    const rows = [atMost(1, [0, 1]), atMost(1, [1, 2]), atMost(1, [0, 2])];
    const loose = { columns: [column(1), column(1), column(1)], rows };
    const strict = { columns: [column(1, 1, true), column(1, 1, true), column(1, 1, true)], rows };
    expect(solver.solve(loose)).toMatchObject({ kind: "best", value: 1.5 });
    expect(solver.solve(strict)).toMatchObject({ kind: "best", value: 1 });
  });

  it("tells what cannot be from what has no end", () => {
    expect(solver.solve({ columns: [column(1)], rows: [{ least: 2, most: 1, columns: [0] }] }).kind).toBe(
      "impossible",
    );
    expect(solver.solve({ columns: [column(1)], rows: [] }).kind).toBe("endless");
  });

  it("answers a programme without columns itself", () => {
    expect(solver.solve({ columns: [], rows: [] })).toMatchObject({ kind: "best", value: 0 });
    expect(solver.solve({ columns: [], rows: [{ least: 1, most: 2, columns: [] }] }).kind).toBe("impossible");
  });

  it("throws on what is no programme, naming the row or the column", () => {
    const columns = [column(1, 1)];
    expect(() => solver.solve({ columns: [column(Number.NaN)], rows: [] })).toThrow("column 0");
    expect(() => solver.solve({ columns, rows: [atMost(1, [3])] })).toThrow("row 0");
    expect(() => solver.solve({ columns, rows: [atMost(1, [0, 0])] })).toThrow("row 0");
    expect(() => solver.solve({ columns, rows: [atMost(Number.NaN, [0])] })).toThrow("row 0");
    expect(() => solver.solve({ columns, rows: [atMost(1, [0], [1, 2])] })).toThrow("row 0");
  });

  it("starts from the basis of the programme before and ends at the same best", () => {
    const first = { columns: [column(3), column(2)], rows: [atMost(4, [0, 1])] };
    const one = solver.solve(first);
    if (one.kind !== "best" || one.basis === null) throw new Error(one.kind);
    const again = solver.solve(first, {}, one.basis);
    expect(again).toMatchObject({ kind: "best", value: 12 });
    const unfit = { columns: Int32Array.from([1]), rows: Int32Array.from([]) };
    expect(solver.solve(first, {}, unfit)).toMatchObject({ kind: "best", value: 12 });
  });

  it("stops when it has looked as often as it may, with a bound not below the best", () => {
    // 12 knapsacks with 40 things: too much for no node at all
    const things = Array.from({ length: 40 }, (_, index) => column(10 + ((index * 7) % 11), 1, true));
    const rows = Array.from({ length: 12 }, (_, row) => ({
      least: -Infinity,
      most: 60,
      columns: things.map((_, index) => index),
      values: things.map((_, index) => 3 + ((index * (row + 3)) % 17)),
    }));
    const best = solver.solve({ columns: things, rows });
    const stopped = solver.solve({ columns: things, rows }, { nodes: 0, looks: 0 });
    if (best.kind !== "best" || stopped.kind !== "stopped") throw new Error(`${best.kind} ${stopped.kind}`);
    expect(stopped.bound).toBeGreaterThanOrEqual(best.value - 1e-6);
  });
});

describe("checkAnswer", () => {
  it("names every column and row that an answer breaks", () => {
    const programme: Programme = {
      columns: [column(1, 1, true)],
      rows: [{ least: 2, most: 3, columns: [0] }],
    };
    expect(checkAnswer(programme, [1.5]).map((breach) => breach.kind)).toEqual(["column", "whole", "row"]);
    expect(checkAnswer(programme, [Number.NaN])).toHaveLength(3);
  });

  it("agrees with trying every choice of up to eight things", () => {
    const small = fc.record({
      gains: fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 8 }),
      sizes: fc.array(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 8, maxLength: 8 }), {
        minLength: 1,
        maxLength: 3,
      }),
      room: fc.integer({ min: 0, max: 20 }),
    });
    fc.assert(
      fc.property(small, ({ gains, sizes, room }) => {
        const programme = {
          columns: gains.map((gain) => column(gain, 1, true)),
          rows: sizes.map((size) =>
            atMost(
              room,
              gains.map((_, index) => index),
              size.slice(0, gains.length),
            ),
          ),
        };
        let best = 0;
        for (let choice = 0; choice < 2 ** gains.length; choice++) {
          const taken = gains.map((_, index) => (choice >> index) & 1);
          const sum = (values: readonly number[]) =>
            values.reduce((held, value, index) => held + value * (taken[index] ?? 0), 0);
          if (sizes.every((size) => sum(size.slice(0, gains.length)) <= room))
            best = Math.max(best, sum(gains));
        }
        const outcome = solver.solve(programme);
        expect(outcome).toMatchObject({ kind: "best", value: best });
        if (outcome.kind === "best") expect(checkAnswer(programme, outcome.columns)).toEqual([]);
      }),
      { numRuns: 60, seed: 7 },
    );
  });
});
