import { describe, expect, it } from "vitest";
import {
  floorDraft,
  gapPresets,
  type Hall,
  lShapedFloor,
  matPlan,
  matPresets,
  placeTeacher,
  rectangleFloor,
  teacherStrip,
} from "#core/hall";
import { millimetresFromMetres } from "#core/words";
import { setOutChains } from "./set-out-chain.ts";

const hall: Hall = {
  ...floorDraft(rectangleFloor(6000, 9000)),
  name: "Quay Street Mission Room",
  mat: matPresets.standard,
  gaps: gapPresets.usual,
  axis: "auto",
  postedCapacity: undefined,
  peopleNotOnMats: 1,
};

function chainsOf(it: Hall) {
  const plan = matPlan(it);
  return { plan, chains: setOutChains(plan, it.mat, it) };
}

describe("setOutChains", () => {
  const { plan, chains } = chainsOf(hall);
  const longest = plan.setOut.lines.toSorted((a, b) => b.centres.length - a.centres.length)[0];

  it("begins at the walls and says the set-out's own figures", () => {
    expect(chains.alongLine[0]?.length).toBe(longest?.first);
    expect(chains.across[0]?.length).toBe(plan.setOut.lines[0]?.from);
    // each chain starts on one of the walls x = 0, x = 6000, y = 0, y = 9000
    for (const point of [chains.alongLine[0]?.from, chains.across[0]?.from]) {
      const offWall = [0, 6000, 9000].flatMap((wall) => (point ?? []).map((it) => Math.abs(it - wall)));
      expect(Math.min(...offWall)).toBeLessThan(1);
    }
  });

  it("has a link for each further mat of the line and for each further line", () => {
    expect(chains.alongLine).toHaveLength(longest?.centres.length ?? -1);
    expect(chains.across).toHaveLength(plan.setOut.lines.length);
  });

  it("is as long on the drawing as its figures say", () => {
    for (const link of [...chains.alongLine, ...chains.across]) {
      expect(Math.hypot(link.to[0] - link.from[0], link.to[1] - link.from[1])).toBeCloseTo(link.length, 3);
    }
  });

  it("says nothing where no mat lies", () => {
    const none = chainsOf({ ...hall, outline: rectangleFloor(1500, 1500) });
    expect(none.plan.count).toBe(0);
    expect(none.chains).toEqual({ alongLine: [], across: [] });
  });

  it("starts on the walls also where a single mat lies", () => {
    // 2.40 m × 3.30 m holds one mat of 0.61 × 1.83 m, 0.50 m from the walls
    const one = chainsOf({ ...hall, outline: rectangleFloor(2000, 3300) });
    expect(one.plan.count).toBe(1);
    const [along, across] = [one.chains.alongLine[0], one.chains.across[0]];
    const starts = [along?.from ?? [], across?.from ?? []].map((at) => at.map((value) => Math.round(value)));
    expect(starts.every(([x, y]) => x === 0 || x === 2000 || y === 0 || y === 3300)).toBe(true);
  });

  it("starts at the front also where the teacher stands at the bottom of the drawing", () => {
    const outline = rectangleFloor(6000, 9000);
    const turned = { ...hall, ...placeTeacher(floorDraft(outline), teacherStrip(outline, 0)) };
    const { plan: other, chains: chainsThere } = chainsOf(turned);
    expect(other.setOut.linesFrom).toMatch(/front|left/);
    // the front is y = 0 and left, facing it, is x = 6000
    const [x, y] = chainsThere.across[0]?.from ?? [];
    expect(other.setOut.linesFrom.includes("front") ? y : x).toBeCloseTo(
      other.setOut.linesFrom.includes("front") ? 0 : 6000,
      3,
    );
  });

  it("leaves the lines of another wing out of the chain across", () => {
    // the lines of the short wing end below the middle of those of the long one
    const outline = lShapedFloor({ width: 16_000, depth: 14_000, cutWidth: 10_000, cutDepth: 10_000 });
    const gaps = { ...hall.gaps, end: millimetresFromMetres(0.6) };
    const { plan: both, chains: inOne } = chainsOf({ ...hall, outline, gaps });
    const ends = inOne.across.flatMap((link) => [link.from, link.to]);
    // no end lies in the missing corner, right of 6000 and above 4000
    expect(both.count).toBeGreaterThan(20);
    expect(ends.filter(([x, y]) => x > 6001 && y > 4001)).toEqual([]);
  });
});
