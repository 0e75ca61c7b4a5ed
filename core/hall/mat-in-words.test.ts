import { expect, test } from "vitest";
import { countedFrom, matInWords, matsInWords } from "./mat-in-words.ts";

const line = (count: number, matsFrom = "the left wall") => ({
  matsFrom,
  centres: Array.from({ length: count }, (_, index) => index),
});
const mats = Array.from({ length: 9 }, () => ({ centre: [0, 0] as const, angle: 0 }));
const plan = { mats, setOut: { linesFrom: "the front wall", lines: [line(6), line(3)] } };

test("HALL-49: mats are named by line and place, three or more in a row as from one to another", () => {
  expect(matInWords(plan, 7)).toBe("mat 2 of line 2");
  // 0 1 2 4 of the first six; 6 and 7 are the first two of line 2
  expect(matsInWords(plan, [7, 0, 1, 2, 4, 6])).toBe("mats 1 to 3 and 5 of line 1; mats 1 and 2 of line 2");
  expect(matsInWords(plan, [1, 3, 5, 8])).toBe("mats 2, 4 and 6 of line 1; mat 3 of line 2");
  expect(countedFrom(plan)).toEqual([
    "Lines are counted from the front wall, the mats of each from the left wall.",
  ]);
});

test("HALL-49: a plan without lines, or with lines that are not its own, numbers its mats through", () => {
  expect(matsInWords({ mats }, [0, 1, 2, 8])).toBe("mats 1 to 3 and 9");
  expect(matInWords({ mats, setOut: { linesFrom: "the front wall", lines: [line(6)] } }, 7)).toBe("mat 8");
  expect(countedFrom({ mats })).toEqual([]);
});

test("HALL-49: lines that are measured from several walls refer to the set-out", () => {
  const two = { mats, setOut: { linesFrom: "the front wall", lines: [line(6), line(3, "the wall B–C")] } };
  expect(countedFrom(two)).toEqual([
    "Lines are counted from the front wall, the mats of each as in the set-out.",
  ]);
});
