import { plainWriter } from "#core/words";
import { expect, test } from "vitest";
import { passAfter } from "./pass-after.ts";
import type { PassEvent, PassSold } from "./pass-event.ts";
import type { PassState } from "./pass-state.ts";
import { refundOf } from "./refund-of.ts";

const uk = plainWriter("en-GB");

const tenPass: PassSold = {
  kind: "sold",
  on: "2026-09-08",
  pass: "p1",
  form: "pass",
  holder: "person-1",
  name: "Ten classes",
  size: 10,
  price: 8500,
  currency: "GBP",
  paid: "cash",
  useBy: "2027-01-26",
  valid: "all",
  sessions: [],
  terms: { perClassOnRefund: 1000, transferable: true, pauses: null },
};

const block: PassSold = {
  ...tenPass,
  pass: "b1",
  form: "block",
  name: "Autumn block",
  size: 6,
  price: 5400,
  sessions: ["s1", "s2", "s3", "s4", "s5", "s6"],
  terms: { perClassOnRefund: null, transferable: false, pauses: 0 },
};

function used(...sessions: readonly string[]): readonly PassEvent[] {
  return sessions.map((session) => ({
    kind: "used",
    on: "2026-09-15",
    session,
    class: "tuesday",
    why: "attended",
  }));
}

test("BOOKS-30 BOOKS-31 ten classes at 85.00 with four used, paused and given back: 51.00 by shares, 45.00 by the rule", () => {
  const state = passAfter([
    tenPass,
    ...used("s1", "s2", "s3", "s4"),
    { kind: "paused", on: "2026-10-06", from: "2026-10-13" },
  ]);
  const found = refundOf(state, { classes: 6, on: "2026-12-01" }, uk);
  // 85.00 × 6 ÷ 10 = 51.00; 85.00 − 4 × 10.00 = 45.00
  expect(found.byShares).toEqual({
    amount: 5100,
    letGo: 0,
    paidOut: 5100,
    working: [{ label: "Back by equal shares: 6 of 10 classes", sum: "85.00 × 6 ÷ 10", amount: "51.00" }],
  });
  expect(found.byRule?.amount).toBe(4500);
  expect(found.byRule?.working.map(({ label, sum, amount }) => [label, sum, amount])).toEqual([
    ["Price", "", "85.00"],
    ["Less the classes taken, by the written rule", "4 × 10.00", "-40.00"],
    ["Back by the written rule", "never below nought", "45.00"],
  ]);
  expect(found.suggested.amount).toBe(5100);
  expect(found.sentences).toEqual([
    "For 6 of 10 classes, 51.00 GBP would go back by equal shares; the written rule says another amount, 45.00 GBP.",
    "The rule keeps 6.00 GBP more than the share of the classes taken. A rule that keeps more than your real loss, or refuses to give anything back, may be unfair and not bind the holder. Take advice where you are: a consumer adviser or your insurer's legal line.",
  ]);
});

test("BOOKS-32 a session of a block of six for 54.00 that is called off gives back 9.00", () => {
  const found = refundOf(passAfter([block, ...used("s1", "s2")]), { classes: 1, on: "2026-11-14" }, uk);
  expect(found.byShares.amount).toBe(900);
  expect(found.byRule).toBe(null);
  expect(found.byShares.working[0]).toEqual({
    label: "Back by equal shares: 1 of 6 sessions",
    sum: "54.00 × 1 ÷ 6",
    amount: "9.00",
  });
});

test("BOOKS-32 the parts of 50.00 in six come back to the penny, one after another", () => {
  // upTo: 8.33, 16.67, 25.00, 33.33, 41.67, 50.00
  let events: readonly PassEvent[] = [{ ...block, price: 5000 }];
  const parts = block.sessions.map((session) => {
    const { amount } = refundOf(passAfter(events), { classes: 1, on: "2026-11-14" }, uk).byShares;
    events = [
      ...events,
      { kind: "refunded", on: "2026-11-14", classes: 1, amount, how: "bank", sessions: [session] },
    ];
    return amount;
  });
  expect(parts).toEqual([833, 834, 833, 833, 834, 833]);
  expect(passAfter(events)).toMatchObject({ left: 0, paidBack: 5000, sessions: [] });
});

