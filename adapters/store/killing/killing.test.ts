import { spawn } from "node:child_process";
import { rmSync } from "node:fs";
import { join, resolve } from "node:path";
import { type RealPostgres, realPostgres, temporaryFolder } from "#testing";
import { buildSync } from "esbuild";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { DataPlace } from "../data-place.ts";
import { openStore } from "../open-store.ts";
import { type KeptRows, keptRows } from "./kept-rows.ts";

/** HALLFUL_KILLS=200 npm run unit -- adapters/store/killing is the long check. */
const KILLS = Number(process.env["HALLFUL_KILLS"] ?? 20);
const LONGEST_LIFE = 120;

const root = resolve(import.meta.dirname, "../../..");
const script = join(root, "dist", `trial-appending-${process.pid}.mjs`);
let server: RealPostgres;
beforeAll(async () => {
  buildSync({
    absWorkingDir: root,
    entryPoints: ["adapters/store/killing/appending.ts"],
    outfile: script,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    packages: "external",
  });
  server = await realPostgres();
}, 60_000);
afterAll(async () => {
  rmSync(script, { force: true });
  await server.stop();
});

const patience = { timeout: KILLS * 3000 };

describe(`a program that is killed ${KILLS} times in the middle of acting`, patience, () => {
  it("has on disk every action it was told was done, and no half of any, in a SQLite file", () =>
    expectNothingLost({ kind: "file", file: join(temporaryFolder(), "practice.sqlite") }));

  it("has on disk every action it was told was done, and no half of any, in PostgreSQL", async () =>
    expectNothingLost({ kind: "database", url: await server.emptySchema() }));
});

async function expectNothingLost(place: DataPlace): Promise<void> {
  const told = await killAgainAndAgain(place);
  const store = await openStore(place, () => "2026-12-01T22:00:00Z");
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  const kept = await keptRows(store.value);
  await store.value.close();
  const done = new Set(kept.action.map((it) => it.action));
  expect(told.length).toBeGreaterThanOrEqual(KILLS / 2);
  expect(told.filter((it) => !done.has(it))).toEqual([]);
  expect(halves(kept)).toEqual([]);
  expect(kept.stream.filter((it) => !isWhole(kept, it))).toEqual([]);
  expect(kept.posting.reduce((sum, it) => sum + it.amount, 0)).toBe(0);
  process.stdout.write(
    `${place.kind}: ${KILLS} kills, ${told.length} actions told as done, ${done.size - 1} kept\n`,
  );
}

/** One life after another, each of a random length that is the same on every run; answers what they were told. */
async function killAgainAndAgain(place: DataPlace): Promise<readonly string[]> {
  const random = xoroshiro128plus(20_261_201);
  const told: string[] = [];
  for (let round = 1; round <= KILLS; round += 1) {
    const life = uniformInt(random, 0, LONGEST_LIFE);
    // oxlint-disable-next-line no-await-in-loop -- one life after the other
    told.push(...(await oneLife(place, round, life)));
  }
  return told;
}

/** Kills the program so many milliseconds after it began to act or had acted; answers what it said was done. */
function oneLife(place: DataPlace, round: number, life: number): Promise<readonly string[]> {
  const child = spawn(process.execPath, [script, JSON.stringify(place), String(round)], { cwd: root });
  let out = "";
  let err = "";
  child.stderr.on("data", (part) => {
    err += String(part);
  });
  let counted = false;
  child.stdout.on("data", (part) => {
    out += String(part);
    // every other life is counted from the first action that was told, so that slow machines act too
    if (counted || out.split("\n").length <= 1 + (round % 2)) return;
    counted = true;
    setTimeout(() => child.kill("SIGKILL"), life);
  });
  return new Promise((kept, failed) => {
    child.on("close", (_code, signal) => {
      // what was cut off in the middle of its line was not told
      const lines = out.split("\n").slice(0, -1);
      if (signal === "SIGKILL") kept(lines.slice(1));
      else failed(new Error(`it ended by itself: ${err}`));
    });
  });
}

/** Actions that have not all of what each of them does: 2 + 1 events, 2 lines of the books. */
function halves({ action, event, posting }: KeptRows): readonly string[] {
  const events = countBy(event.map((it) => it.action));
  const lines = countBy(posting.map((it) => it.action));
  const ids = new Set([...action.map((it) => it.action), ...events.keys(), ...lines.keys()]);
  ids.delete("open");
  const known = new Set(action.map((it) => it.action));
  return [...ids].filter((it) => !known.has(it) || events.get(it) !== 3 || lines.get(it) !== 2);
}

/** A stream's number and state are what its events come to, with none missing and none twice. */
function isWhole({ event }: KeptRows, stream: KeptRows["stream"][number]): boolean {
  const numbers = event.filter((it) => it.stream === stream.stream).map((it) => it.number);
  const inOrder = numbers.every((number, index) => number === index + 1);
  return inOrder && numbers.length === stream.number && Number(stream.state) === stream.number;
}

function countBy(ids: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  return counts;
}
