import { isBalanced, type PassState } from "#core/books";
import type { SessionState } from "#core/roll";
import { plainWriter } from "#core/words";
import { aRecorder } from "#testing";
import { expect, onTestFinished, test } from "vitest";
import { actOn } from "./act-on.ts";
import { deskWith } from "./desk.ts";
import { type DoAskInput, doAskSchema } from "./doings/index.ts";
import { doorNotice, followsDrafts, followsSentences } from "./follows-words.ts";
import { whatFollows } from "./what-follows.ts";

/*
 * Twelve days before Thursday 7 May 2026 the hall says that it is shut. Fourteen are booked: nine on passes, three on
 * a block of six for 54.00, two singles at 10.00. The hall's 27.00 is not payable.
 */
const ID = "thursday.2026-05-07";
const DATES = ["2026-05-14", "2026-05-21", "2026-06-04", "2026-06-11", "2026-06-18"];

test("what follows is listed before it is done, and what is done is what was listed", async () => {
  const record = await booked();
  const streams = await everything(record);
  const writer = plainWriter("en-GB");
  const setting = { made: NOW, arrived: NOW, by: "teacher", writer } as const;
  const asked = { session: ID, why: "hall shut", teachingDates: DATES, passes: [] } as const;
  const listed = whatFollows(deskWith(streams, new Set(), setting).desk, asked);
  if (listed === undefined) throw new Error("nothing listed");
  expect(followsSentences(listed, writer)).toEqual([
    "Thursday flow on Thursday 7 May 2026 does not take place.",
    "9 on a pass: nothing is taken off, and the use-by moves by one teaching date.",
    "3 on a block: offered another date or 9.00 GBP each.",
    "2 paid for this date: 20.00 GBP goes back.",
  ]);
  // a message to each of the fourteen, and a notice for the door, without anybody's name
  const drafts = followsDrafts(listed, "hall shut", writer);
  expect(drafts).toHaveLength(14);
  expect(drafts.find(({ person }) => person === "b-0")?.text).toContain("have 9.00 GBP back");
  expect(doorNotice(listed, "hall shut", writer)).toContain("no class on Thursday 7 May 2026");
  const cancel: DoAskInput = {
    kind: "cancel session",
    session: ID,
    why: "hall shut",
    teachingDates: DATES,
    seen: SEEN,
  };
  // the phone would decide the same from what it has
  expect(actOn(streams, doAskSchema.parse(cancel), setting).ok).toBe(true);
  const told = await record.must(cancel);
  expect(told.says).toEqual(followsSentences(listed, writer));
});

test("what was paid for the date alone is kept for another date where she says so, and no message promises it back", async () => {
  const record = await booked();
  const streams = await everything(record);
  const writer = plainWriter("en-GB");
  const setting = { made: NOW, arrived: NOW, by: "teacher", writer } as const;
  const asked = { session: ID, why: "weather", teachingDates: DATES, passes: [] } as const;
  const listed = whatFollows(deskWith(streams, new Set(), setting).desk, asked);
  if (listed === undefined) throw new Error("nothing listed");
  expect(followsSentences(listed, writer, "keep").at(-1)).toBe(
    "2 paid for this date: 20.00 GBP stays with you for another date.",
  );
  expect(toSid(followsDrafts(listed, "weather", writer))).toContain("Your 10.00 GBP comes back in cash.");
  expect(toSid(followsDrafts(listed, "weather", writer, "keep"))).toContain(
    "Your 10.00 GBP stays good for another date",
  );
  const told = await record.must({
    kind: "cancel session",
    session: ID,
    why: "weather",
    teachingDates: DATES,
    singles: "keep",
    seen: SEEN,
  });
  expect(told.says).toEqual(followsSentences(listed, writer, "keep"));
  // two singles of 10.00 in cash stay in the box
  expect(balance(await record.postings()).get("cash")).toBe(2000);
});

