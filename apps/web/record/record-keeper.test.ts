import type { KeptStream } from "#app/ports";
import type { DoAskInput } from "#app/record";
import type { SessionState } from "#core/roll";
import { bad, problem, type Result } from "#core/words";
import { expect, test } from "vitest";
import { acted } from "./acted.ts";
import { emptyOutbox, type Outbox, type Queued } from "./outbox.ts";
import { recordKeeperOf } from "./record-keeper.ts";
import type { RecordWorld, Seen } from "./record-world.ts";

const session = "tuesday.2026-12-01";

test("what is done without signal is shown at once, waits in its order, and is sent once when there is signal", async () => {
  const server = await serverWith(2);
  const phone = device(server);
  await phone.keeper.sync();
  server.signal = false;
  expect(phone.keeper.act(mark("ana", "attended"), "Ana is here").ok).toBe(true);
  expect(phone.keeper.act(walkIn("wilf"), "Wilf walked in").ok).toBe(true);
  await phone.keeper.sync();
  expect(statesOf(phone.keeper.read().streams)).toEqual(["ana attended", "wilf attended"]);
  expect(statesOf(server.streams)).toEqual(["ana held"]);
  expect(phone.keeper.read()).toMatchObject({ silent: true, outbox: { queue: [{}, {}] } });
  server.signal = true;
  await phone.keeper.sync();
  expect(statesOf(server.streams)).toEqual(["ana attended", "wilf attended"]);
  expect(phone.keeper.read()).toMatchObject({ silent: false, outbox: emptyOutbox });
  expect(server.heard).toEqual(["mark", "walk in"]);
});

test("a page closed without signal and opened again has everything that was done", async () => {
  const server = await serverWith(2);
  const phone = device(server);
  await phone.keeper.sync();
  server.signal = false;
  phone.keeper.act(mark("ana", "attended"), "Ana is here");
  const again = device(server, phone.kept);
  await again.keeper.sync();
  expect(statesOf(again.keeper.read().streams)).toEqual(["ana attended"]);
  expect(again.keeper.read().outbox.queue).toHaveLength(1);
});

test("an answer that was lost on the way is asked for again under the same id and done once", async () => {
  const server = await serverWith(2);
  const phone = device(server);
  await phone.keeper.sync();
  server.losesAnswers = true;
  phone.keeper.act(walkIn("wilf"), "Wilf walked in");
  await phone.keeper.sync();
  expect(statesOf(server.streams)).toEqual(["ana held", "wilf attended"]);
  expect(phone.keeper.read().outbox.queue).toHaveLength(1);
  server.losesAnswers = false;
  await phone.keeper.sync();
  expect(statesOf(server.streams)).toEqual(["ana held", "wilf attended"]);
  expect(phone.keeper.read().outbox).toEqual(emptyOutbox);
});

test("what the server refuses stands under what is not kept, can be tried again, and goes only when put aside", async () => {
  const server = await serverWith(2);
  const phone = device(server);
  await phone.keeper.sync();
  server.signal = false;
  phone.keeper.act(mark("ana", "attended"), "Ana is here");
  // meanwhile Ana gives her place up on another device
  server.do({ kind: "give up place", session, place: "pl-ana" });
  server.signal = true;
  await phone.keeper.sync();
  const [refused] = phone.keeper.read().outbox.unsettled;
  expect(refused).toMatchObject({
    queued: { words: "Ana is here" },
    problems: [{ code: "place-given-up" }],
  });
  const action = refused?.queued.action ?? "";
  phone.keeper.again(action);
  await phone.keeper.sync();
  expect(phone.keeper.read().outbox.unsettled).toHaveLength(1);
  phone.keeper.putAside(action);
  expect(phone.keeper.read().outbox).toEqual(emptyOutbox);
});

test("the last mat sold meanwhile: the walk-in is kept beside the places and told in words", async () => {
  const server = await serverWith(2);
  const phone = device(server);
  await phone.keeper.sync();
  server.signal = false;
  phone.keeper.act(walkIn("wilf"), "Wilf walked in, £10.00 paid by cash");
  server.do(meet("ben"));
  server.do({
    kind: "take place",
    session,
    people: [{ place: "pl-ben", person: "ben", how: "single" }],
  });
  server.signal = true;
  await phone.keeper.sync();
  const { outbox, streams } = phone.keeper.read();
  expect(outbox.otherwise[0]).toMatchObject({ words: "Wilf walked in, £10.00 paid by cash" });
  expect(outbox.otherwise[0]?.says.join(" ")).toContain("All 2 mats were taken");
  expect(sessionIn(streams)?.cameOver).toMatchObject([
    { person: "wilf", paid: { amount: 1000, by: "cash" } },
  ]);
});

