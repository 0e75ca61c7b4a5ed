import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { sharedOptions } from "./command.ts";
import { commands } from "./run.ts";

const text = readFileSync(new URL("../../docs/command-line.md", import.meta.url), "utf8");
const headings = new Set(text.split("\n").filter((line) => line.startsWith("#")));

it.each(commands.map((it) => it.name))(
  "hallful %s has a heading in the document of the command line",
  (name) => {
    expect(headings).toContain(`## hallful ${name}`);
  },
);

const options = new Set([
  ...commands.flatMap((it) => Object.keys(it.options)),
  ...Object.keys(sharedOptions),
]);

it.each([...options])("--%s has a heading in the document of the command line", (name) => {
  expect(headings).toContain(`### --${name}`);
});

it("the document of the command line tells of no option that there is not", () => {
  const told = [...headings].flatMap((line) => (line.startsWith("### --") ? [line.slice(6)] : []));
  const ofStarting = ["port", "version"];
  expect(told.filter((name) => !options.has(name) && !ofStarting.includes(name))).toEqual([]);
});
