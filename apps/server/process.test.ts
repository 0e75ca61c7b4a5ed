import { type ChildProcess, spawn } from "node:child_process";
import { readdirSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { join } from "node:path";
import { practiceWholeContract } from "#app/ports";
import { marlsford } from "#demo";
import { built, realPostgres, temporaryFolder } from "#testing";
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
    expect(readdirSync(folder).toSorted()).toEqual(["practice.sqlite", "practice.sqlite.key"]);
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

  it("has on disk whatever it said was saved, when it is killed in the middle of saving", async () => {
    const data = join(temporaryFolder(), "practice.sqlite");
    const port = await freePort();
    const ask = asker(port);
    const acknowledged: string[] = [];
    for (const round of [1, 2, 3]) {
      const server = start(["--port", String(port), "--data", data]);
      // oxlint-disable no-await-in-loop -- one life of the server after the other
      await server.says("ready at");
      await ask("POST", "", { action: "action-open", id: "oriel", start: "empty" });
      const saving = saveUntilItDies(ask, round, acknowledged);
      await new Promise((resolve) => setTimeout(resolve, 150 * round));
      server.child.kill("SIGKILL");
      await Promise.all([saving, server.ended]);
      // oxlint-enable no-await-in-loop
    }
    const server = start(["--port", String(port), "--data", data]);
    await server.says("ready at");
    const whole = practiceWholeContract.parse(await ask("GET", "/oriel"));
    const kept = new Set(whole.halls.map((it) => it.id));
    expect(acknowledged.length).toBeGreaterThan(3);
    expect(acknowledged.filter((id) => !kept.has(id))).toEqual([]);
  });

  it("keeps everything in the PostgreSQL database that DATABASE_URL names, and tells it without the password", async () => {
    const database = await realPostgres();
    onTestFinished(() => database.stop());
    const url = new URL(await database.emptySchema());
    url.password = "secret-word";
    const environment = { DATABASE_URL: url.href };
    const port = await freePort();
    const ask = asker(port);
    const first = start(["--port", String(port)], environment);
    await first.says("ready at");
    expect(first.out()).toContain("Everything is kept in the database postgres at ");
    expect(first.out()).not.toContain("secret-word");
    await ask("POST", "", { action: "action-open", id: "oriel", start: "empty" });
    first.child.kill("SIGKILL");
    await first.ended;
    const again = start(["--port", String(port)], environment);
    await again.says("ready at");
    expect(practiceWholeContract.parse(await ask("GET", "/oriel")).practice.id).toBe("oriel");
    again.child.kill("SIGTERM");
    expect(await again.ended).toBe(0);
  });

  it("starts on no file of another program", async () => {
    const data = join(temporaryFolder(), "letter.txt");
    writeFileSync(data, "Dear hall committee");
    const server = start(["--port", String(usual), "--data", data]);
    expect(await server.ended).toBe(2);
    expect(server.err()).toContain("[data-file-foreign]");
  });
});

type Ask = (method: string, path: string, body?: object) => Promise<unknown>;

function asker(port: number): Ask {
  return async (method, path, body) => {
    const answer = await fetch(`http://127.0.0.1:${port}/api/practices${path}`, {
      method,
      headers: { "content-type": "application/json" },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    const read: unknown = await answer.json();
    if (!answer.ok) throw new Error(JSON.stringify(read));
    return read;
  };
}

/** Saves one hall after another, noting each that the server said it had; ends when nobody answers. */
async function saveUntilItDies(ask: Ask, round: number, acknowledged: string[]): Promise<void> {
  const document = marlsford.halls[0]?.document;
  try {
    for (let count = 1; ; count += 1) {
      const id = `hall-${round}-${count}`;
      // oxlint-disable-next-line no-await-in-loop -- one save after the other
      await ask("PUT", `/oriel/halls/${id}`, { action: `action-${id}`, from: 0, document });
      acknowledged.push(id);
    }
  } catch (error) {
    // the fetch of Node says TypeError when the other side is gone
    if (!(error instanceof TypeError || error instanceof SyntaxError)) throw error;
  }
}

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