test("what cannot be done at all is refused on the device and waits nowhere", async () => {
  const server = await serverWith(1);
  const phone = device(server);
  await phone.keeper.sync();
  const full = phone.keeper.act({ ...walkIn("wilf"), noSignal: false }, "Wilf walked in");
  expect(full).toMatchObject({ ok: false, problems: [{ code: "no-mat-left" }] });
  expect(phone.keeper.read().outbox).toEqual(emptyOutbox);
});

test("two windows share what waits: neither drops what the other did", async () => {
  const server = await serverWith(3);
  const first = device(server);
  const second = device(server, first.kept);
  await Promise.all([first.keeper.sync(), second.keeper.sync()]);
  server.signal = false;
  first.keeper.act(mark("ana", "attended"), "Ana is here");
  second.keeper.act(walkIn("wilf"), "Wilf walked in");
  server.signal = true;
  await second.keeper.sync();
  expect(statesOf(server.streams)).toEqual(["ana attended", "wilf attended"]);
});

type Kept = { outbox: Outbox; seen: Seen | null };

/** A phone with storage of its own that speaks to the server over a line that may be dead. */
function device(
  server: Awaited<ReturnType<typeof serverWith>>,
  kept: Kept = { outbox: emptyOutbox, seen: null },
) {
  let ids = 0;
  const world: RecordWorld = {
    send: (queued) => Promise.resolve(server.send(queued)),
    read: () => Promise.resolve(server.signal ? { ok: true, value: server.streams } : silent()),
    readDay: () => Promise.resolve(silent()),
    outbox: () => kept.outbox,
    keepOutbox: (outbox) => {
      kept.outbox = outbox;
      return true;
    },
    seen: () => Promise.resolve(kept.seen),
    keepSeen: (seen) => {
      kept.seen = seen;
      return Promise.resolve();
    },
    newId: () => `action-${kept.outbox.queue.length}-${(ids += 1)}-${server.heard.length}`,
    now: () => "2026-12-01T18:40:00.000Z",
  };
  return { keeper: recordKeeperOf(world, () => "en-GB"), kept };
}

/** The record's own decisions over streams in memory; each action once. One evening of so many mats, Ana in it. */
async function serverWith(capacity: number) {
  const done = new Map<string, Awaited<ReturnType<RecordWorld["send"]>>>();
  const server = {
    streams: [] as readonly KeptStream[],
    signal: true,
    losesAnswers: false,
    heard: [] as string[],
    do: (asked: DoAskInput) => {
      const after = acted(server.streams, { do: asked, made: "2026-12-01T12:00:00.000Z" }, "en-GB");
      if (!after.ok) return after;
      server.streams = after.value.streams;
      return { ok: true, value: after.value.told } as const;
    },
    send: (queued: Queued): Awaited<ReturnType<RecordWorld["send"]>> => {
      if (!server.signal) return silent();
      server.heard.push(queued.do.kind);
      const answer = done.get(queued.action) ?? server.do(queued.do);
      if (answer.ok) done.set(queued.action, answer);
      return server.losesAnswers ? silent() : answer;
    },
  };
  server.do({
    kind: "open sessions",
    class: "tuesday",
    name: "Slow Tuesday",
    sessions: [{ id: session, date: "2026-12-01", starts: "2026-12-01T18:30:00Z" }],
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
  });
  server.do(meet("ana"));
  server.do({ kind: "take place", session, people: [{ place: "pl-ana", person: "ana", how: "single" }] });
  return server;
}

function meet(person: string): DoAskInput {
  return { kind: "meet person", person, contact: { name: person } };
}

function mark(person: string, as: "attended" | "held"): DoAskInput {
  return { kind: "mark", session, place: `pl-${person}`, as };
}

function walkIn(person: string) {
  return {
    kind: "walk in",
    session,
    place: `pl-${person}`,
    person,
    contact: { name: person },
    noSignal: true,
    how: "single",
    paid: { amount: 1000, by: "cash" },
  } as const;
}

function sessionIn(streams: readonly KeptStream[]): SessionState | undefined {
  const found = streams.find(({ stream }) => stream === `session/${session}`);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the name holds the kind
  return found?.state as SessionState | undefined;
}

function statesOf(streams: readonly KeptStream[]): readonly string[] {
  return (sessionIn(streams)?.places ?? []).map(({ person, state }) => `${person} ${state}`);
}

function silent(): Result<never> {
  return bad(problem("server-silent", "", "The server does not answer.", "Try again."));
}
