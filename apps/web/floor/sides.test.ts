import { describe, expect, it } from "vitest";
import { lSides, readSides, rectangleSides } from "./sides.ts";

describe("readSides", () => {
  it("draws a rectangle from its two lengths", () => {
    expect(readSides(rectangleSides, { width: "8", depth: "12,5 m" }, "metric")).toEqual({
      ok: true,
      outline: [
        [0, 0],
        [8000, 0],
        [8000, 12_500],
        [0, 12_500],
      ],
    });
  });

  it("reads feet and inches", () => {
    // 20 ft = 6096 mm; 30 ft 6 in = 9144 + 152.4 = 9296.4
    const read = readSides(rectangleSides, { width: "20", depth: "30' 6\"" }, "feet");
    expect(read.ok && read.outline[2]).toEqual([6096, 9296]);
  });

  it("says at which side what is wrong, for all of them at once", () => {
    const read = readSides(lSides, { width: "ten", depth: "8", cutWidth: "4", cutDepth: "0" }, "metric");
    expect(
      !read.ok && Object.fromEntries(Object.entries(read.problems).map(([at, it]) => [at, it.code])),
    ).toEqual({
      width: "length-unreadable",
      cutDepth: "wall-too-short",
    });
  });

  it("refuses a missing corner that takes the whole side", () => {
    const read = readSides(lSides, { width: "10", depth: "8", cutWidth: "10", cutDepth: "3" }, "metric");
    expect(!read.ok && read.problems["cutWidth"]?.code).toBe("cut-too-large");
  });
});
