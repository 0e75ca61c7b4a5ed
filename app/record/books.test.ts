import { isBalanced } from "#core/books";
import { aRecorder } from "#testing";
import { expect, onTestFinished, test } from "vitest";

const GBP = { currency: "GBP", on: "2026-11-24" } as const;

test("the box counted 2.50 less than the books goes into the books as a difference; the right amount leaves nothing", async () => {
  const record = await opened();
  await record.must({ kind: "own money", ...GBP, what: "put in", amount: 2000, by: "cash" });
  // 20.00 in the box by the books, 17.50 counted
  const less = await record.must({ kind: "count cash", ...GBP, expected: 2000, counted: 1750 });
  expect(less.says).toEqual([
    "The box holds 17.50 GBP, 2.50 GBP less than the books: written down as a difference of cash.",
  ]);
  const right = await record.must({ kind: "count cash", ...GBP, expected: 1750, counted: 1750 });
  expect(right.says).toEqual(["The box holds 17.50 GBP, as the books say."]);
  expect(await sums(record)).toEqual({ cash: 1750, "own:put-in": -2000, "difference:cash": 250 });
});

test("a studio's 30.00 is owed when it is taught and money when it is paid", async () => {
  const record = await opened();
  const work = { kind: "write work", heading: "studio", invoice: "inv-7", amount: 3000, ...GBP } as const;
  await record.must({ ...work, how: "taught" });
  expect(await sums(record)).toEqual({ "unpaid:studio:inv-7": 3000, "earned:studio": -3000 });
  await record.must({ ...work, how: "paid", by: "bank" });
  expect(await sums(record)).toEqual({ "unpaid:studio:inv-7": 0, "earned:studio": -3000, bank: 3000 });
});

test("what was written by mistake, or is not to be paid after all, leaves nothing", async () => {
  const record = await opened();
  const hall = { kind: "write cost", cost: "hall", to: "tithe-barn", amount: 2700, ...GBP } as const;
  await record.must({ ...hall, how: "due" });
  await record.must({ ...hall, how: "let go" });
  const music = { ...hall, cost: "music", to: "music", amount: 990 } as const;
  await record.must({ ...music, how: "bought", by: "cash" });
  expect((await record.must({ ...music, how: "came back", by: "cash" })).says).toEqual([
    "9.90 GBP for music came back.",
  ]);
  const work = { kind: "write work", heading: "studio", invoice: "inv-8", amount: 3000, ...GBP } as const;
  await record.must({ ...work, how: "taught" });
  await record.must({ ...work, how: "let go" });
  expect(new Set(Object.values(await sums(record)))).toEqual(new Set([0]));
});

test("100.00 of card takings arrive in the bank as 98.25, and the fee is a cost", async () => {
  const record = await opened();
  await record.must({ kind: "move money", ...GBP, from: "card", to: "bank", amount: 10_000, fee: 175 });
  expect(await sums(record)).toEqual({ card: -10_000, bank: 9825, "cost:fees": 175 });
  const stays = await record.do({ kind: "move money", ...GBP, from: "bank", to: "bank", amount: 100 });
  expect(stays).toMatchObject({ problems: [{ code: "money-stays" }] });
  const fee = await record.do({
    kind: "move money",
    ...GBP,
    from: "card",
    to: "bank",
    amount: 100,
    fee: 101,
  });
  expect(fee).toMatchObject({ problems: [{ code: "fee-above-amount" }] });
});

test("a day that is none, and a currency that is none, are told and nothing is kept", async () => {
  const record = await opened();
  const cost = { kind: "write cost", cost: "music", to: "music", amount: 100, how: "bought" } as const;
  const day = await record.do({ ...cost, ...GBP, on: "2026-02-30" });
  expect(day).toMatchObject({ problems: [{ code: "date-unreadable", place: "on" }] });
  const currency = await record.do({ ...cost, on: "2026-11-24", currency: "ZZZ" });
  expect(currency).toMatchObject({ problems: [{ place: "currency" }] });
  expect(await record.postings()).toEqual([]);
});

async function opened() {
  const record = await aRecorder();
  onTestFinished(() => record.close());
  return record;
}

async function sums(record: Awaited<ReturnType<typeof opened>>): Promise<Record<string, number>> {
  const lines = await record.postings();
  expect(isBalanced({ lines })).toBe(true);
  const found: Record<string, number> = {};
  for (const { account, amount } of lines) found[account] = (found[account] ?? 0) + amount;
  return found;
}
