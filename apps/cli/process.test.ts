import { spawn, spawnSync } from "node:child_process";
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { built, temporaryFolder } from "#testing";
import manifest from "../../package.json" with { type: "json" };
import { afterAll, describe, expect, it } from "vitest";

const { script, remove } = built("cli");
afterAll(remove);

const golden = join(import.meta.dirname, "golden");

describe("the command as it is shipped", () => {
  it("is a file that runs by itself", () => {
    expect(statSync(script).mode & 0o111).toBe(0o111);
    const seen = spawnSync(script, ["--version"], { encoding: "utf8" });
    expect(seen).toMatchObject({ status: 0, stdout: `${manifest.version}\n`, stderr: "" });
  });

  it("reads standard input to its end and answers with exit 0", () => {
    const input = readFileSync(join(golden, "tuesday.json"));
    const seen = spawnSync(script, ["evening", "-", "--json"], { input, encoding: "utf8" });
    expect(seen).toMatchObject({ status: 0, stderr: "" });
    expect(JSON.parse(seen.stdout)).toMatchObject({ breakEven: 5, cost: "37.70" });
  });

  it("answers a problem with exit 2 on standard error alone", () => {
    const seen = spawnSync(script, ["fit", "loft-gone-wrong.json"], { cwd: golden, encoding: "utf8" });
    expect(seen).toMatchObject({ status: 2, stdout: "" });
    expect(seen.stderr).toContain("[outline-crosses-itself]");
  });

  it("is quiet when its reader has seen enough", async () => {
    // more than a pipe holds, so that writing meets the closed end
    const child = spawn(script, ["schema", "class"], { stdio: ["ignore", "pipe", "pipe"] });
    child.stdout.destroy();
    let told = "";
    child.stderr.on("data", (part) => {
      told += String(part);
    });
    const code = await new Promise((resolve) => child.on("close", resolve));
    expect([code, told]).toEqual([0, ""]);
  });

  it("keeps and brings back a data file", () => {
    const cwd = temporaryFolder();
    const seen = spawnSync(script, ["backup", "copy.sqlite"], { cwd, encoding: "utf8", env: {} });
    expect(seen.status).toBe(2);
    expect(seen.stderr).toContain("data/hallful.sqlite. (at data)");
    expect(seen.stderr).toContain("[data-file-missing]");
  });
});
