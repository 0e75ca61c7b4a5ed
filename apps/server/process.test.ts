import { type ChildProcess, spawn } from "node:child_process";
import { readdirSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { join } from "node:path";
import { built, temporaryFolder } from "#testing";
import manifest from "../../package.json" with { type: "json" };
import { afterAll, describe, expect, it, onTestFinished } from "vitest";

const { script, remove } = built("server");
afterAll(remove);

const usual = 4610;

describe("the server as it is started", () => {
  it("prints its address, answers there, and closes its data file when it is told to stop", async () => {
    const folder = temporaryFolder();
    const port = await freePort();
    const server = start(["--port", String(port), "--data", join(folder, "practice.sqlite")]);
    await server.says("ready at");
    expect(server.out()).toContain(`Hallful is ready at http://127.0.0.1:${port}/`);
    expect(server.out()).toContain("the invented demo or an empty practice");
    const health = await fetch(`http://127.0.0.1:${port}/api/health`);
    expect(await health.json()).toEqual({ status: "ready", version: manifest.version });
    server.child.kill("SIGTERM");
    expect(await server.ended).toBe(0);
    expect(server.err()).toBe("");
    expect(readdirSync(folder)).toEqual(["practice.sqlite"]);
  });

  it("tells of a port that is taken, names the way out, and ends with 2", async () => {
    const taken = createServer();
    await new Promise<void>((resolve) => taken.listen(0, "127.0.0.1", resolve));
    onTestFinished(() => void taken.close());
    const address = taken.address();
    const port = typeof address === "object" && address !== null ? address.port : 0;
    const server = start(["--data", join(temporaryFolder(), "practice.sqlite")], {
      HALLFUL_PORT: String(port),
    });
    expect(await server.ended).toBe(2);
    expect(server.out()).toBe("");
    expect(server.err()).toContain(`Port ${port} is in use.`);
    expect(server.err()).toContain(
      `npm start -- --port ${port === 65_535 ? port - 1 : port + 1} [port-taken]`,
    );
  });

  it.each([
    [["--port", "many"], "port-unreadable"],
    [["--port", "70000"], "port-unreadable"],
    [["--prot", "4611"], "option-unknown"],
    [["somewhere"], "option-unknown"],
  ])("tells of %j as %s and ends with 2", async (words, code) => {
    const server = start(words);
    expect(await server.ended).toBe(2);
    expect(server.err()).toContain(`[${code}]`);
    expect(server.err().split("\n")).toHaveLength(2);
  });

  it("starts on no file of another program", async () => {
    const data = join(temporaryFolder(), "letter.txt");
    writeFileSync(data, "Dear hall committee");
    const server = start(["--port", String(usual), "--data", data]);
    expect(await server.ended).toBe(2);
    expect(server.err()).toContain("[data-file-foreign]");
  });
});

function start(words: readonly string[], environment: Readonly<Record<string, string>> = {}) {
  const child: ChildProcess = spawn(process.execPath, [script, ...words], { env: environment });
  onTestFinished(() => void child.kill("SIGKILL"));
  let out = "";
  let err = "";
  child.stdout?.on("data", (part) => {
    out += String(part);
  });
  child.stderr?.on("data", (part) => {
    err += String(part);
  });
  const ended = new Promise<number | null>((resolve) => {
    child.on("close", (code) => resolve(code));
  });
  const says = async (words: string): Promise<void> => {
    while (!out.includes(words)) {
      // oxlint-disable-next-line no-await-in-loop -- waiting is the point
      await new Promise((resolve) => child.stdout?.once("data", resolve));
    }
  };
  return { child, ended, says, out: () => out, err: () => err };
}

/** One that was free a moment ago. */
async function freePort(): Promise<number> {
  const probe = createServer();
  await new Promise<void>((resolve) => probe.listen(0, "127.0.0.1", resolve));
  const address = probe.address();
  await new Promise<void>((resolve) => probe.close(() => resolve()));
  if (typeof address !== "object" || address === null) throw new TypeError("no port");
  return address.port;
}
