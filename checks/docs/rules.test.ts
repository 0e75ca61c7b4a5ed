import { expect, test } from "vitest";
import { files, read } from "./tree.ts";

// A rule stands in a SPEC.md as "**HALL-3**" or "- HALL-3 …"; a test cites it as "HALL-3:" in its title.
const rule = /^\W*([A-Z]+-\d+)\b/gm;

const specs = files("SPEC.md");
const rules = specs.flatMap((file) => [...read(file).matchAll(rule)].map((it) => it[1] ?? ""));
const tests = files(".test.ts", ".test.tsx").map(read).join("\n");

test("there are written rules", () => {
  expect(rules.length).toBeGreaterThan(10);
});

test("no rule number stands twice", () => {
  expect(rules.filter((it, index) => rules.indexOf(it) !== index)).toEqual([]);
});

test("every written rule is cited by a test", () => {
  expect(rules.filter((it) => !new RegExp(`\\b${it}\\b`).test(tests))).toEqual([]);
});

test("no test cites a rule that is not written", () => {
  const prefixes = [...new Set(rules.map((it) => it.split("-")[0]))].join("|");
  const cited = [...tests.matchAll(new RegExp(`\\b(?:${prefixes})-\\d+\\b`, "g"))].map((it) => it[0]);
  expect([...new Set(cited)].filter((it) => !rules.includes(it))).toEqual([]);
});
