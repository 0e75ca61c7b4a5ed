import { spawn } from "node:child_process";
import { createServer } from "node:net";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { type DataPlace, openStore, type WholeStore } from "#adapters/store";
import { stateAfter } from "#app/record";
import { takesMat, type SessionState } from "#core/roll";
import { built, type RealPostgres, realPostgres, temporaryFolder } from "#testing";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

/** HALLFUL_KILLS=200 npm run unit -- apps/server/killed is the long check. */
const KILLS = Number(process.env["HALLFUL_KILLS"] ?? 6);
const LONGEST_LIFE = 200;
const PEOPLE = 8;
const CAPACITY = 5;

const { script, remove } = built("server");
let database: RealPostgres;
beforeAll(async () => {
  database = await realPostgres();
}, 60_000);
afterAll(async () => {
  remove();
  await database.stop();
});

type Told = { readonly round: number; readonly person: string; readonly outcome: string };

describe(`a server that is killed ${KILLS} times while people take places`, { timeout: KILLS * 6000 }, () => {
  it("has every place that it said was taken, and no half of any, in its data file", async () => {
    const file = join(temporaryFolder(), "record.sqlite");
    await expectNothingLost({ kind: "file", file }, ["--data", file], {});
  });

  it("has every place that it said was taken, and no half of any, in PostgreSQL", async () => {
    const url = await database.emptySchema();
    await expectNothingLost({ kind: "database", url }, [], { DATABASE_URL: url });
  });
});

async function expectNothingLost(
  place: DataPlace,
  words: readonly string[],
  environment: Readonly<Record<string, string>>,
): Promise<void> {
  const told = await killAgainAndAgain(words, environment);
  const store = await openStore(place, () => "2026-12-01T22:00:00Z");
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  const sessions = await soundSessions(store.value);
  expect(told.length).toBeGreaterThanOrEqual(KILLS);
  expect(told.filter((it) => !isThere(sessions.get(`session/evening.${it.round}`), it))).toEqual([]);
  expect([...sessions.values()].filter((it) => it.places.filter(takesMat).length > CAPACITY)).toEqual([]);
  await soundBooks(store.value, [...sessions.values()]);
  await store.value.close();
  const kept = [...sessions.values()].reduce((sum, it) => sum + it.places.length + it.waiting.length, 0);
  process.stdout.write(`${place.kind}: ${KILLS} kills, ${told.length} told, ${kept} kept\n`);
}

/** Sessions by name, after each has been found to be what its events come to. */
async function soundSessions({ record }: WholeStore): Promise<ReadonlyMap<string, SessionState>> {
  const found = await record.list("oriel", { kind: "session", most: 1000 });
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  const sessions = new Map<string, SessionState>();
  for (const { stream, number, state } of found.value) {
    // oxlint-disable-next-line no-await-in-loop -- one after the other
    const events = await record.events("oriel", stream);
    if (!events.ok) throw new Error(JSON.stringify(events.problems));
    expect(events.value.map((it) => it.number)).toEqual(Array.from({ length: number }, (_, at) => at + 1));
    const told = events.value.reduce<unknown>((so, it) => stateAfter(stream, so, it.body, it.made), null);
    expect(JSON.parse(JSON.stringify(told))).toEqual(state);
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the list is of sessions
    sessions.set(stream, state as SessionState);
  }
  return sessions;
}

/** Every place is paid 10.00 in cash when it is taken, and nothing else comes in. */
async function soundBooks({ record }: WholeStore, sessions: readonly SessionState[]): Promise<void> {
  const balances = await record.balances("oriel", "2100-01-01");
  if (!balances.ok) throw new Error(JSON.stringify(balances.problems));
  const amounts = balances.value.map(({ amount }) => amount);
  expect(amounts.reduce((sum, it) => sum + it, 0)).toBe(0);
  const cash = balances.value.find(({ account }) => account === "cash")?.amount ?? 0;
  expect(cash).toBe(1000 * sessions.reduce((sum, it) => sum + it.places.length, 0));
}

function isThere(session: SessionState | undefined, { person, outcome }: Told): boolean {
  const list = outcome === "held" ? session?.places : session?.waiting;
  return list?.some((it) => it.person === person) ?? false;
}

async function killAgainAndAgain(
  words: readonly string[],
  environment: Readonly<Record<string, string>>,
): Promise<readonly Told[]> {
  const random = xoroshiro128plus(20_261_201);
  const folder = temporaryFolder();
  const told: Told[] = [];
  for (let round = 1; round <= KILLS; round += 1) {
    const life = uniformInt(random, 0, LONGEST_LIFE);
    // oxlint-disable no-await-in-loop -- one life after the other
    const port = await freePort();
    const server = spawn(process.execPath, [script, "--port", String(port), ...words], {
      cwd: folder,
      env: environment,
    });
    const ended = new Promise((resolve) => server.once("close", resolve));
    await new Promise((ready) => server.stdout.once("data", ready));
    const ask = asker(port);
    await begin(ask, round);
    const before = told.length;
    const acting = Promise.all(Array.from({ length: PEOPLE }, (_, number) => act(ask, round, number, told)));
    // only what acts is killed: the first answer is waited for
    while (told.length === before) await pause(1);
    setTimeout(() => server.kill("SIGKILL"), life);
    await Promise.all([acting, ended]);
    // oxlint-enable no-await-in-loop
  }
  return told;
}

type Ask = (path: string, body: object) => Promise<{ readonly outcome?: string } | undefined>;

/** Undefined when nobody answers any more; whatever else is wrong throws. */
function asker(port: number): Ask {
  return async (path, body) => {
    try {
      const answer = await fetch(`http://127.0.0.1:${port}/api/practices${path}`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify(body),
      });
      const read = await answer.text();
      if (!answer.ok) throw new Error(read);
      return JSON.parse(read);
    } catch (error) {
      // the fetch of Node says TypeError when the other side is gone
      if (error instanceof TypeError) return undefined;
      throw error;
    }
  };
}

async function begin(ask: Ask, round: number): Promise<void> {
  await ask("", { action: "action-open", id: "oriel", start: "empty" });
  await does(ask, `open-evening-${round}`, {
    kind: "open sessions",
    class: "evening",
    name: "Evening",
    sessions: [{ id: `evening.${round}`, date: "2099-12-01", starts: "2099-12-01T18:30:00Z" }],
    zone: "Europe/London",
    minutes: 60,
    hall: null,
    capacity: CAPACITY,
    posted: null,
    currency: "GBP",
    single: 1000,
    concession: 800,
    notice: { kind: "elapsed", hours: 24 },
    firstLateWaived: true,
  });
}

/** One person after another is written down and takes a place; each answer is noted. */
async function act(ask: Ask, round: number, number: number, told: Told[]): Promise<void> {
  for (let count = 1; ; count += 1) {
    const person = `p-${round}-${number}-${count}`;
    // oxlint-disable no-await-in-loop -- the next when the one before is answered
    const contact = { name: "Ana Brook" };
    if (!(await does(ask, `meet-${person}`, { kind: "meet person", person, contact }))) return;
    const people = [{ place: `pl-${person}`, person, how: "single", paid: { amount: 1000, by: "cash" } }];
    const take = { kind: "take place", session: `evening.${round}`, people };
    const answer = await does(ask, `take-${person}`, take);
    // oxlint-enable no-await-in-loop
    if (answer === undefined) return;
    told.push({ round, person, outcome: answer.outcome ?? "" });
  }
}

function does(ask: Ask, action: string, what: object) {
  return ask("/oriel/record", { action, by: "teacher", do: what });
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
