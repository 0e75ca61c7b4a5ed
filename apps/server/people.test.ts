import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { openSqliteStore } from "#adapters/store";
import { passAfter, refundOf, type PassEvent } from "#core/books";
import type { PersonExport } from "#app/ports";
import { plainWriter } from "#core/words";
import { temporaryFolder } from "#testing";
import { expect, onTestFinished, test } from "vitest";
import { codesOf, trialServer } from "./trial-server.ts";

const WEEKS = ["2026-12-01", "2026-12-08", "2026-12-15", "2027-01-05"];
const contact = {
  name: "Philippa Wrenfield",
  phone: "01632 960177",
  email: "philippa@wrenfield.example",
  emergencyName: "Jory Wrenfield",
  emergencyPhone: "01632 960178",
  heard: "a friend",
};

test("Pause: of a 10-pass at 85.00 with 4 used 51.00 goes back by equal shares and 45.00 by the written rule", async () => {
  const { act, get, everything } = await practiceWithPass();
  const form = { kind: "health form", person: "p-1", speak: true, reviewBy: "2027-11-25" };
  await act({ kind: "consent", person: "p-1", to: "health", given: true, wording: "a short note" });
  await act({ ...form, note: "pregnant, week 12: no lying on the back" });
  await act(changed({ kind: "paused", on: "2027-01-06", from: "2027-01-06" }));
  const paused = (await passOf(get)).state;
  expect(paused).toMatchObject({ left: 6, pausedFrom: "2027-01-06" });

  const found = refundOf(paused, { classes: 6, on: "2027-02-01" }, plainWriter("en-GB"));
  // 85.00 × 6 ÷ 10 = 51.00; 85.00 − 4 × 10.00 = 45.00
  expect([found.byShares.amount, found.byRule?.amount, found.suggested.amount]).toEqual([5100, 4500, 5100]);
  expect(found.sentences[0]).toContain("51.00 GBP would go back by equal shares");
  expect(found.sentences[0]).toContain("the written rule says another amount, 45.00 GBP");
  expect(found.sentences[1]).toContain("6.00 GBP more than the share");
  const back = { kind: "refunded", on: "2027-02-01", classes: 6, amount: 5100, how: "bank" };
  expect((await act(changed(back))).statusCode).toBe(200);

  const kept: PersonExport = (await get("/api/practices/oriel/record/people/p-1/export")).json();
  expect(kept.payments.map(({ on, amount, by }) => [on, amount, by])).toEqual([
    ["2026-11-25", "85.00", "cash"],
    ["2027-02-01", "-51.00", "bank"],
  ]);
  expect(kept.passes[0]).toMatchObject({ left: 0, usedOn: WEEKS });
  expect(kept.healthForm).toMatchObject({ speakFirst: true, note: { opened: false, text: null } });
  // nothing that is read, told or kept says more than the dot; what is kept is sealed
  for (const told of await everything()) expect(told.toLowerCase()).not.toMatch(/pregnan|week 12|lying/);
  const asked: PersonExport = (await get("/api/practices/oriel/record/people/p-1/export?note=opened")).json();
  expect(asked.healthForm?.note.text).toBe("pregnant, week 12: no lying on the back");
});

test("after erasing nothing of a name is in the data file, and the books still add up without it", async () => {
  const { act, get, file } = await practiceWithPass();
  await act({ kind: "may cover", person: "p-1", insuredUntil: "2027-06-30", styles: "slow", fee: 3500 });
  const changedContact = { ...contact, name: "Philippa Wrenfield-Oakes" };
  await act({ kind: "change contact", person: "p-1", contact: changedContact });
  expect(file()).toContain("Wrenfield");
  expect((await act({ kind: "erase person", person: "p-1" })).statusCode).toBe(200);
  for (const word of ["Wrenfield", "Philippa", "960177", "Jory"]) expect(file()).not.toContain(word);
  const books = await get("/api/practices/oriel/record/postings?from=2026-01-01&until=2027-12-31");
  const cash: number = books
    .json()
    .postings.filter((it: { account: string }) => it.account === "cash")
    .reduce((sum: number, it: { amount: number }) => sum + it.amount, 0);
  expect(cash).toBe(8500);
  expect(codesOf(await get("/api/practices/oriel/record/people/p-1/export"))).toEqual(["person-unknown"]);
  // asked again under the same id, the first answer is told again and brings no name back
  expect(file()).not.toContain("Wrenfield");
});

