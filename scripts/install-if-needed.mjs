// Installs the packages when they are not those of the lock file, for this Node on this machine.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { root } from "./root.mjs";

const MARK = join(root, "node_modules/.hallful-installed");
const LOCK = join(root, "package-lock.json");
const INSTALLED_LOCK = join(root, "node_modules/.package-lock.json");

/** Answers whether the packages are there now; says what it is doing only when there is something to do. */
export function installIfNeeded() {
  const wanted = wantedHash();
  if (existsSync(MARK) && readFileSync(MARK, "utf8") === wanted) return true;
  if (!sameAsLock() || !databaseLoads()) {
    console.log("Installing packages. The database part may have to be built, which can take two minutes.");
    const run = npm("ci", "--no-audit", "--no-fund");
    if (run.status !== 0) return failed(run);
  }
  writeFileSync(MARK, wanted);
  return true;
}

/** The compiled part depends on the version of Node's own interface and on the machine. */
function wantedHash() {
  const { modules } = process.versions;
  return createHash("sha256")
    .update(readFileSync(LOCK))
    .update(`\0${modules}\0${process.platform}\0${process.arch}`)
    .digest("hex");
}

/** Packages that somebody installed by hand are as good, when each has the version of the lock file. */
function sameAsLock() {
  if (!existsSync(INSTALLED_LOCK)) return false;
  const installed = JSON.parse(readFileSync(INSTALLED_LOCK, "utf8")).packages;
  const wanted = Object.entries(JSON.parse(readFileSync(LOCK, "utf8")).packages);
  return wanted.every(
    ([path, it]) => path === "" || it.optional || it.peer || installed[path]?.version === it.version,
  );
}

function databaseLoads() {
  try {
    const Database = createRequire(LOCK)("better-sqlite3");
    new Database(":memory:").close();
    return true;
  } catch {
    return false;
  }
}

function npm(...words) {
  const command = process.platform === "win32" ? "npm.cmd" : "npm";
  return spawnSync(command, words, { cwd: root, stdio: "inherit", shell: process.platform === "win32" });
}

function failed(run) {
  const why = run.error === undefined ? `npm ci ended with ${run.status ?? run.signal}` : run.error.message;
  console.error(`The packages could not be installed: ${why}.`);
  console.error("Look at npm's message above. The database part needs python3, make and a C++ compiler");
  console.error("where no ready one can be fetched (on Debian: apt install python3 make g++).");
  return false;
}
