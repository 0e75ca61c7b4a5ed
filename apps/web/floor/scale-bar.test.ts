import { describe, expect, it } from "vitest";
import { scaleBar } from "./scale-bar.ts";

describe("scaleBar", () => {
  it("takes the longest round number of metres that fits", () => {
    // 2 m is 70 px, 5 m would be 175 px of 150
    expect(scaleBar(0.035, 150, "metric")).toEqual({ pixels: 70, says: "2 m" });
  });

  it("takes feet when lengths are in feet", () => {
    // 10 ft = 3048 mm × 0.035 = 106.68 px; 20 ft would be 213 px of 150
    const bar = scaleBar(0.035, 150, "feet");
    expect(bar.says).toBe("10 ft");
    expect(bar.pixels).toBeCloseTo(106.68, 6);
  });

  it("takes the shortest when there is no room at all", () => {
    expect(scaleBar(0.035, 1, "metric").says).toBe("0.1 m");
  });
});
