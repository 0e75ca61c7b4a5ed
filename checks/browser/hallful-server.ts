import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

const root = resolve(import.meta.dirname, "../..");

export type RunningServer = {
  readonly address: string;
  readonly data: string;
  readonly stop: () => Promise<void>;
};

function freePort(): Promise<number> {
  return new Promise((done, fail) => {
    const probe = createServer();
    probe.once("error", fail);
    probe.listen(0, "127.0.0.1", () => {
      const at = probe.address();
      probe.close(() => (at !== null && typeof at === "object" ? done(at.port) : fail(new Error("no port"))));
    });
  });
}

async function answers(address: string, child: ChildProcess): Promise<void> {
  for (let tries = 0; tries < 200; tries += 1) {
    if (child.exitCode !== null) throw new Error(`the server ended with ${child.exitCode}`);
    const reply = await fetch(`${address}/api/health`).catch(() => undefined);
    if (reply?.ok === true) return;
    await new Promise((wait) => setTimeout(wait, 50));
  }
  throw new Error("the server did not answer within 10 s");
}

/** The built server on a free port with a data file of its own, as `npm start` runs it. */
export async function startServer(
  data = mkdtempSync(join(tmpdir(), "hallful-browser-")),
): Promise<RunningServer> {
  const port = await freePort();
  const file = join(data, "hallful.sqlite");
  const child = spawn(process.execPath, ["dist/server/hallful.mjs", "--port", String(port), "--data", file], {
    cwd: root,
    stdio: ["ignore", "ignore", "inherit"],
  });
  const address = `http://127.0.0.1:${port}`;
  await answers(address, child);
  const stop = () =>
    new Promise<void>((done) => {
      child.once("exit", () => done());
      child.kill("SIGTERM");
    });
  return { address, data, stop };
}

export function forget(data: string): void {
  rmSync(data, { recursive: true, force: true });
}
