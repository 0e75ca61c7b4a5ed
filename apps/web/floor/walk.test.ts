import { describe, expect, it } from "vitest";
import { closingWords, nextWall, readWalk } from "./walk.ts";

const left = (length: string) => ({ ...nextWall, length });

describe("readWalk", () => {
  it("draws nothing before there are three walls", () => {
    expect(readWalk([left("6"), left("9")], "metric").walked).toBeNull();
  });

  it("turns right with a minus sign and by any angle", () => {
    const other = { length: "4", turn: "other", degrees: "120°" } as const;
    expect(readWalk([other, other, other], "metric").walked?.closingError).toBe(0);
    const right = { length: "4", turn: "other", degrees: "−90" } as const;
    // four right turns go round clockwise: the second corner is at 4 m across, the third 4 m down
    expect(readWalk([right, right, right, right], "metric").walked?.outline[2]).toEqual([4000, -4000]);
  });

  it("says at which wall what is wrong and keeps the floor back", () => {
    const read = readWalk(
      [left("6"), left("nine"), { length: "6", turn: "other", degrees: "200" }],
      "metric",
    );
    expect(read.problems.map((it) => it?.code)).toEqual([undefined, "length-unreadable", "turn-unreadable"]);
    expect(read.walked).toBeNull();
  });
});

describe("closingWords", () => {
  it("says how far the walls are from closing", () => {
    const { walked } = readWalk([left("6"), left("9"), left("5.7"), left("9")], "metric");
    // 6.00 − 5.70 across, 9 − 9 along
    expect(walked && closingWords(walked, "metric")).toContain(
      "0.30 m from where the first began: a wall is missing",
    );
  });
});
