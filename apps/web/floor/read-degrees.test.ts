import { describe, expect, it } from "vitest";
import { readDegrees } from "./read-degrees.ts";

describe("readDegrees", () => {
  it("takes a decimal comma and a degree sign", () => {
    expect(readDegrees("12,5°")).toBe(12.5);
  });

  it("refuses words, turns the other way and more than half a turn", () => {
    expect(["steep", "-5", "181", ""].map(readDegrees)).toEqual([null, null, null, null]);
  });
});
