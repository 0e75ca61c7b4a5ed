import { expect, test } from "vitest";
import { balances } from "../posting/balances.ts";
import { costDue, costLetGo, costPaid, duePaid } from "./cost-entries.ts";
import { cashFound, moneyMoved, ownPutIn, ownTakenOut } from "./till-entries.ts";
import { workDone, workPaid } from "./work-entries.ts";

const hire = { cost: "hall", to: "tithe-barn", amount: 2700, currency: "GBP", on: "2026-11-25" } as const;

test("BOOKS-60 a hire is a cost when it is owed and money when it is paid; let go it was never there", () => {
  expect(balances([costDue(hire)])).toEqual([
    { account: "cost:hall", commodity: "GBP", amount: 2700 },
    { account: "due:hall:tithe-barn", commodity: "GBP", amount: -2700 },
  ]);
  expect(balances([costDue(hire), duePaid(hire, "bank")])).toEqual([
    { account: "bank", commodity: "GBP", amount: -2700 },
    { account: "cost:hall", commodity: "GBP", amount: 2700 },
  ]);
  expect(balances([costDue(hire), costLetGo(hire)])).toEqual([]);
  expect(costDue({ ...hire, session: "s1" }).about).toEqual({
    what: "hall due",
    hall: "tithe-barn",
    session: "s1",
  });
  expect(() => costDue({ ...hire, amount: 0 })).toThrow("a cost of 0");
});

test("BOOKS-60 what is bought and paid at once goes straight out", () => {
  const candles = { cost: "kit", to: "shop", amount: 650, currency: "GBP", on: "2026-11-25" } as const;
  expect(balances([costPaid(candles, "cash")])).toEqual([
    { account: "cash", commodity: "GBP", amount: -650 },
    { account: "cost:kit", commodity: "GBP", amount: 650 },
  ]);
});

test("BOOKS-61 work for a studio is earned when it is taught and stands unpaid until the studio pays", () => {
  const work = {
    heading: "studio",
    invoice: "inv-7",
    amount: 3000,
    currency: "USD",
    on: "2026-11-25",
  } as const;
  expect(balances([workDone(work)])).toEqual([
    { account: "earned:studio", commodity: "USD", amount: -3000 },
    { account: "unpaid:studio:inv-7", commodity: "USD", amount: 3000 },
  ]);
  expect(balances([workDone(work), workPaid(work, "bank")])).toEqual([
    { account: "bank", commodity: "USD", amount: 3000 },
    { account: "earned:studio", commodity: "USD", amount: -3000 },
  ]);
});

test("BOOKS-62 100.00 of card takings arrive as 98.25, and the 1.75 kept on the way is a cost", () => {
  const paidOut = {
    from: "card",
    to: "bank",
    amount: 10_000,
    fee: 175,
    currency: "GBP",
    on: "2026-11-27",
  } as const;
  expect(balances([moneyMoved(paidOut)])).toEqual([
    { account: "bank", commodity: "GBP", amount: 9825 },
    { account: "card", commodity: "GBP", amount: -10_000 },
    { account: "cost:fees", commodity: "GBP", amount: 175 },
  ]);
  expect(() => moneyMoved({ ...paidOut, to: "card" })).toThrow("card to itself");
});

test("BOOKS-62 her own money in and out is neither income nor cost, and a count is written as it came out", () => {
  const own = { amount: 2000, currency: "GBP", on: "2026-11-25" } as const;
  const book = [
    ownPutIn({ ...own, to: "cash" }),
    ownTakenOut({ ...own, amount: 500, from: "cash" }),
    cashFound({ difference: -150, currency: "GBP", on: "2026-11-25" }),
  ];
  expect(balances(book)).toEqual([
    { account: "cash", commodity: "GBP", amount: 1350 },
    { account: "difference:cash", commodity: "GBP", amount: 150 },
    { account: "own:put-in", commodity: "GBP", amount: -2000 },
    { account: "own:taken-out", commodity: "GBP", amount: 500 },
  ]);
});
