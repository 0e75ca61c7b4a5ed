import { openPostgresStore } from "#adapters/store";
import type { KeptEvent, KeptStream, RecordStore, StreamName } from "#app/ports";
import { classesOf, freeOf, isBalanced, type PassState } from "#core/books";
import { freeMats, type SessionState, takesMat } from "#core/roll";
import { plainWriter } from "#core/words";
import { aRecorder, openPracticeIn, type RealPostgres, realPostgres, recorderOn } from "#testing";
import * as fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { actOn } from "./act-on.ts";
import { stateAfter } from "./desk.ts";
import { type DoAsk, type DoAskInput, doAskSchema } from "./doings/index.ts";

let server: RealPostgres;
beforeAll(async () => {
  server = await realPostgres();
});
afterAll(() => server.stop());

const SESSION = "tuesday.2026-12-01";
const PEOPLE = ["ana", "ben", "cleo", "dara", "eli"] as const;

type Ground = { readonly store: RecordStore; readonly close: () => Promise<void> };

const grounds: readonly (readonly [string, () => Promise<Ground>, number])[] = [
  ["SQLite", aRecorder, 12],
  ["PostgreSQL", onPostgres, 12],
];

async function onPostgres(): Promise<Ground> {
  const store = await openPostgresStore({
    url: await server.emptySchema(),
    now: () => "2026-11-25T09:00:00Z",
  });
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  await openPracticeIn(store.value, "oriel");
  return { store: store.value.record, close: () => store.value.close() };
}

describe.each(grounds)("histories on %s", (_name, open, runs) => {
  test("done by two programs at once in whatever order: no oversell, books that balance, and equal to one after another", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.nat(3),
        fc.array(step(), { minLength: 4, maxLength: 24 }),
        async (capacity, steps) => {
          const ground = await open();
          const done = await raced(ground.store, capacity, steps);
          await soundRecord(ground.store, capacity);
          expect(await someOrder(ground.store, done)).toEqual(await statesIn(ground.store));
          await ground.close();
        },
      ),
      { numRuns: runs },
    );
  }, 120_000);

  test("the same actions sent again change nothing, and are answered as before", async () => {
    const ground = await open();
    const steps = fc.sample(step(), { numRuns: 20, seed: 7 });
    // what was refused was not done, and may be done later
    const done = (await raced(ground.store, 2, steps)).filter((it) => it.ok);
    expect(done.length).toBeGreaterThan(15);
    const before = await statesIn(ground.store);
    const lines = await recorderOn(ground.store).postings();
    const answers = await Promise.all(done.map((it) => recorderOn(ground.store).do(it.ask, it.action)));
    expect(answers).toEqual(done.map((it) => it.answer));
    expect(await statesIn(ground.store)).toEqual(before);
    expect(await recorderOn(ground.store).postings()).toEqual(lines);
    await ground.close();
  }, 60_000);
});

const WHAT = [
  "single",
  "pass",
  "pair",
  "give up",
  "mark",
  "away",
  "unmark",
  "walk in",
  "offer",
  "pause",
] as const;
type Step = { readonly what: (typeof WHAT)[number]; readonly who: number; readonly other: number };

function step(): fc.Arbitrary<Step> {
  const who = fc.nat(PEOPLE.length - 1);
  return fc.record({ what: fc.constantFrom(...WHAT), who, other: who });
}

type Done = {
  readonly action: string;
  readonly ask: DoAskInput;
  readonly ok: boolean;
  readonly answer: unknown;
};

/** Two programs on one store, each doing every other step, both at once. */
async function raced(store: RecordStore, capacity: number, steps: readonly Step[]): Promise<readonly Done[]> {
  const programs = [recorderOn(store), recorderOn(store)] as const;
  const begun = await setUp(programs[0], capacity);
  const doStep = async (it: Step, number: number): Promise<Done> => {
    const program = programs[number % 2] ?? programs[0];
    const session = await program.state<SessionState>(`session/${SESSION}`);
    const [action, ask] = [`step-action-${number}`, askOf(it, number, session)];
    const answer = await program.do(ask, action);
    return { action, ask, ok: answer.ok, answer };
  };
  // three at a time, so that some see what others did and some race
  const done: Done[] = [...begun];
  for (let from = 0; from < steps.length; from += 3) {
    const three = steps.slice(from, from + 3);
    done.push(...(await Promise.all(three.map((it, offset) => doStep(it, from + offset)))));
  }
  return done;
}

type Program = ReturnType<typeof recorderOn>;

async function setUp(program: Program, capacity: number): Promise<readonly Done[]> {
  const asks: readonly DoAskInput[] = [
    opened(capacity),
    ...PEOPLE.map((person): DoAskInput => ({ kind: "meet person", person, contact: { name: person } })),
    ...PEOPLE.map((person): DoAskInput => ({ ...pass, pass: `pass-${person}`, holder: person })),
  ];
  const done: Done[] = [];
  for (const [number, ask] of asks.entries()) {
    const action = `begin-action-${number}`;
    const answer = await program.do(ask, action);
    done.push({ action, ask, ok: answer.ok, answer });
  }
  expect(done.every((it) => it.ok)).toBe(true);
  return done;
}

