import type { KeepAdvice } from "#core/outlook";
import { expect, test } from "vitest";
import { type ClassRun, rules } from "./outlook-rules.ts";

/** Notice can be given after every second session; the product says the same each time. */
function runOf(heads: readonly number[], advice: KeepAdvice): ClassRun {
  const looks = heads.map((_, at) => (at % 2 === 1 ? () => advice : null));
  return { heads, contributions: [], expected: [], looks };
}

function closing(name: string, run: ClassRun): number | null {
  const rule = rules.find((it) => it.name.includes(name));
  if (rule === undefined) throw new Error(`no rule ${name}`);
  // five people pay for a session
  return rule.closesAfter(run, 5);
}

const keep: KeepAdvice = { kind: "keep", firm: true };

test("three thin weeks one after another close a class, two do not", () => {
  expect(closing("three thin", runOf([4, 4, 5, 4, 4, 4], keep))).toBe(6);
  expect(closing("three thin", runOf([4, 4, 5, 4, 4, 5], keep))).toBeNull();
});

test("the last four weeks close it at a date of notice, when they average less than pays", () => {
  // after two sessions 4.5; 5, 5 and 9 ÷ 2 lift the four weeks to 5
  expect(closing("below what pays", runOf([4, 5, 9, 9], keep))).toBe(2);
  expect(closing("below what pays", runOf([6, 5, 5, 4, 4, 4], keep))).toBe(6);
});

test("who waits a year closes after forty sessions at the earliest", () => {
  const thin = Array.from({ length: 44 }, () => 1);
  expect(closing("wait a year", runOf(thin, keep))).toBe(40);
  expect(closing("never", runOf(thin, keep))).toBeNull();
});

test("the product closes only on firm advice", () => {
  const heads = [1, 1, 1, 1];
  expect(closing("firm", runOf(heads, { kind: "close", firm: true }))).toBe(2);
  expect(closing("firm", runOf(heads, { kind: "close", firm: false }))).toBeNull();
  expect(closing("firm", runOf(heads, { kind: "change", firm: true }))).toBeNull();
});
