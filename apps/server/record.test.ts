import { readFileSync } from "node:fs";
import { join } from "node:path";
import { openSqliteStore } from "#adapters/store";
import type { KeptStream } from "#app/ports";
import type { SessionState } from "#core/roll";
import { temporaryFolder } from "#testing";
import { expect, onTestFinished, test } from "vitest";
import { codesOf, trialServer } from "./trial-server.ts";

const session = "tuesday-evening.2026-12-01";
const contact = { name: "Ana Brook", phone: "01632 960100" };

test("a place is taken once, also when the same action comes twice", async () => {
  const { act, sessions } = await recordWith(2);
  const take = place("ana");
  expect((await act("take-0001", take)).json()).toMatchObject({ outcome: "held" });
  expect((await act("take-0001", take)).json()).toMatchObject({ outcome: "held" });
  expect((await sessions())[0]?.places).toHaveLength(1);
  // the same id for something else is refused
  expect(codesOf(await act("take-0001", place("ben")))).toEqual(["action-reused"]);
});

test("two hundred who ask at the same time for sixteen places: sixteen have one and the rest wait in their order", async () => {
  const { act, sessions } = await recordWith(16);
  const names = Array.from({ length: 200 }, (_, number) => `p-${number}`);
  await Promise.all(
    names.map((name) => act(`meet-${name}-0`, { kind: "meet person", person: name, contact })),
  );
  const asked = await Promise.all(names.map((name) => act(`take-${name}-0`, place(name))));
  const outcomes = asked.map((it) => it.json().outcome);
  expect(outcomes.filter((it) => it === "held")).toHaveLength(16);
  expect(outcomes.filter((it) => it === "waiting")).toHaveLength(184);
  const [kept] = await sessions();
  expect(new Set(kept?.places.map(({ person }) => person)).size).toBe(16);
  expect(kept?.waiting.map(({ person }) => person)).toEqual(names.slice(16));
});

test("a walk-in with cash is on the register, in the books, and known as a person", async () => {
  const { act, get } = await recordWith(2);
  const walked = await act("walk-0001", {
    kind: "walk in",
    session,
    place: "pl-w",
    person: "wilf",
    contact: { name: "Wilf Dane" },
    how: "single",
    paid: { amount: 1000, by: "cash" },
  });
  expect(walked.json()).toMatchObject({ outcome: "held" });
  const books = await get("/api/practices/oriel/record/postings?from=2026-01-01&until=2026-12-31");
  expect(amounts(books.json().postings)).toEqual({
    cash: 1000,
    "earned:single": -1000,
    "owed:single:pl-w": 0,
  });
});

test("the balances of a day are the sums of all lines until then", async () => {
  const { act, get } = await recordWith(2);
  const cost = { kind: "write cost", cost: "hall", to: "tithe-barn", currency: "GBP" };
  await act("cost-0001", { ...cost, how: "due", amount: 2700, on: "2001-11-24" });
  await act("cost-0002", { ...cost, how: "due paid", amount: 700, on: "2001-11-25" });
  const at = async (until: string) =>
    (await get(`/api/practices/oriel/record/balances?until=${until}`)).json().balances;
  expect(await at("2001-11-23")).toEqual([]);
  // 27.00 due, 7.00 of it paid the day after: 20.00 are due
  expect(amounts(await at("2001-11-25"))).toMatchObject({
    "cost:hall": 2700,
    "due:hall:tithe-barn": -2000,
    bank: -700,
  });
});

test("a note about health is sealed where it is kept, opened for the teacher, and gone with the consent", async () => {
  const { act, get, file } = await recordWith(2);
  expect(codesOf(await act("form-0001", form))).toEqual(["no-health-consent"]);
  await act("cons-0001", {
    kind: "consent",
    person: "ana",
    to: "health",
    given: true,
    wording: "a short note",
  });
  expect((await act("form-0002", form)).statusCode).toBe(200);
  const url = "/api/practices/oriel/record/people/ana/note";
  expect((await get(url)).json()).toEqual({ note: "left knee, no deep bends" });
  const everywhere = await get("/api/practices/oriel/record/people");
  expect(everywhere.body).not.toContain("knee");
  expect(file()).not.toContain("knee");
  await act("cons-0002", {
    kind: "consent",
    person: "ana",
    to: "health",
    given: false,
    wording: "a short note",
  });
  expect((await get(url)).json()).toEqual({ note: null });
});

test("what is asked wrongly is told, never kept", async () => {
  const { act, sessions } = await recordWith(2);
  expect(codesOf(await act("bad-00001", { kind: "fly" }))).toEqual(["document-choice"]);
  expect(codesOf(await act("bad-00002", { kind: "count heads", session, heads: -1 }))).not.toEqual([]);
  expect(codesOf(await act("no", place("ana")))).toEqual(["action-unreadable"]);
  expect(codesOf(await act("bad-00003", { ...place("ana"), session: "tuesday-evening.2026-12-08" }))).toEqual(
    ["session-unknown"],
  );
  expect((await sessions())[0]?.places).toEqual([]);
});

const form = {
  kind: "health form",
  person: "ana",
  speak: true,
  reviewBy: "2027-12-01",
  note: "left knee, no deep bends",
};

function place(person: string) {
  const people = [{ place: `pl-${person}`, person, how: "single" }];
  return { kind: "take place", session, people };
}

/** A server with one evening of so many mats, Ana and Ben. */
async function recordWith(capacity: number) {
  const data = join(temporaryFolder(), "record.sqlite");
  const store = await openSqliteStore({ file: data, now: () => "2026-11-25T09:45:00.000Z" });
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  onTestFinished(() => store.value.close());
  const { post, get } = await trialServer({ store: store.value });
  await post("/api/practices", { action: "action-0001", id: "oriel", start: "demo-marlsford" });
  const act = (action: string, what: object) =>
    post("/api/practices/oriel/record", { action, by: "teacher", do: what });
  await act("open-0001", {
    kind: "open sessions",
    class: "tuesday-evening",
    name: "Slow Tuesday",
    sessions: [{ id: session, date: "2026-12-01", starts: "2026-12-01T18:30:00Z" }],
    zone: "Europe/London",
    minutes: 60,
    hall: "tithe-barn",
    capacity,
    posted: 60,
    currency: "GBP",
    single: 1000,
    concession: 800,
    notice: { kind: "elapsed", hours: 24 },
    firstLateWaived: true,
  });
  await act("meet-0001", { kind: "meet person", person: "ana", contact });
  await act("meet-0002", { kind: "meet person", person: "ben", contact });
  const sessions = async () => {
    const url = "/api/practices/oriel/record/evenings?from=2026-12-01T00:00:00Z&until=2026-12-02T00:00:00Z";
    const streams: readonly KeptStream[] = (await get(url)).json().streams;
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the name holds the kind
    return streams.filter((it) => it.stream.startsWith("session/")).map(({ state }) => state as SessionState);
  };
  const file = () => `${readFileSync(data, "latin1")}${readFileSync(`${data}-wal`, "latin1")}`;
  return { act, get, sessions, file };
}

function amounts(lines: readonly { account: string; amount: number }[]): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const { account, amount } of lines) sums[account] = (sums[account] ?? 0) + amount;
  return sums;
}
