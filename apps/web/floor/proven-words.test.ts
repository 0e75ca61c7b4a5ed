import { describe, expect, it } from "vitest";
import { provenWords } from "./proven-words.ts";

describe("provenWords", () => {
  it("says that a proven number is the most there can be", () => {
    expect(provenWords(16, 16, true)).toContain("16 is the most");
  });

  it("says how many there could be where it is not proven", () => {
    expect(provenWords(40, 42, false)).toContain("at most 42");
  });
});
