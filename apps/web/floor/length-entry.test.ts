import { describe, expect, it } from "vitest";
import { entryText, takeEntry, typing, untouched } from "./length-entry.ts";

describe("takeEntry", () => {
  it("gives the length that was typed", () => {
    expect(takeEntry(typing("7,5"), 7250, "metric")).toEqual({ entry: untouched, length: 7500 });
  });

  it("keeps what was typed and says why it is no length", () => {
    const { entry, length } = takeEntry(typing("wide"), 7250, "metric");
    expect(length).toBeNull();
    expect(entryText(entry, 7250, "metric")).toBe("wide");
    expect(entry.problem?.code).toBe("length-unreadable");
  });

  it("sets nothing when the text is the length that stood there, so that millimetres are not rounded away", () => {
    // 7254 mm shows as 7.25 m; leaving the field must not make it 7250
    expect(takeEntry(typing("7.25 m"), 7254, "metric").length).toBeNull();
  });

  it("takes a place below nothing where places may lie there, and not a length", () => {
    expect(takeEntry(typing("-0.5"), 0, "metric", true).length).toBe(-500);
    expect(takeEntry(typing("-0.5"), 0, "metric").entry.problem?.code).toBe("length-negative");
  });
});
