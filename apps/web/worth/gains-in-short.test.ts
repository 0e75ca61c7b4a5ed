import { matPlan, readHall, whatWouldGain } from "#core/hall";
import { expect, test } from "vitest";
import { type GainsList, gainsInShort } from "./gains-in-short.ts";
import { newStepList } from "./step-list.ts";

function soundHall(across: number, deep: number, teacher: number) {
  const read = readHall({
    name: "Old Wool Hall",
    outline: rectangle(0, across, deep),
    teacher: teacher === 0 ? null : { outline: rectangle(deep - teacher, across, deep) },
    mat: { length: 1.83, width: 0.61 },
    gaps: { side: 0.5, end: 0.3, wall: 0.5 },
    axis: 0,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

function rectangle(from: number, across: number, to: number) {
  return [
    [0, from],
    [across, from],
    [across, to],
    [0, to],
  ];
}

// 7.50 × 11.00 m: 6.50 × 10.00 m within the half metre from the walls. Files: ⌊7.0/1.11⌋ = 6 by ⌊10.3/2.13⌋ = 4 is 24;
// turned ⌊6.8/2.13⌋ = 3 by ⌊10.5/1.11⌋ = 9 is 27.
const hall = soundHall(7.5, 11, 0);
const plan = matPlan(hall);
const job = { hall, plan, units: "metric" } as const;
const gains = [...whatWouldGain(hall, plan, matPlan)];

function listOf(count: number, state: GainsList["state"]): GainsList {
  return { ...newStepList(1, job), state, total: gains.length, items: gains.slice(0, count) };
}

test("while it runs it says how far it is, and stopped what the best so far gains", () => {
  // side 0.45: turned 3 by ⌊10.45/1.06⌋ = 9 is 27, files ⌊6.95/1.06⌋ = 6 by 4 is 24; nothing gained by the first
  expect(gainsInShort(newStepList(1, job))).toBe("Looking for what can be changed.");
  expect(gainsInShort(listOf(1, "running"))).toBe("1 of 4 changes tried so far.");
  expect(gainsInShort(listOf(1, "stopped"))).toBe(
    "Stopped after 1 of 4 changes. The one change that was tried gains nothing.",
  );
});

test("when nothing gains that is said, and when there is nothing to try that", () => {
  expect(gainsInShort(listOf(4, "done"))).toBe("None of the 4 changes tried gains a mat.");
  expect(gainsInShort({ ...listOf(0, "done"), total: 0 })).toBe("There is nothing to try.");
});

test("what gains most is said with how much", () => {
  // 8 × 12 m, 2.50 m of it the teacher's: 24 mats; with 0.45 m between long sides ⌊7.45/1.06⌋ = 7 by 4 is 28
  const smaller = soundHall(8, 12, 2.5);
  const before = matPlan(smaller);
  const found = [...whatWouldGain(smaller, before, matPlan)];
  expect(gainsInShort({ ...listOf(0, "done"), items: found })).toBe(
    "5 cm less between long sides (0.45 m) gains 4 mats, the most of 5 changes.",
  );
});