test("a fee agreed for cover is listed as still due before the session is cancelled", async () => {
  const record = await booked();
  await record.must({ kind: "meet person", person: "maren", contact: { name: "Maren" } });
  await record.must({
    kind: "may cover",
    person: "maren",
    insuredUntil: "2099-01-01",
    styles: "slow",
    fee: 3500,
  });
  await record.must({ kind: "cover session", session: ID, person: "maren", fee: 3500, hallAgrees: true });
  const told = await record.must({
    kind: "cancel session",
    session: ID,
    why: "weather",
    teachingDates: DATES,
    seen: SEEN,
  });
  expect(told.says.at(-1)).toBe(
    "The cover teacher is told too; the fee of 35.00 GBP stays in the books as due until you settle it.",
  );
  // due to her: 35.00
  expect(balance(await record.postings()).get("due:cover:maren")).toBe(-3500);
});

test("a place taken when its notice is over says so, and names no moment that is still to come", async () => {
  const record = await booked();
  // the class begins on 7 May at 17:30 UTC, so its 24 hours ended on 6 May at 18:30 in London
  record.at("2026-05-07T10:00:00Z");
  await record.must({ kind: "meet person", person: "s-9", contact: { name: "Sal Late" } });
  const told = await record.must({
    kind: "take place",
    session: ID,
    people: [{ place: "pl-day", person: "s-9", how: "single" }],
  });
  expect(told.says).toEqual([
    "One place in Thursday flow on Thursday 7 May 2026. It was taken past its notice, which ended on Wednesday 6 May 2026 at 18:30.",
  ]);
});

test("nine passes are not charged and move one teaching date, the block keeps its six, twenty pounds go back", async () => {
  const record = await booked();
  await record.must({
    kind: "cancel session",
    session: ID,
    why: "hall shut",
    teachingDates: DATES,
    seen: SEEN,
  });
  const session = await record.state<SessionState>(`session/${ID}`);
  expect(session.cancelled?.why).toBe("hall shut");
  for (const number of NINE) {
    const pass = await record.state<PassState>(`pass/pass-${number}`);
    // use by 28 May, no class that day: the next teaching date after it is 4 June
    expect(pass).toMatchObject({ left: 10, used: [], promised: [], useBy: "2026-06-04" });
  }
  const block = await record.state<PassState>("pass/block-0");
  expect(block).toMatchObject({ left: 6, promised: [], sessions: BLOCK });
  const sums = balance(await record.postings());
  // 9 passes at 85.00 = 765.00 and 3 blocks at 54.00 = 162.00 by bank; the two singles came and went in cash
  expect(sums.get("bank")).toBe(92_700);
  expect(sums.get("cash")).toBe(0);
  expect(sums.get("due:hall:quay-street")).toBeUndefined();
  expect([...sums.keys()].filter((account) => account.startsWith("earned"))).toEqual([]);
});

test("one of the three takes another date, one has 9.00 back, and the block's debt says so", async () => {
  const record = await booked();
  await record.must({
    kind: "cancel session",
    session: ID,
    why: "hall shut",
    teachingDates: DATES,
    seen: SEEN,
  });
  await record.must({
    kind: "change pass",
    pass: "block-0",
    change: { kind: "swapped", on: "2026-04-26", from: ID, to: "thursday.2026-06-18" },
  });
  await record.must({
    kind: "change pass",
    pass: "block-1",
    change: { kind: "refunded", on: "2026-04-26", classes: 1, amount: 900, how: "bank", sessions: [ID] },
  });
  const sums = balance(await record.postings());
  // 54.00 less a sixth: 45.00 are owed on the second block, 54.00 on the others
  expect(sums.get("owed:block:block-1")).toBe(-4500);
  expect(sums.get("owed:block:block-0")).toBe(-5400);
  expect(sums.get("bank")).toBe(92_700 - 900);
  expect(isBalanced({ lines: await record.postings() })).toBe(true);
});

test("who booked after the list was read stops it, and it is done once only", async () => {
  const record = await booked();
  await record.must({ kind: "meet person", person: "late", contact: { name: "Lou Late" } });
  await record.must({
    kind: "take place",
    session: ID,
    people: [{ place: "pl-late", person: "late", how: "single" }],
  });
  const cancel = {
    kind: "cancel session" as const,
    session: ID,
    why: "hall shut" as const,
    teachingDates: DATES,
  };
  expect(codes(await record.do({ ...cancel, seen: SEEN }))).toEqual(["changed-since-listed"]);
  await record.must({ ...cancel, seen: [...SEEN, "pl-late"] });
  expect(codes(await record.do({ ...cancel, seen: [] }))).toEqual(["session-cancelled"]);
});

