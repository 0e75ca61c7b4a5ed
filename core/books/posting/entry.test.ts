import { expect, test } from "vitest";
import { isClassAccount, isMoneyAccount } from "./account.ts";
import { balances } from "./balances.ts";
import { entry } from "./entry.ts";
import { isBalanced } from "./is-balanced.ts";
import { undone } from "./undone.ts";

const banked = entry(
  "2026-11-25",
  [
    { account: "cash", commodity: "GBP", amount: -5000 },
    { account: "bank", commodity: "GBP", amount: 5000 },
  ],
  { what: "takings banked" },
);

test("BOOKS-1 an entry that is out by a penny is refused, and the checker sees it as well", () => {
  const lines = [
    { account: "cash", commodity: "GBP", amount: -5000 },
    { account: "bank", commodity: "GBP", amount: 4999 },
  ] as const;
  expect(() => entry("2026-11-25", lines, { what: "takings banked" })).toThrow("out by -1 GBP");
  expect(isBalanced({ lines })).toBe(false);
  expect(isBalanced(banked)).toBe(true);
});

test("BOOKS-1 each commodity balances by itself: a class is no penny", () => {
  const lines = [
    { account: "cash", commodity: "GBP", amount: -1 },
    { account: "taken", commodity: "classes:p1", amount: 1 },
  ] as const;
  expect(() => entry("2026-11-25", lines, { what: "muddle" })).toThrow("out by");
  expect(isBalanced({ lines })).toBe(false);
});

test("BOOKS-1 half a penny is not an amount", () => {
  const lines = [
    { account: "cash", commodity: "GBP", amount: 0.5 },
    { account: "bank", commodity: "GBP", amount: -0.5 },
  ] as const;
  expect(() => entry("2026-11-25", lines, { what: "muddle" })).toThrow("not a whole amount");
  expect(isBalanced({ lines })).toBe(false);
});

test("BOOKS-2 money lies in money accounts and classes in class accounts", () => {
  const wrong = [
    { account: "taken", commodity: "GBP", amount: 1 },
    { account: "cash", commodity: "GBP", amount: -1 },
  ] as const;
  expect(() => entry("2026-11-25", wrong, { what: "muddle" })).toThrow("does not belong");
  expect(["owed:pass:p1", "unpaid:single:x-1", "due:hall:tithe-barn"].every(isMoneyAccount)).toBe(true);
  expect(["owed:pass", "owed:pass:", "owed:tea:p1", "Cash", "cash ", "left:a:b"].some(isMoneyAccount)).toBe(
    false,
  );
  expect(isClassAccount("left:person-1")).toBe(true);
  expect(isClassAccount("left:")).toBe(false);
});

test("BOOKS-3 an entry and the one that undoes it leave nothing", () => {
  const back = undone(banked, "2026-11-26");
  expect(balances([banked])).toHaveLength(2);
  expect(balances([banked, back])).toEqual([]);
  expect(back).toMatchObject({ date: "2026-11-26", about: { what: "undone: takings banked" } });
});
