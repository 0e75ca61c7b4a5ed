import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { type IForbiddenRuleType, type IReporterOutput, cruise } from "dependency-cruiser";
import extractTsConfig from "dependency-cruiser/config-utl/extract-ts-config";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
// @ts-expect-error -- the rules file is plain JavaScript
import rules from "../../.dependency-cruiser.mjs";

const root = resolve(import.meta.dirname, "../..");
const folders = ["kernels", "core", "app", "adapters", "apps", "bench", "checks", "testing", "demo"];

async function broken(baseDir: string, where: readonly string[]) {
  const tsConfig = extractTsConfig(join(root, "tsconfig.json"));
  const { options, forbidden } = rules;
  const found: IReporterOutput = await cruise(
    [...where],
    { ...options, tsConfig: undefined, ruleSet: { forbidden }, validate: true, baseDir },
    undefined,
    { tsConfig },
  );
  if (typeof found.output === "string") throw new Error(found.output);
  return found.output.summary;
}

// One forbidden import for each wall: [rule, file, what it imports, the file imported].
const trespasses: readonly (readonly [string, string, string, string])[] = [
  ["core-words-reads-only-what-is-listed", "core/words/a.ts", "#core/hall", "core/hall/index.ts"],
  ["core-hall-reads-only-what-is-listed", "core/hall/a.ts", "#core/price", "core/price/index.ts"],
  ["core-price-reads-only-what-is-listed", "core/price/a.ts", "#core/class", "core/class/index.ts"],
  ["core-class-reads-only-what-is-listed", "core/class/a.ts", "../other/index.ts", "core/other/index.ts"],
  ["core-outlook-reads-only-what-is-listed", "core/outlook/a.ts", "#core/hall", "core/hall/index.ts"],
  ["core-papers-reads-only-what-is-listed", "core/papers/a.ts", "#core/price", "core/price/index.ts"],
  ["core-week-reads-only-what-is-listed", "core/week/a.ts", "#core/class", "core/class/index.ts"],
  ["core-cash-reads-only-what-is-listed", "core/cash/a.ts", "#core/class", "core/class/index.ts"],
  ["core-notice-reads-only-what-is-listed", "core/notice/a.ts", "#core/price", "core/price/index.ts"],
  ["core-books-reads-only-what-is-listed", "core/books/a.ts", "#core/price", "core/price/index.ts"],
  ["core-roll-reads-only-what-is-listed", "core/roll/a.ts", "#core/price", "core/price/index.ts"],
  ["core-year-reads-only-what-is-listed", "core/year/a.ts", "#core/class", "core/class/index.ts"],
  ["core-table-reads-only-what-is-listed", "core/table/a.ts", "#core/price", "core/price/index.ts"],
  ["kernels-read-nothing-of-ours", "kernels/packing/a.ts", "#core/words", "core/words/index.ts"],
  ["core-looks-only-inwards", "core/words/b.ts", "#app/ports", "app/ports/index.ts"],
  ["app-looks-only-inwards", "app/actions/a.ts", "#adapters/store", "adapters/store/index.ts"],
  ["adapters-know-only-ports-and-the-trade", "adapters/store/a.ts", "#app/actions", "app/actions/index.ts"],
  ["web-touches-no-adapter", "apps/web/a.ts", "#adapters/store", "adapters/store/index.ts"],
  ["pure-code-touches-no-machine", "core/words/c.ts", "node:fs", ""],
  ["pure-code-loads-no-server-library", "core/words/d.ts", "react", ""],
  ["through-the-door", "core/hall/c.ts", "../words/inner.ts", "core/words/inner.ts"],
  [
    "apps-and-tests-come-through-the-door",
    "apps/cli/a.ts",
    "../../core/words/inner2.ts",
    "core/words/inner2.ts",
  ],
  ["no-circles", "core/words/e.ts", "./f.ts", "core/words/f.ts"],
  ["everything-resolves", "core/words/g.ts", "./not-there.ts", ""],
];

describe("the walls", () => {
  let scratch = "";

  beforeAll(() => {
    scratch = mkdtempSync(join(tmpdir(), "hallful-walls-"));
    const put = (path: string, text: string) => {
      mkdirSync(dirname(join(scratch, path)), { recursive: true });
      writeFileSync(join(scratch, path), text);
    };
    const imports = Object.fromEntries(
      [
        "core/words",
        "core/hall",
        "core/price",
        "core/class",
        "app/ports",
        "app/actions",
        "adapters/store",
      ].map((door) => [`#${door}`, `./${door}/index.ts`]),
    );
    put("package.json", JSON.stringify({ name: "trespass", type: "module", imports }));
    symlinkSync(join(root, "node_modules"), join(scratch, "node_modules"));
    for (const [, file, specifier, target] of trespasses) {
      put(file, `import { it } from "${specifier}";\nexport const mine = it;\n`);
      if (target !== "") put(target, "export const it = 1;\n");
    }
    put("core/words/f.ts", 'import { mine } from "./e.ts";\nexport const it = mine;\n');
  });

  afterAll(() => rmSync(scratch, { recursive: true, force: true }));

  test("each forbidden import is caught by its own rule", async () => {
    const summary = await broken(scratch, ["kernels", "core", "app", "adapters", "apps"]);
    const caught = new Set(summary.violations.map((it) => `${it.rule.name} ${it.from}`));
    for (const [rule, file] of trespasses) expect(caught).toContain(`${rule} ${file}`);
  });

  test("every rule has a forbidden import that shows it at work", () => {
    const names = rules.forbidden.map((it: IForbiddenRuleType) => it.name);
    expect(new Set(trespasses.map(([rule]) => rule))).toEqual(new Set(names));
  });

  test("the tree itself stands within its walls, and is really read", async () => {
    const summary = await broken(root, folders);
    expect(summary.violations.map((it) => `${it.rule.name}: ${it.from} → ${it.to}`)).toEqual([]);
    // A cruise that reads nothing passes everything: 27 modules stood here on the first day.
    expect(summary.totalCruised).toBeGreaterThan(27);
    expect(summary.totalDependenciesCruised ?? 0).toBeGreaterThan(40);
  });
});
