import { expect, test } from "vitest";
import { files, headings, read } from "./tree.ts";

// Every file of apps/cli named like a command: fit.ts is `hallful fit`.
const command = /name: "([a-z-]+)"/;
const commands = files(".ts")
  .filter((name) => name.startsWith("apps/cli/") && !name.includes(".test."))
  .flatMap((name) => command.exec(read(name))?.[1] ?? []);

test("there are commands to document", () => {
  expect(commands).toContain("fit");
  expect(commands).toContain("evening");
});

test("every command has a heading in docs/command-line.md", () => {
  const documented = headings("docs/command-line.md");
  expect(commands.filter((name) => !documented.includes(`hallful ${name}`))).toEqual([]);
});
