import { expect, test } from "vitest";
import * as fc from "fast-check";
import { balanceOf, balances } from "../posting/balances.ts";
import type { Entry } from "../posting/entry.ts";
import { isBalanced } from "../posting/is-balanced.ts";
import { undone } from "../posting/undone.ts";
import { placeGivenBack, placePaid, placeTaught } from "./place-entries.ts";

const single = { place: "pl-1", heading: "single", currency: "GBP", price: 1000, paid: 0 } as const;

test("ten pounds paid ahead are owed until the evening and then earned (BOOKS-50)", () => {
  const ahead = placePaid(single, { amount: 1000, by: "cash", on: "2026-11-20", taught: false });
  expect(balances([ahead])).toEqual([
    { account: "cash", commodity: "GBP", amount: 1000 },
    { account: "owed:single:pl-1", commodity: "GBP", amount: -1000 },
  ]);
  const taught = placeTaught({ ...single, paid: 1000 }, "2026-12-01");
  expect(balances([ahead, taught])).toEqual([
    { account: "cash", commodity: "GBP", amount: 1000 },
    { account: "earned:single", commodity: "GBP", amount: -1000 },
  ]);
});

test("taught before it is paid stands unpaid until the money comes (BOOKS-51)", () => {
  const taught = placeTaught(single, "2026-12-01");
  expect(balanceOf([taught], "unpaid:single:pl-1", "GBP")).toBe(1000);
  const paid = placePaid(single, { amount: 1000, by: "bank", on: "2026-12-03", taught: true });
  expect(balances([taught, paid])).toEqual([
    { account: "bank", commodity: "GBP", amount: 1000 },
    { account: "earned:single", commodity: "GBP", amount: -1000 },
  ]);
});

test("what was paid ahead can go back, and never more (BOOKS-52)", () => {
  const ahead = placePaid(single, { amount: 1000, by: "cash", on: "2026-11-20", taught: false });
  const paid = { ...single, paid: 1000 };
  const back = placeGivenBack(paid, { amount: 1000, by: "cash", on: "2026-11-21" });
  expect(balances([ahead, back])).toEqual([]);
  expect(() => placeGivenBack(paid, { amount: 1001, by: "cash", on: "2026-11-21" })).toThrow("of 1000 paid");
});

test("given back after the class, it is unpaid again, and what was paid too much goes first (BOOKS-52)", () => {
  const paid = { ...single, paid: 1200 };
  const ahead = placePaid(single, { amount: 1200, by: "cash", on: "2026-11-20", taught: false });
  const taught = placeTaught(paid, "2026-12-01");
  // 12.00 paid for 10.00: of 5.00 back 2.00 were too much, and 3.00 of the price are unpaid again
  const back = placeGivenBack(paid, { amount: 500, by: "cash", on: "2026-12-02", taught: true });
  expect(balances([ahead, taught, back])).toEqual([
    { account: "cash", commodity: "GBP", amount: 700 },
    { account: "earned:single", commodity: "GBP", amount: -1000 },
    { account: "unpaid:single:pl-1", commodity: "GBP", amount: 300 },
  ]);
});

test("any price paid in any two parts before and after the evening is earned once and balances (BOOKS-53)", () => {
  const pence = fc.nat(5000);
  fc.assert(
    fc.property(pence, pence, pence, fc.boolean(), (price, first, second, wrong) => {
      const unpaid = { ...single, price };
      const ahead = placePaid(unpaid, { amount: first, by: "cash", on: "2026-11-20", taught: false });
      const known = { ...unpaid, paid: first };
      const taught = placeTaught(known, "2026-12-01");
      // marked by mistake, taken back, and marked again
      const slips: readonly Entry[] = wrong ? [undone(taught, "2026-12-01"), taught] : [];
      const after = placePaid(known, { amount: second, by: "card", on: "2026-12-03", taught: true });
      const book = [ahead, taught, ...slips, after];
      expect(isBalanced({ lines: book.flatMap(({ lines }) => lines) })).toBe(true);
      expect(balanceOf(book, "earned:single", "GBP")).toBe(price === 0 ? 0 : -price);
      // what was paid too much is owed, what is missing is unpaid, never both
      const owed = 0 - balanceOf(book, "owed:single:pl-1", "GBP");
      const missing = balanceOf(book, "unpaid:single:pl-1", "GBP");
      expect(owed - missing).toBe(first + second - price);
      expect(Math.min(owed, missing)).toBe(0);
    }),
  );
});

type Doing = { readonly kind: "pay" | "back"; readonly amount: number } | { readonly kind: "mark" };

/** The books of one place after doings: what cannot be, like more back than came in, is passed over. */
function bookOf(price: number, doings: readonly Doing[]) {
  let [paid, taught] = [0, false];
  const book: Entry[] = [];
  for (const it of doings) {
    const known = { ...single, price, paid };
    if (it.kind === "mark") {
      book.push(
        taught ? undone(placeTaught(known, "2026-12-01"), "2026-12-01") : placeTaught(known, "2026-12-01"),
      );
      taught = !taught;
    } else if (it.kind === "pay") {
      book.push(placePaid(known, { amount: it.amount, by: "cash", on: "2026-12-01", taught }));
      paid += it.amount;
    } else if (it.amount <= paid) {
      book.push(placeGivenBack(known, { amount: it.amount, by: "cash", on: "2026-12-01", taught }));
      paid -= it.amount;
    }
  }
  return { book, paid, taught };
}

test("whatever is paid, given back, marked and unmarked, in any order, the place stands as its money says (BOOKS-53)", () => {
  const amount = fc.integer({ min: 1, max: 1500 });
  const doing: fc.Arbitrary<Doing> = fc.oneof(
    fc.record({ kind: fc.constantFrom("pay" as const, "back" as const), amount }),
    fc.record({ kind: fc.constant("mark" as const) }),
  );
  fc.assert(
    fc.property(fc.nat(2000), fc.array(doing, { maxLength: 12 }), (price, doings) => {
      const { book, paid, taught } = bookOf(price, doings);
      const earned = taught ? price : 0;
      expect(balanceOf(book, "cash", "GBP")).toBe(paid);
      expect(0 - balanceOf(book, "earned:single", "GBP")).toBe(earned);
      expect(0 - balanceOf(book, "owed:single:pl-1", "GBP")).toBe(Math.max(0, paid - earned));
      expect(balanceOf(book, "unpaid:single:pl-1", "GBP")).toBe(Math.max(0, earned - paid));
    }),
  );
});
