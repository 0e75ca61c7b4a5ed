import { expect, test } from "vitest";
import { problem } from "#core/words";
import { isTrouble, saveWords } from "./save-words.ts";

const silent = problem("server-silent", "", "The server does not answer.", "Try again.");
const full = problem("disk-full", "", "The disk is full.", "Make room.");

test("a save says when, by the clock of the device", () => {
  const at = new Date(2027, 0, 11, 18, 2).toISOString();
  expect(saveWords({ kind: "saved", at }, false)).toBe("Saved 18:02.");
  expect(saveWords({ kind: "saved", at: null }, false)).toBe("Saved.");
});

test("text that cannot be used is said to be on the device only", () => {
  expect(saveWords({ kind: "saved", at: null }, true)).toBe(
    "Saved. Fields that need mending are kept on this device.",
  );
});

test("a device that keeps nothing is not said to keep anything", () => {
  expect(saveWords({ kind: "kept", why: silent }, true, false)).toBe(
    "Not saved: the server does not answer. This device keeps nothing: do not close the page.",
  );
  expect(saveWords({ kind: "saved", at: null }, true, false)).toBe("Saved.");
});

test("every line that is not saved says where the work is, and is trouble", () => {
  const states = [
    { kind: "kept", why: silent },
    { kind: "refused", problems: [full] },
    { kind: "clash" },
  ] as const;
  for (const state of states) {
    expect(saveWords(state, false)).toMatch(/^Not saved: .* Kept on this device\.$/);
    expect(isTrouble(state)).toBe(true);
  }
  expect(isTrouble({ kind: "sending" })).toBe(false);
});

test("a hall that has no floor yet is nobody's mistake: it says when it will be saved", () => {
  const begun = {
    kind: "refused",
    problems: [problem("not-drawn", "outline", "Not drawn.", "Draw it.")],
  } as const;
  expect(saveWords(begun, false)).toBe("Kept on this device until its floor is drawn.");
  expect(isTrouble(begun)).toBe(false);
});