function toSid(drafts: ReturnType<typeof followsDrafts>) {
  return drafts.find(({ person }) => person === "s-0")?.text;
}

const NOW = "2026-04-25T10:00:00Z";
const NINE = Array.from({ length: 9 }, (_, number) => number);
const BLOCK = ["2026-04-30", "2026-05-07", "2026-05-14", "2026-05-21", "2026-06-04", "2026-06-11"].map(
  (date) => `thursday.${date}`,
);
const SEEN = [...NINE.map((it) => `pl-p-${it}`), "pl-b-0", "pl-b-1", "pl-b-2", "pl-s-0", "pl-s-1"];

async function booked() {
  const record = await aRecorder();
  onTestFinished(() => record.close());
  record.at(NOW);
  await record.must({
    kind: "open sessions",
    class: "thursday",
    name: "Thursday flow",
    sessions: ["2026-05-07", ...DATES].map((date) => ({
      id: `thursday.${date}`,
      date,
      starts: `${date}T17:30:00Z`,
    })),
    zone: "Europe/London",
    minutes: 75,
    hall: "quay-street",
    capacity: 16,
    posted: 40,
    currency: "GBP",
    single: 1000,
    concession: 800,
    notice: { kind: "elapsed", hours: 24 },
    firstLateWaived: true,
  });
  for (const number of NINE) await onPass(record, number);
  for (const number of [0, 1, 2]) await onBlock(record, number);
  for (const number of [0, 1]) await single(record, number);
  return record;
}

type Record = Awaited<ReturnType<typeof aRecorder>>;

async function onPass(record: Record, number: number) {
  await record.must({ kind: "meet person", person: `p-${number}`, contact: { name: `Pia ${number}` } });
  await record.must({
    kind: "sell pass",
    pass: `pass-${number}`,
    form: "pass",
    holder: `p-${number}`,
    name: "Ten classes",
    on: "2026-04-25",
    size: 10,
    price: 8500,
    currency: "GBP",
    paid: "bank",
    useBy: "2026-05-28",
    valid: "all",
    terms: { perClassOnRefund: 1000, transferable: false, pauses: null },
  });
  await take(record, `p-${number}`, { how: "pass", pass: `pass-${number}` });
}

async function onBlock(record: Record, number: number) {
  await record.must({ kind: "meet person", person: `b-${number}`, contact: { name: `Bea ${number}` } });
  await record.must({
    kind: "sell pass",
    pass: `block-${number}`,
    form: "block",
    holder: `b-${number}`,
    name: "Block of six",
    on: "2026-04-25",
    size: 6,
    price: 5400,
    currency: "GBP",
    paid: "bank",
    useBy: "2026-06-11",
    valid: ["thursday"],
    sessions: BLOCK,
    terms: { perClassOnRefund: null, transferable: false, pauses: 0 },
  });
  await take(record, `b-${number}`, { how: "block", pass: `block-${number}` });
}

async function single(record: Record, number: number) {
  await record.must({ kind: "meet person", person: `s-${number}`, contact: { name: `Sid ${number}` } });
  await take(record, `s-${number}`, { how: "single", paid: { amount: 1000, by: "cash" } });
}

function take(record: Record, person: string, how: object) {
  const people = [{ place: `pl-${person}`, person, how: "single" as const, ...how }];
  return record.must({ kind: "take place", session: ID, people });
}

async function everything(record: Record) {
  const names = [
    `session/${ID}` as const,
    ...NINE.map((it) => `pass/pass-${it}` as const),
    ...[0, 1, 2].map((it) => `pass/block-${it}` as const),
  ];
  const found = await record.store.streams("oriel", names);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

function balance(postings: readonly { account: string; commodity: string; amount: number }[]) {
  const sums = new Map<string, number>();
  for (const { account, commodity, amount } of postings)
    if (commodity === "GBP") sums.set(account, (sums.get(account) ?? 0) + amount);
  return sums;
}

function codes(done: { ok: boolean; problems?: readonly { code: string }[] }) {
  return (done.problems ?? []).map(({ code }) => code);
}
