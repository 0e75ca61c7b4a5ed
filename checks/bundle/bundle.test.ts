import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { gzipSync } from "node:zlib";
import { beforeAll, describe, expect, test } from "vitest";

// What the first page loads before anything is asked of it: the script of index.html, all it imports
// statically, and what the page preloads. Lazy parts are counted by nobody here.
const web = resolve(import.meta.dirname, "../../dist/web");
const LIMIT_KILOBYTES = 250;

const staticImport = /(?:import|export)[^"'`();]*?(?:from)?\s*["'](\.{1,2}\/[^"']+\.js)["']/g;
const tagged = /<(?:script|link)[^>]+(?:src|href)="([^"]+\.js)"/g;

function firstPageScripts(): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const visit = (path: string) => {
    if (found.has(path)) return;
    const text = readFileSync(path, "utf8");
    found.set(path, text);
    for (const it of text.matchAll(staticImport)) visit(join(path, "..", it[1] ?? ""));
  };
  const page = readFileSync(join(web, "index.html"), "utf8");
  for (const it of page.matchAll(tagged)) visit(join(web, it[1] ?? ""));
  return found;
}

describe("the first page", () => {
  let scripts: ReadonlyMap<string, string> = new Map();

  beforeAll(() => {
    if (!existsSync(join(web, "index.html")))
      throw new Error("dist/web is not built: run npm run build first");
    scripts = firstPageScripts();
  });

  test("loads script, and the guard reads it", () => {
    expect(scripts.size).toBeGreaterThan(0);
    // React's own name is in any page that React draws: if this canary is gone the guard reads the wrong files.
    expect([...scripts.values()].some((text) => text.includes("react"))).toBe(true);
  });

  test(`loads less than ${LIMIT_KILOBYTES} kB of compressed script`, () => {
    const bytes = [...scripts.values()].reduce((sum, text) => sum + gzipSync(text).length, 0);
    console.info(`first page: ${(bytes / 1000).toFixed(1)} kB of compressed script in ${scripts.size} files`);
    expect(bytes).toBeLessThan(LIMIT_KILOBYTES * 1000);
  });

  test("carries nothing of the server", () => {
    const text = [...scripts.values()].join("\n");
    for (const canary of ["better-sqlite3", "kysely", "fastify", "PRAGMA ", "node:fs"])
      expect(text).not.toContain(canary);
  });
});
