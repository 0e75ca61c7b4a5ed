import { expect, test } from "vitest";
import { files, headings, read } from "./tree.ts";

// A code is the first argument of problem("…", or a `code: "…"` of a literal problem.
const said = /\bproblem\(\s*"([a-z][a-z0-9-]*)"|\bcode: "([a-z][a-z0-9-]*-[a-z0-9-]*)"/g;

const codes = new Set(
  files(".ts", ".tsx")
    .filter((name) => !name.includes(".test.") && /^(kernels|core|app|adapters|apps)\//.test(name))
    .flatMap((name) => [...read(name).matchAll(said)].map((it) => it[1] ?? it[2] ?? "")),
);

test("there are problem codes to document", () => {
  expect(codes.size).toBeGreaterThan(10);
});

test("every problem code has a heading in docs/problems.md", () => {
  const documented = new Set(headings("docs/problems.md"));
  expect([...codes].filter((code) => !documented.has(code)).sort()).toEqual([]);
});

test("docs/problems.md describes no problem that cannot happen", () => {
  const described = headings("docs/problems.md").filter((it) => /^[a-z0-9-]+$/.test(it));
  expect(described.filter((code) => !codes.has(code))).toEqual([]);
});
