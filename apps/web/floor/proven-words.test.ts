import { describe, expect, it } from "vitest";
import { provenWords } from "./proven-words.ts";

describe("provenWords", () => {
  it("says that a proven number is the most there can be", () => {
    expect(provenWords({ arrangement: "lines", count: 16, bound: 16, proven: true })).toContain(
      "16 is the most",
    );
  });

  it("says how many there could be where it is not proven", () => {
    expect(provenWords({ arrangement: "lines", count: 40, bound: 42, proven: false })).toContain(
      "at most 42",
    );
  });
});
