import { matPlan, readHall, whatWouldGain } from "#core/hall";
import { expect, test } from "vitest";
import { type GainsList, gainsInShort, heardGain, newGainsList } from "./gains-list.ts";

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

function heardAll(count: number): GainsList {
  const begun = heardGain(newGainsList(1, job), {
    id: 1,
    kind: "begun",
    total: gains.length,
    leftOut: [],
  });
  return gains.slice(0, count).reduce((list, gain) => heardGain(list, { id: 1, kind: "gain", gain }), begun);
}

test("while it runs it says how far it is, and stopped what the best so far gains", () => {
  // side 0.45: turned 3 by ⌊10.45/1.06⌋ = 9 is 27, files ⌊6.95/1.06⌋ = 6 by 4 is 24; nothing gained by the first
  expect(gainsInShort(newGainsList(1, job))).toBe("Looking for what can be changed.");
  expect(gainsInShort(heardAll(1))).toBe("1 of 3 changes tried so far.");
  expect(gainsInShort({ ...heardAll(1), state: "stopped" })).toBe(
    "Stopped after 1 of 3 changes. The one change that was tried gains nothing.",
  );
});

test("when all are there the most gained comes first, and the line says what it is", () => {
  const done = heardGain(heardAll(3), { id: 1, kind: "done" });
  expect(done.gains.map((it) => it.gain)).toEqual(done.gains.map((it) => it.gain).toSorted((a, b) => b - a));
  expect(gainsInShort(done)).toBe("None of the 3 changes tried gains a mat.");
});

test("an answer to an older list changes nothing", () => {
  const list = newGainsList(2, job);
  expect(heardGain(list, { id: 1, kind: "done" })).toBe(list);
});

test("what gains most is said with how much", () => {
  // 8 × 12 m, 2.50 m of it the teacher's: 24 mats; with 0.45 m between long sides ⌊7.45/1.06⌋ = 7 by 4 is 28
  const smaller = soundHall(8, 12, 2.5);
  const before = matPlan(smaller);
  const found = [...whatWouldGain(smaller, before, matPlan)];
  const list = newGainsList(1, { hall: smaller, plan: before, units: "metric" });
  expect(gainsInShort({ ...list, state: "done", gains: found })).toBe(
    "5 cm less between long sides (0.45 m) gains 4 mats, the most of 4 changes.",
  );
});
