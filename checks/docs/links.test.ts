import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { files, headings, read, root } from "./tree.ts";

const link = /\]\(([^)\s]+)\)/g;

function anchor(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s-]/gu, "")
    .trim()
    .replaceAll(/\s+/g, "-");
}

function broken(file: string): readonly string[] {
  return [...read(file).matchAll(link)]
    .map((it) => it[1] ?? "")
    .filter((target) => !/^(https?|mailto):/.test(target))
    .filter((target) => {
      const [path = "", hash] = target.split("#");
      const named = path === "" ? file : join(dirname(file), path);
      if (!existsSync(join(root, named))) return true;
      return hash !== undefined && !headings(named).map(anchor).includes(hash);
    });
}

test("every link inside the documents leads somewhere", () => {
  const documents = files(".md");
  expect(documents.length).toBeGreaterThan(4);
  expect(documents.flatMap((file) => broken(file).map((target) => `${file}: ${target}`))).toEqual([]);
});