function askOf({ what, who, other }: Step, number: number, session: SessionState): DoAskInput {
  const [one = "", two = ""] = [PEOPLE[who], PEOPLE[other]];
  const place = session.places.findLast(({ person }) => person === one)?.id ?? "none";
  const entry = session.waiting.find(({ person }) => person === one)?.entry ?? "none";
  const take = { place: `${one}-${number}`, person: one, how: "single" as const };
  const base = { session: SESSION };
  switch (what) {
    case "single":
      return { ...base, kind: "take place", people: [{ ...take, paid: { amount: 1000, by: "cash" } }] };
    case "pass":
      return { ...base, kind: "take place", people: [{ ...take, how: "pass", pass: `pass-${one}` }] };
    case "pair":
      return {
        ...base,
        kind: "take place",
        people: one === two ? [take] : [take, { ...take, place: `${two}-${number}`, person: two }],
      };
    case "give up":
      return { ...base, kind: "give up place", place };
    case "mark":
      return { ...base, kind: "mark", place, as: "attended" };
    case "away":
      return { ...base, kind: "mark", place, as: "not come" };
    case "unmark":
      return { ...base, kind: "mark", place, as: "held" };
    case "walk in":
      return { ...base, ...take, kind: "walk in", noSignal: true };
    case "offer":
      return { ...base, kind: "take offer", entry, how: "pass", pass: `pass-${one}` };
    case "pause":
      return {
        kind: "change pass",
        pass: `pass-${one}`,
        change: { kind: "paused", on: "2026-11-25", from: "2026-11-26" },
      };
  }
}

async function soundRecord(store: RecordStore, capacity: number): Promise<void> {
  const program = recorderOn(store);
  const session = await program.state<SessionState>(`session/${SESSION}`);
  const taken = session.places.filter(takesMat).map(({ person }) => person);
  expect(freeMats(session)).toBeGreaterThanOrEqual(0);
  expect(taken.length).toBeLessThanOrEqual(capacity);
  expect(new Set(taken).size).toBe(taken.length);
  const lines = await program.postings();
  expect(isBalanced({ lines })).toBe(true);
  for (const person of PEOPLE) {
    const { left, promised, ...rest } = await program.state<PassState>(`pass/pass-${person}`);
    const there = lines.filter(
      (it) => it.account === `left:${person}` && it.commodity === classesOf(`pass-${person}`),
    );
    expect(there.reduce((sum, { amount }) => sum + amount, 0)).toBe(left);
    expect(freeOf({ left, promised })).toBeGreaterThanOrEqual(0);
    expect(rest.size - left).toBe(rest.used.length);
  }
  for (const name of NAMES) await replays(store, name);
}

/** The state beside the events is what the events come to. */
async function replays(store: RecordStore, name: StreamName): Promise<void> {
  const events = await eventsOf(store, name);
  const state = events.reduce<unknown>(
    (before, { body, made }) => stateAfter(name, before, body, made),
    null,
  );
  expect(await recorderOn(store).state(name)).toEqual(JSON.parse(JSON.stringify(state)));
}

const NAMES: readonly StreamName[] = [
  `session/${SESSION}`,
  ...PEOPLE.flatMap((it) => [`person/${it}` as const, `pass/pass-${it}` as const]),
];

async function eventsOf(store: RecordStore, name: StreamName): Promise<readonly KeptEvent[]> {
  const found = await store.events("oriel", name);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

async function statesIn(store: RecordStore) {
  return Promise.all(NAMES.map((name) => recorderOn(store).state(name)));
}

/**
 * What an order of the same actions, one after another, comes to: an order in which each stream got its events, looked
 * for by trying, with the pure decisions. It throws where there is none: then the record was not serial.
 */
async function someOrder(store: RecordStore, done: readonly Done[]): Promise<readonly unknown[]> {
  const events = await Promise.all(NAMES.map((name) => eventsOf(store, name)));
  const left = events.map((it) => [...new Set(it.map(({ action }) => action))]);
  const asks = new Map(done.map(({ action, ask }) => [action, doAskSchema.parse(ask)]));
  const target = JSON.stringify(await statesIn(store));
  const found = tried([], left, asks, target);
  if (found === undefined) throw new Error(`in no order: ${JSON.stringify(left)}`);
  return found;
}

function tried(
  streams: readonly KeptStream[],
  left: readonly (readonly string[])[],
  asks: ReadonlyMap<string, DoAsk>,
  target: string,
): readonly unknown[] | undefined {
  if (left.every((actions) => actions.length === 0)) {
    const states = NAMES.map((name) => streams.find(({ stream }) => stream === name)?.state);
    return JSON.stringify(states) === target ? states : undefined;
  }
  const firsts = new Set(left.flatMap(([first]) => (first === undefined ? [] : [first])));
  for (const action of [...firsts].filter((it) => left.every((actions) => actions.indexOf(it) <= 0))) {
    const ask = asks.get(action);
    const next = ask === undefined ? undefined : actOn(streams, ask, SETTING);
    if (next?.ok !== true) continue;
    const rest = left.map((actions) => actions.filter((it) => it !== action));
    const found = tried(next.value.streams, rest, asks, target);
    if (found !== undefined) return found;
  }
  return undefined;
}

const NOW = "2026-04-01T09:00:00Z";
const SETTING = { made: NOW, arrived: NOW, by: "teacher", writer: plainWriter("en-GB") } as const;

const pass = {
  kind: "sell pass",
  form: "pass",
  name: "Three classes",
  on: "2026-11-25",
  size: 3,
  price: 2500,
  currency: "GBP",
  paid: "cash",
  useBy: "2027-03-02",
  valid: "all",
  terms: { perClassOnRefund: null, transferable: false, pauses: null },
} as const;

function opened(capacity: number): DoAskInput {
  return {
    kind: "open sessions",
    class: "tuesday",
    name: "Slow Tuesday",
    sessions: [{ id: SESSION, date: "2026-12-01", starts: "2026-12-01T18:30:00Z" }],
    zone: "Europe/London",
    minutes: 60,
    hall: null,
    capacity,
    posted: null,
    currency: "GBP",
    single: 1000,
    concession: 800,
    notice: { kind: "elapsed", hours: 24 },
    firstLateWaived: true,
  };
}
