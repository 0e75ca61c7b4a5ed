import { expect, test } from "vitest";
import { files, read } from "./tree.ts";

const code = files(".ts", ".tsx", ".mjs", ".css", ".html");
const here = "checks/docs/tidy.test.ts";

function linesWith(pattern: RegExp, names: readonly string[]): readonly string[] {
  return names
    .filter((name) => name !== here)
    .flatMap((name) =>
      read(name)
        .split("\n")
        .filter((line) => pattern.test(line))
        .map((line) => `${name}: ${line.trim()}`),
    );
}

test("no marker of unfinished work is left in the tree", () => {
  expect(code.length).toBeGreaterThan(40);
  expect(linesWith(/\b(TODO|FIXME|XXX)\b|\.(only|skip)\(/, code)).toEqual([]);
});

test("no path of one machine stands in the tree", () => {
  expect(linesWith(/["'\s(](\/(work|home|root|Users)\/)/, [...code, ...files(".md", ".json")])).toEqual([]);
});

test("the lock file names no download address", () => {
  expect(read("package-lock.json")).not.toMatch(/"resolved": "http/);
});

test("no file of code is longer than 350 lines", () => {
  const long = code
    .filter((name) => !name.endsWith(".css"))
    .filter((name) => read(name).split("\n").length > 351);
  expect(long).toEqual([]);
});