test("an export tells consents with their dates and words and the places", async () => {
  const { act, get } = await practiceWithPass();
  const wording = "Photos may be shown.";
  await act({ kind: "consent", person: "p-1", to: "photo", given: true, wording });
  await act({ kind: "consent", person: "p-1", to: "photo", given: false, wording });
  const kept: PersonExport = (await get("/api/practices/oriel/record/people/p-1/export")).json();
  const at = "2026-11-25T09:45:00Z";
  expect(kept.consents).toEqual([
    { to: "photo", given: true, at, wording },
    { to: "photo", given: false, at, wording },
  ]);
  expect(kept.contact).toEqual(contact);
  expect(kept.places.map(({ date, how, state, pass }) => [date, how, state, pass])).toEqual(
    WEEKS.map((date) => [date, "pass", "attended", "pass-1"]),
  );
  expect(codesOf(await get("/api/practices/oriel/record/people/nobody/export"))).toEqual(["person-unknown"]);
});

test("who was last seen when is told of a stretch of time, and nothing else of anybody", async () => {
  const { get } = await practiceWithPass();
  const url = "/api/practices/oriel/record/people/seen?from=2026-12-01T00:00:00Z&until=2026-12-31T00:00:00Z";
  // three of the four sessions lie before the new year
  expect((await get(url)).json()).toEqual({ seen: [{ person: "p-1", last: "2026-12-15", times: 3 }] });
});

function changed(change: object) {
  return { kind: "change pass", pass: "pass-1", change };
}

async function passOf(get: (url: string) => Promise<{ json: () => unknown }>) {
  const url = "/api/practices/oriel/record/passes?holder=p-1";
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own route
  const read = (await get(url)).json() as {
    streams: readonly { state: ReturnType<typeof passAfter> }[];
  };
  const [pass] = read.streams;
  if (pass === undefined) throw new Error("there is no pass");
  return pass;
}

/** One person with a 10-pass at 85.00, used on four Tuesdays; a class taken counts 10.00 by the written rule. */
async function practiceWithPass() {
  const data = join(temporaryFolder(), "people.sqlite");
  const store = await openSqliteStore({ file: data, now: () => "2026-11-25T09:45:00.000Z" });
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  onTestFinished(() => store.value.close());
  const { post, get } = await trialServer({ store: store.value });
  await post("/api/practices", { action: "action-0001", id: "oriel", start: "demo-marlsford" });
  let count = 0;
  const act = (what: object) => {
    count += 1;
    return post("/api/practices/oriel/record", { action: `people-${1000 + count}`, by: "teacher", do: what });
  };
  const sound = async (what: object) => {
    const done = await act(what);
    if (done.statusCode !== 200) throw new Error(done.body);
  };
  await sound({ kind: "meet person", person: "p-1", contact });
  await sound(sold);
  await sound(opened);
  for (const date of WEEKS) {
    const session = `slow.${date}`;
    const place = `place-${date}`;
    const people = [{ place, person: "p-1", how: "pass", pass: "pass-1" }];
    await sound({ kind: "take place", session, people });
    await sound({ kind: "mark", session, place, as: "attended" });
  }
  const file = () =>
    [data, `${data}-wal`].map((it) => (existsSync(it) ? readFileSync(it, "latin1") : "")).join("");
  const everything = async () => {
    const paths = ["people", "passes", `evenings?from=${FIRST}&until=${LAST}`, "people/p-1/export"];
    paths.push("postings?from=2026-01-01&until=2027-12-31");
    const read = await Promise.all(paths.map((path) => get(`/api/practices/oriel/record/${path}`)));
    const events = ["person/p-1", "pass/pass-1"] as const;
    const kept = await Promise.all(events.map((it) => store.value.record.events("oriel", it)));
    const lines: string[] = [];
    await store.value.everythingOut(async (text) => void lines.push(text));
    return [...read.map(({ body }) => body), JSON.stringify(kept), lines.join(""), file()];
  };
  return { act, get, file, everything };
}

const FIRST = "2026-11-01T00:00:00Z";
const LAST = "2027-12-31T00:00:00Z";

const sold = {
  kind: "sell pass",
  pass: "pass-1",
  form: "pass",
  holder: "p-1",
  name: "Pass of 10",
  on: "2026-11-25",
  size: 10,
  price: 8500,
  currency: "GBP",
  paid: "cash",
  useBy: "2027-03-30",
  valid: "all",
  terms: { perClassOnRefund: 1000, transferable: true, pauses: null },
} satisfies Omit<PassEvent & { readonly kind: "sold" }, "kind" | "sessions"> & { readonly kind: string };

const opened = {
  kind: "open sessions",
  class: "slow",
  name: "Slow Tuesday",
  sessions: WEEKS.map((date) => ({ id: `slow.${date}`, date, starts: `${date}T18:30:00Z` })),
  zone: "Europe/London",
  minutes: 60,
  hall: null,
  capacity: 16,
  posted: 60,
  currency: "GBP",
  single: 1000,
  concession: 800,
  notice: { kind: "elapsed", hours: 24 },
  firstLateWaived: true,
};
