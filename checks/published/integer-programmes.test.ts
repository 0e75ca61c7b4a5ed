// Small integer programmes whose optimum is published, through the wrapper that finds the best week.
// - Petersen's seven selections of projects: C. C. Petersen, "Computational experience with variants of the Balas
//   algorithm applied to the selection of R&D projects", Management Science 13 (1967) 736-750; data and optima as in
//   J. E. Beasley's OR-Library, file mknap1.
// - flugpl: MIPLIB (R. E. Bixby, E. A. Boyd, R. R. Indovina 1992), from H. M. Wagner; best solution 1201500 and linear
//   bound 1167185.73 as in the head of its file.
// - Steiner triples of 9 and 27: D. R. Fulkerson, G. L. Nemhauser and L. E. Trotter, "Two computationally difficult set
//   covering problems that arise in computing the 1-width of incidence matrices of Steiner triple systems" (1974),
//   optima 5 and 18 from memory; they are also 9 and 27 less the largest sets without a line, 4 and 9.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { checkAnswer, loadSolver, type Programme, type Solver } from "#kernels/search";
import { beforeAll, describe, expect, it } from "vitest";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

/** What the wrapper finds, after the checker, which knows nothing of the search, has looked at it. */
function bestOf(programme: Programme): number {
  const outcome = solver.solve(programme);
  if (outcome.kind !== "best") throw new Error(outcome.kind);
  expect(checkAnswer(programme, outcome.columns)).toEqual([]);
  const counted = programme.columns.reduce(
    (sum, { gain }, at) => sum + gain * (outcome.columns[at] ?? Number.NaN),
    0,
  );
  expect(counted).toBeCloseTo(outcome.value, 6);
  return outcome.value;
}

describe("Petersen's selection of projects", () => {
  const figures = readFileSync(join(import.meta.dirname, "petersen-1967.txt"), "utf8")
    .trim()
    .split(/\s+/);
  const numbers = figures.map(Number);
  const count = numbers[0] ?? 0;
  const problems: { readonly programme: Programme; readonly optimum: number }[] = [];
  let at = 1;
  const take = (many: number) => numbers.slice(at, (at += many));
  for (let one = 0; one < count; one++) {
    const [projects = 0, budgets = 0, optimum = 0] = take(3);
    const gains = take(projects);
    const needs = Array.from({ length: budgets }, () => take(projects));
    const most = take(budgets);
    const columns = gains.map((gain) => ({ gain, least: 0, most: 1, whole: true }));
    const all = columns.map((_, index) => index);
    const rows = needs.map((values, row) => ({ least: 0, most: most[row] ?? 0, columns: all, values }));
    problems.push({ programme: { columns, rows }, optimum });
  }

  it("is read to its last figure", () => {
    expect([problems.length, at, numbers.some(Number.isNaN)]).toEqual([7, numbers.length, false]);
  });

  it.each([3800, 8706.1, 4015, 6120, 12400, 10618, 16537])("gains %d at most, as published", (optimum) => {
    const found = problems.find((it) => it.optimum === optimum);
    if (found === undefined) throw new Error(`none has ${optimum}`);
    expect(bestOf(found.programme)).toBeCloseTo(optimum, 6);
  });
});

describe("flugpl", () => {
  // month by month: crew (57 to 75, of whom a tenth leaves), newcomers (at most 18, who take 100 hours to train), and
  // overtime (at most 20 hours for each of the crew), which all cost
  const hours = [8000, 9000, 8000, 10_000, 9000, 12_000];
  const months = hours.map((_, month) => ({ crew: 3 * month, fresh: 3 * month + 1, over: 3 * month + 2 }));

  function flugpl(whole: boolean): Programme {
    const columns = months.flatMap((_, month) => [
      month === 0 ? { gain: -2700, least: 0, most: Infinity } : { gain: -2700, least: 57, most: 75, whole },
      { gain: -1500, least: 0, most: 18, whole },
      { gain: -30, least: 0, most: Infinity },
    ]);
    const rows = months.flatMap(({ crew, fresh, over }, month) => {
      const before = months[month - 1];
      return [
        before === undefined
          ? { least: 60, most: 60, columns: [crew] }
          : { least: 0, most: 0, columns: [before.crew, before.fresh, crew], values: [0.9, 1, -1] },
        { least: hours[month] ?? 0, most: Infinity, columns: [crew, fresh, over], values: [150, -100, 1] },
        { least: -Infinity, most: 0, columns: [crew, over], values: [-20, 1] },
      ];
    });
    return { columns, rows };
  }

  it("costs 1201500 at least in whole people", () => {
    expect(bestOf(flugpl(true))).toBeCloseTo(-1_201_500, 4);
  });

  it("costs 1167185.73 at least where people may be parted", () => {
    expect(bestOf(flugpl(false))).toBeCloseTo(-1_167_185.73, 2);
  });
});

describe("Steiner triples", () => {
  it.each([
    // 3 × 3: 12 lines of 3; 27: 117 lines
    [2, 12, 5],
    [3, 117, 18],
  ])(
    "of 3^%i places, every one of %i lines is met by %i places and no fewer",
    (dimensions, lines, optimum) => {
      const programme = steiner(dimensions);
      expect(programme.rows).toHaveLength(lines);
      expect(-bestOf(programme)).toBe(optimum);
    },
  );
});

/** The places are all rows of 0, 1 and 2; three of them make a line where each of their digits adds up to 0 mod 3. */
function steiner(dimensions: number): Programme {
  const places = Array.from({ length: 3 ** dimensions }, (_, place) =>
    Array.from({ length: dimensions }, (__, digit) => Math.floor(place / 3 ** digit) % 3),
  );
  const rows = places.flatMap((one, a) =>
    places.flatMap((other, b) => {
      const c = third(one, other);
      return a < b && b < c ? [{ least: 1, most: Infinity, columns: [a, b, c] }] : [];
    }),
  );
  return { columns: places.map(() => ({ gain: -1, least: 0, most: 1, whole: true })), rows };
}

function third(one: readonly number[], other: readonly number[]): number {
  return one.reduce((sum, digit, at) => sum + ((6 - digit - (other[at] ?? 0)) % 3) * 3 ** at, 0);
}
