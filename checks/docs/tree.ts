import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";

export const root = resolve(import.meta.dirname, "../..");

/** Files that git knows or would take, whose names end in one of the endings. */
export function files(...endings: readonly string[]): readonly string[] {
  const listed = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], {
    cwd: root,
  });
  const names = new Set(listed.toString().split("\n"));
  return [...names]
    .filter((name) => endings.some((it) => name.endsWith(it)) && existsSync(join(root, name)))
    .sort((a, b) => (a < b ? -1 : 1));
}

export function read(name: string): string {
  return readFileSync(join(root, name), "utf8");
}

/** Headings of a Markdown file, as plain text without the backticks. */
export function headings(name: string): readonly string[] {
  return read(name)
    .split("\n")
    .filter((line) => line.startsWith("#"))
    .map((line) => line.replace(/^#+\s*/, "").replaceAll("`", ""));
}
