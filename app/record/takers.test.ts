import { join } from "node:path";
import { type DataPlace, openStore } from "#adapters/store";
import type { SessionState } from "#core/roll";
import { openPracticeIn, type RealPostgres, realPostgres, recorderOn, temporaryFolder } from "#testing";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { DoAskInput } from "./doings/index.ts";

let server: RealPostgres;
beforeAll(async () => {
  server = await realPostgres();
}, 60_000);
afterAll(() => server.stop());

const grounds: readonly (readonly [string, () => Promise<DataPlace>])[] = [
  ["one SQLite file", async () => ({ kind: "file", file: join(temporaryFolder(), "record.sqlite") })],
  ["one PostgreSQL database", async () => ({ kind: "database", url: await server.emptySchema() })],
];

const SESSION = "tuesday.2026-12-01";
const NAMES = Array.from({ length: 200 }, (_, number) => `p-${number}`);

test.each(grounds)(
  "two hundred who ask two servers on %s at the same time for sixteen places: sixteen have one, all others wait, nobody twice",
  async (_, makePlace) => {
    const place = await makePlace();
    const one = await opened(place);
    await openPracticeIn(one, "oriel");
    const other = await opened(place);
    // their actions have ids of their own, so that neither is taken for the other's
    const servers = [recorderOn(one.record), recorderOn(other.record)] as const;
    const [first] = servers;
    await first.do(evening, "open-0001");
    for (const person of NAMES) {
      const contact = { name: "Ana Brook" };
      const met = await first.do({ kind: "meet person", person, contact }, `meet-${person}`);
      expect(met.ok).toBe(true);
    }
    const asked = await Promise.all(
      NAMES.map((person, number) => {
        const people = [{ place: `pl-${person}`, person, how: "single" as const }];
        const at = servers[number % 2] ?? first;
        return at.do({ kind: "take place", session: SESSION, people }, `take-${person}`);
      }),
    );
    const outcomes = asked.map((it) => (it.ok ? it.value.outcome : JSON.stringify(it.problems)));
    expect(outcomes.filter((it) => it === "held")).toHaveLength(16);
    expect(outcomes.filter((it) => it === "waiting")).toHaveLength(184);
    const kept = await first.state<SessionState>(`session/${SESSION}`);
    const held = kept.places.map(({ person }) => person);
    const told = NAMES.filter((_name, number) => outcomes[number] === "held");
    expect(held.toSorted(byText)).toEqual(told.toSorted(byText));
    // 16 + 184 = 200, each once
    const all = [...held, ...kept.waiting.map(({ person }) => person)];
    expect(all.toSorted(byText)).toEqual(NAMES.toSorted(byText));
    await one.close();
    await other.close();
  },
  60_000,
);

const evening: DoAskInput = {
  kind: "open sessions",
  class: "tuesday",
  name: "Tuesday evening",
  sessions: [{ id: SESSION, date: "2026-12-01", starts: "2026-12-01T18:30:00Z" }],
  zone: "Europe/London",
  minutes: 60,
  hall: "tithe-barn",
  capacity: 16,
  posted: 60,
  currency: "GBP",
  single: 1000,
  concession: 800,
  notice: { kind: "elapsed", hours: 24 },
  firstLateWaived: true,
};

async function opened(place: DataPlace) {
  const store = await openStore(place, () => "2026-11-25T09:00:00Z");
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  return store.value;
}

function byText(one: string, other: string): number {
  return one < other ? -1 : 1;
}
