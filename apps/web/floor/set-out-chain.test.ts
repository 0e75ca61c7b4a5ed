import { describe, expect, it } from "vitest";
import { floorDraft, gapPresets, type Hall, matPlan, matPresets, rectangleFloor } from "#core/hall";
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

describe("setOutChains", () => {
  const plan = matPlan(hall);
  const chains = setOutChains(plan, hall.mat);
  const first = plan.setOut.lines[0];

  it("begins at the wall and says the set-out's own first figures", () => {
    expect(chains.alongLine[0]?.length).toBe(first?.first);
    expect(chains.across[0]?.length).toBe(first?.from);
    const onWall = [0, 6000, 9000];
    const starts = [chains.alongLine[0]?.from, chains.across[0]?.from];
    // each chain starts on one of the walls x = 0, x = 6000, y = 0, y = 9000
    expect(starts.every((point) => point?.some((it) => onWall.some((wall) => Math.abs(it - wall) < 1)))).toBe(
      true,
    );
  });

  it("has a link for each further mat of the first line and for each further line", () => {
    expect(chains.alongLine).toHaveLength(first?.centres.length ?? -1);
    expect(chains.across).toHaveLength(plan.setOut.lines.length);
  });

  it("is as long on the drawing as its figures say", () => {
    for (const link of [...chains.alongLine, ...chains.across]) {
      expect(Math.hypot(link.to[0] - link.from[0], link.to[1] - link.from[1])).toBeCloseTo(link.length, 3);
    }
  });

  it("says nothing where no mat lies", () => {
    const none = matPlan({ ...hall, outline: rectangleFloor(1500, 1500) });
    expect(setOutChains(none, hall.mat)).toEqual({ alongLine: [], across: [] });
  });
});
