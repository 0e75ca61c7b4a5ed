import { loadSolver, type Solver } from "#kernels/search";
import { drawing, randomWeek, tightened } from "#testing";
import { beforeAll, describe, expect, it } from "vitest";
import { weekSearch } from "./best-week.ts";
import { chosenLines, rejectedLines } from "./candidate-lines.ts";
import { chooseWeek } from "./choose-week.ts";
import { type Binding, conflict } from "./conflict.ts";
import { everyWeek, type SoundWeek } from "./every-week.ts";
import { lightestWeek } from "./lightest-week.ts";
import { readWeek } from "./read-week.ts";
import { tradeOff } from "./trade-off.ts";
import type { Week } from "./week-types.ts";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

/** Small weeks with tight limits, those with overlapping promises left out. */
function weeks(from: number, { promises = false, length = 60 } = {}): readonly Week[] {
  return Array.from({ length }, (_, at) => {
    const draw = drawing(from + at);
    const document = tightened(randomWeek({ candidates: 7, places: 4, days: 3, draw }), draw);
    const candidates = document.candidates.map((one) => ({ ...one, fixed: one.fixed && promises }));
    return readWeek({ ...document, candidates });
  }).flatMap((read) => (read.ok ? [read.value] : []));
}

const left = ({ earns, wishes }: SoundWeek) => earns - wishes;

function most(values: readonly number[]): number {
  return values.length === 0 ? -Infinity : Math.max(...values);
}

describe("around the best week, beside trying every choice", () => {
  it.each(["classes", "evenings"] as const)(
    "WEEK-15: the curve of %s has every efficient pair and no other",
    (by) => {
      for (const week of weeks(2000, { promises: true })) {
        const lifted = by === "classes" ? { classesAWeek: null } : { evenings: null };
        const all = everyWeek({ ...week, limits: { ...week.limits, ...lifted } });
        const pairs = new Map<number, number>();
        for (const one of all) pairs.set(one[by], Math.max(pairs.get(one[by]) ?? -Infinity, left(one)));
        const efficient = [...pairs]
          .sort(([one], [other]) => one - other)
          .filter(([count, leaves], _, sorted) => sorted.every(([c, l]) => c >= count || l < leaves))
          .filter(([count]) => by === "evenings" || count > 0);
        const points = tradeOff(weekSearch(week, solver), by).map(({ count, leaves }) => [count, leaves]);
        // an empty week is no point of a curve
        expect(points).toEqual(efficient.filter(([count, leaves]) => count > 0 || leaves !== 0));
      }
    },
    120_000,
  );

  it("WEEK-12 and WEEK-13: what is lost without a chosen class, and with a rejected one", () => {
    for (const week of weeks(3000)) {
      const search = weekSearch(week, solver);
      const best = chooseWeek(search);
      const all = everyWeek(week);
      if (best === null) throw new Error("a week without promises can be empty");
      for (const { candidate, without } of chosenLines(search, best)) {
        const others = all.filter(({ chosen }) => !chosen.includes(candidate)).map(left);
        expect(without?.loses).toBe(best.value - most(others));
      }
      for (const line of rejectedLines(search, best)) {
        const having = all.filter(({ chosen }) => chosen.includes(line.candidate)).map(left);
        if (line.kind === "lacks") expect(line.change.loses).toBe(best.value - most(having));
        else expect([line.kind, having]).toEqual(["no room", []]);
      }
    }
  }, 120_000);

  it("WEEK-11: the week told is the shortest of the best, and the next best is as far below", () => {
    for (const week of weeks(4000)) {
      const best = chooseWeek(weekSearch(week, solver));
      const all = everyWeek(week);
      const equal = all.filter((one) => left(one) === best?.value);
      const told = all.find(({ chosen }) => chosen.join() === best?.chosen.join());
      expect(told?.minutes).toBe(Math.min(...equal.map(({ minutes }) => minutes)));
      expect(best?.ties).toHaveLength(Math.min(4, equal.length - 1));
      const below = most(all.map(left).filter((value) => value < (best?.value ?? 0)));
      if (equal.length <= 4) expect(best?.margin ?? Infinity).toBe((best?.value ?? 0) - below);
    }
  }, 120_000);

  it("WEEK-14: what conflicts is a minimal set: impossible together, possible without any one of it", () => {
    let conflicts = 0;
    for (const week of weeks(5000, { promises: true, length: 200 })) {
      const kept = conflict(weekSearch(week, solver));
      expect(kept === null).toBe(everyWeek(week).length > 0);
      if (kept === null) continue;
      conflicts++;
      expect(everyWeek(only(week, kept))).toEqual([]);
      for (const one of kept) {
        const fewer = kept.filter((it) => it !== one);
        expect(everyWeek(only(week, fewer)).length).toBeGreaterThan(0);
      }
    }
    expect(conflicts).toBeGreaterThan(5);
  }, 120_000);

  it("WEEK-16: the lightest week has the fewest classes that earn the target, and the least time of those", () => {
    for (const week of weeks(6000)) {
      const all = everyWeek(week);
      const target = Math.floor(most(all.map(({ earns }) => earns)) * 0.6);
      const enough = all.filter(({ earns }) => earns >= target);
      const classes = Math.min(...enough.map((one) => one.classes));
      const minutes = Math.min(...enough.filter((one) => one.classes === classes).map((one) => one.minutes));
      const lightest = lightestWeek(weekSearch(week, solver), target);
      if (lightest.kind !== "enough") throw new Error(lightest.kind);
      const told = all.find(({ chosen }) => chosen.join() === lightest.chosen.join());
      expect([told?.classes, told?.minutes]).toEqual([classes, minutes]);
    }
  }, 120_000);
});

/** The week with these bindings alone, written apart from the search. */
function only(week: Week, kept: readonly Binding[]): Week {
  const has = (limit: string) => kept.some((it) => it.kind === "limit" && it.limit === limit);
  const { limits } = week;
  return {
    ...week,
    limits: {
      ...limits,
      classesAWeek: has("classesAWeek") ? limits.classesAWeek : null,
      classesADay: has("classesADay") ? limits.classesADay : null,
      backToBack: has("backToBack") ? limits.backToBack : null,
      evenings: has("evenings") ? limits.evenings : null,
      freeDays: has("freeDays") ? limits.freeDays : 0,
      restMinutes: has("restMinutes") ? limits.restMinutes : 0,
    },
    candidates: week.candidates.map((one, at) => ({
      ...one,
      fixed: kept.some((it) => it.kind === "promise" && it.candidate === at),
    })),
  };
}
