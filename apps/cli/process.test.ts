import { spawn, spawnSync } from "node:child_process";
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { aHallDocument, built, temporaryFolder } from "#testing";
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

  it("prints the best plan so far when Ctrl-C is pressed during a search", async () => {
    // a drum of 24 walls, which no search proves in minutes; more than a pipe holds, so that all of it is taken
    // only once the command reads
    const drum = Array.from({ length: 24 }, (_, wall): [number, number] => {
      const angle = (wall * Math.PI) / 12;
      return [Math.round(5500 * Math.cos(angle)) / 1000, Math.round(5500 * Math.sin(angle)) / 1000];
    });
    const hall = JSON.stringify(aHallDocument({ outline: drum, axis: 0 })).concat(" ".repeat(1e6));
    const child = spawn(script, ["fit", "-", "--arrangement", "most", "--seconds", "3600"]);
    const closed = new Promise((resolve) => child.on("close", resolve));
    let out = "";
    child.stdout.on("data", (part) => {
      out += String(part);
    });
    await new Promise<void>((taken) => child.stdin.end(hall, () => taken()));
    await new Promise((later) => setTimeout(later, 3000));
    child.kill("SIGINT");
    expect(await closed).toBe(0);
    expect(out).toContain("The search was stopped; this is the best plan it had.");
    expect(out).toContain("Setting out, with a tape");
  }, 40_000);

  it("keeps and brings back a data file", () => {
    const cwd = temporaryFolder();
    const seen = spawnSync(script, ["backup", "copy.sqlite"], { cwd, encoding: "utf8", env: {} });
    expect(seen.status).toBe(2);
    expect(seen.stderr).toContain("data/hallful.sqlite. (at data)");
    expect(seen.stderr).toContain("[data-file-missing]");
  });
});