test("BOOKS-31 the written rule never asks for money: nine classes at 10.00 are more than 85.00", () => {
  const state = passAfter([tenPass, ...used("1", "2", "3", "4", "5", "6", "7", "8", "9")]);
  const { byRule, byShares, suggested } = refundOf(state, { classes: 1, on: "2026-12-01" }, uk);
  expect([byRule?.amount, byShares.amount, suggested.amount]).toEqual([0, 850, 850]);
});

test("BOOKS-31 what went back before counts against the written rule", () => {
  const state = passAfter([
    tenPass,
    ...used("s1", "s2"),
    { kind: "refunded", on: "2026-10-06", classes: 2, amount: 1700, how: "cash" },
  ]);
  const { byRule } = refundOf(state, { classes: 6, on: "2026-12-01" }, uk);
  // 85.00 − 2 × 10.00 − 17.00 = 48.00
  expect(byRule?.amount).toBe(4800);
  expect(byRule?.working.map(({ label, amount }) => [label, amount])).toContainEqual([
    "Less what went back before",
    "-17.00",
  ]);
});

test("BOOKS-31 a rule that gives more than equal shares stands, since it was promised", () => {
  const kind = { ...tenPass, terms: { ...tenPass.terms, perClassOnRefund: 500 } };
  const found = refundOf(passAfter([kind, ...used("s1", "s2")]), { classes: 8, on: "2026-12-01" }, uk);
  // 85.00 − 2 × 5.00 = 75.00 against 68.00
  expect([found.suggested.amount, found.byShares.amount]).toEqual([7500, 6800]);
  expect(found.sentences[1]).toContain("what was promised in writing stands");
});

test("BOOKS-33 what is unpaid is let go first; a pass sold a few days ago is a caution of its own", () => {
  const state = passAfter([
    { ...tenPass, paid: "later" },
    { kind: "paid", on: "2026-09-10", amount: 5000, how: "bank" },
    ...used("s1", "s2", "s3", "s4"),
  ]);
  const { byShares, sentences } = refundOf(state, { classes: 6, on: "2026-09-13" }, uk);
  expect(byShares).toMatchObject({ amount: 5100, letGo: 3500, paidOut: 1600 });
  expect(sentences.slice(2)).toEqual([
    "35.00 GBP of the price is still unpaid: by equal shares that falls to 0.00 GBP, and 16.00 GBP is paid out.",
    "It was sold 5 days ago. A pass for no fixed date that was bought at a distance can in many places be given back within 14 days, less the classes taken: check the local law.",
  ]);
});

test("BOOKS-33 no more goes back than came in: after 50.00 back for one class, 35.00 is the most", () => {
  const state = passAfter([
    tenPass,
    { kind: "refunded", on: "2026-10-06", classes: 1, amount: 5000, how: "cash" },
  ]);
  const { byShares } = refundOf(state, { classes: 9, on: "2026-12-01" }, uk);
  // by shares 76.50, but only 35.00 of 85.00 is still here
  expect(byShares).toMatchObject({ amount: 3500, paidOut: 3500 });
  expect(byShares.working.at(-1)?.amount).toBe("35.00");
  expect(() => refundOf(state, { classes: 10, on: "2026-12-01" }, uk)).toThrow("10 given back of 9");
});

function early(state: PassState, on: string): number {
  const { sentences } = refundOf(state, { classes: 1, on }, uk);
  return sentences.filter((it) => it.startsWith("It was sold")).length;
}

test("BOOKS-33 the caution of the first days stands on the fourteenth day and not on the fifteenth; a block has dates", () => {
  const state = passAfter([tenPass]);
  expect([early(state, "2026-09-22"), early(state, "2026-09-23")]).toEqual([1, 0]);
  expect(early(passAfter([block]), "2026-09-08")).toBe(0);
});
