import { isBalanced, type PassState } from "#core/books";
import type { SessionState } from "#core/roll";
import { aRecorder } from "#testing";
import { expect, onTestFinished, test } from "vitest";

const [TUESDAY, THURSDAY] = ["tuesday.2026-12-01", "thursday.2026-12-03"];

test("two thin sessions become one, with what was paid and with the class of the pass", async () => {
  const record = await twoThin(4);
  const told = await record.must({ kind: "merge sessions", session: TUESDAY, into: THURSDAY });
  expect(told.says[0]).toContain("2 have their place in Thursday on Thursday 3 December 2026 instead");
  const from = await record.state<SessionState>(`session/${TUESDAY}`);
  expect(from.cancelled).toEqual({ why: "too few", movedTo: THURSDAY });
  const into = await record.state<SessionState>(`session/${THURSDAY}`);
  expect(into.places.map(({ person, state }) => [person, state])).toEqual([
    ["cleo", "held"],
    ["ana", "held"],
    ["ben", "held"],
  ]);
  const pass = await record.state<PassState>("pass/ten");
  expect(pass.promised.map(({ session }) => session)).toEqual([THURSDAY]);
  // 10.00 in cash came in once, went out of the one place and into the other
  const lines = await record.postings();
  const cash = lines.filter(({ account }) => account === "cash").map(({ amount }) => amount);
  expect(cash.toSorted((a, b) => a - b)).toEqual([-1000, 1000, 1000]);
  expect(isBalanced({ lines })).toBe(true);
});

test("a session with too few free mats, the same one, or one in which somebody has a place already, is refused", async () => {
  const small = await twoThin(2);
  const merge = { kind: "merge sessions", session: TUESDAY, into: THURSDAY } as const;
  expect(codes(await small.do(merge))).toEqual(["moved-too-small"]);
  expect(codes(await small.do({ ...merge, into: TUESDAY }))).toEqual(["merge-not-open"]);
  const both = await twoThin(4);
  const people = [{ place: "pl-again", person: "ana", how: "single" as const }];
  await both.must({ kind: "take place", session: THURSDAY, people });
  expect(codes(await both.do(merge))).toEqual(["merge-in-both"]);
});

async function twoThin(capacity: number) {
  const record = await aRecorder();
  onTestFinished(() => record.close());
  for (const id of [TUESDAY, THURSDAY]) await record.must(opened(id, capacity));
  for (const person of ["ana", "ben", "cleo"])
    await record.must({ kind: "meet person", person, contact: { name: person } });
  await record.must({
    kind: "sell pass",
    pass: "ten",
    form: "pass",
    holder: "ben",
    name: "Ten classes",
    on: "2026-04-01",
    size: 10,
    price: 8500,
    currency: "GBP",
    paid: "bank",
    useBy: "2027-03-30",
    valid: "all",
    terms: { perClassOnRefund: null, transferable: false, pauses: null },
  });
  const paid = { amount: 1000, by: "cash" } as const;
  await take(TUESDAY, { place: "pl-ana", person: "ana", how: "single", paid });
  await take(TUESDAY, { place: "pl-ben", person: "ben", how: "pass", pass: "ten" });
  await take(THURSDAY, { place: "pl-cleo", person: "cleo", how: "single" });
  return record;

  function take(
    session: string,
    it: { place: string; person: string; how: "single" | "pass"; pass?: string; paid?: typeof paid },
  ) {
    return record.must({ kind: "take place", session, people: [it] });
  }
}

function opened(id: string, capacity: number) {
  const [name = "", date = ""] = id.split(".");
  return {
    kind: "open sessions" as const,
    class: name,
    name: `${name.slice(0, 1).toUpperCase()}${name.slice(1)}`,
    sessions: [{ id, date, starts: `${date}T18:30:00Z` }],
    zone: "Europe/London",
    minutes: 60,
    hall: null,
    capacity,
    posted: null,
    currency: "GBP",
    single: 1000,
    concession: 800,
    notice: { kind: "elapsed" as const, hours: 24 },
    firstLateWaived: true,
  };
}

function codes(done: { ok: boolean; problems?: readonly { code: string }[] }) {
  return (done.problems ?? []).map(({ code }) => code);
}
