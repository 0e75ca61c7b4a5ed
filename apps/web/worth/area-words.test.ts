import { expect, test } from "vitest";
import { areaWords, eachWords } from "./area-words.ts";

test("areas and what one person takes are said in the practice’s own units", () => {
  expect(areaWords(109_880_000, "metric")).toBe("109.9 m²");
  // 109.88 ÷ 0.09290304 = 1182.7
  expect(areaWords(109_880_000, "feet")).toBe("1183 square feet");
  expect(eachWords(4.65, "metric")).toBe("4.65 m²");
  // 4.65 ÷ 0.09290304 = 50.05, printed as 50; 1.39 is 14.96, printed as 15; 0.5 is 5.38
  expect([4.65, 1.39, 0.5].map((it) => eachWords(it, "feet"))).toEqual(["50 ft²", "15 ft²", "5.5 ft²"]);
});
