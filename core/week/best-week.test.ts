import { loadSolver, type Solver } from "#kernels/search";
import { drawing, randomWeek, tightened } from "#testing";
import { beforeAll, describe, expect, it } from "vitest";
import { bestWeek, weekSearch } from "./best-week.ts";
import { countWeek } from "./check-week.ts";
import { everyWeek } from "./every-week.ts";
import { readWeek } from "./read-week.ts";
import type { WeekDocument } from "./week-document.ts";
import type { Week } from "./week-types.ts";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

function weekOf(document: WeekDocument): Week {
  const read = readWeek(document);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

function clock(hour: number): string {
  return `${String(hour).padStart(2, "0")}:00`;
}

function mostOf(values: readonly number[]): number | null {
  return values.length === 0 ? null : Math.max(...values);
}

describe("the best week", () => {
  it("WEEK-10: is what trying every choice finds, on four hundred small weeks with tight limits", () => {
    let impossible = 0;
    for (let seed = 1; seed <= 400; seed++) {
      const draw = drawing(seed);
      const document = tightened(randomWeek({ candidates: 7, places: 4, days: 3, draw }), draw);
      const read = readWeek(document);
      // promised classes that overlap are told when the week is read
      if (!read.ok) {
        expect(read.problems.map(({ code }) => code)).toContain("fixed-overlap");
        continue;
      }
      const outcome = bestWeek(weekSearch(read.value, solver), { goal: "leaves" });
      const best = mostOf(everyWeek(read.value).map(({ earns, wishes }) => earns - wishes));
      const found = outcome.kind === "found" ? outcome.value : null;
      expect([seed, found]).toEqual([seed, best]);
      if (best === null) impossible++;
      if (outcome.kind === "found") expect(outcome.bound).toBe(outcome.value);
    }
    expect(impossible).toBeGreaterThan(10);
    expect(impossible).toBeLessThan(200);
  }, 120_000);

  it("WEEK-8: keeps fixed times free as trying every choice does, on two hundred small weeks", () => {
    let bound = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const draw = drawing(7000 + seed);
      const document = tightened(randomWeek({ candidates: 7, places: 4, days: 3, draw }), draw);
      const commitments = [0, 1, 2].map((at) => {
        const hour = 8 + draw(11);
        return { name: `fixed ${at}`, weekday: at + 1, from: clock(hour), until: clock(hour + 1 + draw(3)) };
      });
      const read = readWeek({ ...document, commitments });
      if (!read.ok) {
        expect(read.problems.map(({ code }) => code)).toContain("fixed-overlap");
        continue;
      }
      const outcome = bestWeek(weekSearch(read.value, solver), { goal: "leaves" });
      const found = outcome.kind === "found" ? outcome.value : null;
      const best = mostOf(everyWeek(read.value).map(({ earns, wishes }) => earns - wishes));
      expect([seed, found]).toEqual([seed, best]);
      const free = mostOf(
        everyWeek({ ...read.value, commitments: [] }).map(({ earns, wishes }) => earns - wishes),
      );
      if (free !== best) bound++;
    }
    // most of these weeks would be better without
    expect(bound).toBeGreaterThan(50);
  }, 120_000);

  it("WEEK-10: counts exactly what the checker counts, wishes and travel and all", () => {
    for (let seed = 1; seed <= 10; seed++) {
      const week = weekOf(randomWeek({ candidates: 20, places: 5, days: 6, draw: drawing(900 + seed) }));
      const outcome = bestWeek(weekSearch(week, solver), { goal: "leaves" });
      if (outcome.kind !== "found") throw new Error(outcome.kind);
      const { earns, wishes, faults } = countWeek(week, outcome.chosen);
      expect([faults, earns - wishes]).toEqual([[], outcome.value]);
    }
  }, 60_000);
});
