import { expect, test } from "vitest";
import { balanceOf, balances } from "../posting/balances.ts";
import type { Entry } from "../posting/entry.ts";
import { isBalanced } from "../posting/is-balanced.ts";
import { applyPassEvent } from "./apply-pass-event.ts";
import { passAfter } from "./pass-after.ts";
import { freeOf } from "./pass-state.ts";
import { passEntries } from "./pass-entries.ts";
import type { PassEvent, PassSold } from "./pass-event.ts";
import type { PassState } from "./pass-state.ts";
import { shareOf } from "./share-of.ts";

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

function used(session: string, on = "2026-09-15"): PassEvent {
  return { kind: "used", on, session, class: "tuesday", why: "attended" };
}

function bookOf(events: readonly PassEvent[]): readonly Entry[] {
  const entries: Entry[] = [];
  let state: PassState | null = null;
  for (const event of events) {
    entries.push(...passEntries(state, event));
    state = applyPassEvent(state, event);
  }
  return entries;
}

function promise(session: string): PassEvent {
  return { kind: "promised", on: "2026-12-01", session, class: "tuesday" };
}

function back(amount: number): PassEvent {
  return { kind: "refunded", on: "2026-12-01", classes: 6, amount, how: "bank" };
}

const fourUsed = [tenPass, ...["s1", "s2", "s3", "s4"].map((session) => used(session))];

test("BOOKS-12 a pass of ten for 85.00 in cash is money in, a debt out, and ten classes to the holder", () => {
  const [sale] = bookOf([tenPass]);
  expect(sale).toEqual({
    date: "2026-09-08",
    about: { what: "pass sold", pass: "p1", person: "person-1" },
    lines: [
      { account: "cash", commodity: "GBP", amount: 8500 },
      { account: "owed:pass:p1", commodity: "GBP", amount: -8500 },
      { account: "issued", commodity: "classes:p1", amount: -10 },
      { account: "left:person-1", commodity: "classes:p1", amount: 10 },
    ],
  });
});

test("BOOKS-12 four classes taken earn 34.00 and leave 51.00 owed in six classes", () => {
  const book = bookOf(fourUsed);
  expect(balances(book)).toEqual([
    { account: "cash", commodity: "GBP", amount: 8500 },
    { account: "earned:pass", commodity: "GBP", amount: -3400 },
    { account: "issued", commodity: "classes:p1", amount: -10 },
    { account: "left:person-1", commodity: "classes:p1", amount: 6 },
    { account: "owed:pass:p1", commodity: "GBP", amount: -5100 },
    { account: "taken", commodity: "classes:p1", amount: 4 },
  ]);
  expect(passAfter(fourUsed)).toMatchObject({ left: 6, refunded: 0, expired: 0, unpaid: 0 });
});

test("BOOKS-11 25.00 in three shares is 8.33, 8.34 and 8.33", () => {
  // upTo: 8.33, 16.67, 25.00
  expect([1, 2, 3].map((k) => shareOf(2500, 3, k))).toEqual([833, 834, 833]);
  expect(() => shareOf(2500, 3, 4)).toThrow("shares up to 4 of 3");
});

test("BOOKS-11 a class that comes back brings its share back", () => {
  const events = [
    ...fourUsed,
    { kind: "returned", on: "2026-10-06", session: "s2", why: "mistake" } as const,
  ];
  const book = bookOf(events);
  expect(balanceOf(book, "earned:pass", "GBP")).toBe(-2550);
  expect(balanceOf(book, "left:person-1", "classes:p1")).toBe(7);
  expect(passAfter(events).used.map(({ session }) => session)).toEqual(["s1", "s3", "s4"]);
});

test("BOOKS-14 a refund of 45.00 where 51.00 is owed keeps 6.00 on a line of its own; 55.00 gives 4.00", () => {
  const written = bookOf([...fourUsed, back(4500)]);
  expect(balanceOf(written, "kept:pass", "GBP")).toBe(-600);
  expect(balanceOf(written, "bank", "GBP")).toBe(-4500);
  expect(balanceOf(written, "owed:pass:p1", "GBP")).toBe(0);
  const kind = bookOf([...fourUsed, back(5500)]);
  expect(balanceOf(kind, "goodwill:pass", "GBP")).toBe(400);
  expect(balanceOf(kind, "given-back", "classes:p1")).toBe(6);
});

test("BOOKS-13 a pass to be paid later is owed by the holder; giving it back lets that go first", () => {
  const events: readonly PassEvent[] = [
    { ...tenPass, paid: "later" },
    { kind: "paid", on: "2026-09-15", amount: 5000, how: "bank" },
    ...["s1", "s2", "s3", "s4"].map((session) => used(session)),
    { kind: "refunded", on: "2026-12-01", classes: 6, amount: 5100, how: "bank" },
  ];
  // 85.00 − 50.00 = 35.00 unpaid; of 51.00 back 35.00 is let go and 16.00 paid out: 50.00 − 16.00 = 34.00 for four classes
  const book = bookOf(events);
  expect(balanceOf(book, "unpaid:pass:p1", "GBP")).toBe(0);
  expect(balanceOf(book, "bank", "GBP")).toBe(3400);
  expect(balanceOf(book, "earned:pass", "GBP")).toBe(-3400);
  expect(passAfter(events)).toMatchObject({ unpaid: 0, paidBack: 1600, left: 0 });
});

test("BOOKS-14 classes that run out become income on a line of their own", () => {
  const book = bookOf([...fourUsed, { kind: "expired", on: "2027-01-27", classes: 6 }]);
  expect(balanceOf(book, "expired:pass", "GBP")).toBe(-5100);
  expect(balanceOf(book, "lapsed", "classes:p1")).toBe(6);
});

test("BOOKS-10 a pause, a new use-by and a swap write nothing into the books; a transfer moves the classes", () => {
  const quiet: readonly PassEvent[] = [
    { kind: "paused", on: "2026-10-06", from: "2026-10-13" },
    { kind: "resumed", on: "2027-01-12", useBy: "2027-03-30" },
    { kind: "extended", on: "2027-01-12", useBy: "2027-04-06", why: "closure", session: "s9" },
  ];
  expect(bookOf([...fourUsed, ...quiet])).toEqual(bookOf(fourUsed));
  const sister = bookOf([...fourUsed, { kind: "transferred", on: "2027-01-12", to: "person-2" }]);
  expect(balanceOf(sister, "left:person-1", "classes:p1")).toBe(0);
  expect(balanceOf(sister, "left:person-2", "classes:p1")).toBe(6);
  expect(isBalanced({ lines: sister.flatMap(({ lines }) => lines) })).toBe(true);
});

test("BOOKS-10 what cannot have happened throws: no sale first, a class off an empty pass, one not used coming back", () => {
  expect(() => passAfter([])).toThrow("begins with its sale");
  expect(() => passAfter([used("s1")])).toThrow("used before the sale");
  expect(() => passAfter([{ ...tenPass, size: 1 }, used("s1"), used("s2")])).toThrow("used leaves -1");
  expect(() =>
    passAfter([tenPass, { kind: "returned", on: "2026-09-15", session: "s1", why: "mistake" }]),
  ).toThrow("not used: s1");
});

test("BOOKS-16 no more classes are spoken for than are left, and the books hear nothing of it", () => {
  const two: readonly PassEvent[] = [{ ...tenPass, size: 2 }, promise("s1"), promise("s2")];
  expect(freeOf(passAfter(two))).toBe(0);
  expect(() => passAfter([...two, promise("s3")])).toThrow("nothing is free");
  expect(bookOf(two)).toEqual(bookOf(two.slice(0, 1)));
  // taken off on the day: one left, the other still spoken for; freed: it is there again
  expect(passAfter([...two, used("s1")])).toMatchObject({ left: 1, promised: [{ session: "s2" }] });
  expect(freeOf(passAfter([...two, used("s1"), { kind: "freed", on: "2026-12-01", session: "s2" }]))).toBe(1);
});

test("BOOKS-17 a later use-by brings classes back that had run out, and takes their income back", () => {
  const events: readonly PassEvent[] = [
    ...fourUsed,
    { kind: "expired", on: "2027-01-27", classes: 6 },
    { kind: "extended", on: "2027-01-30", useBy: "2027-02-16", why: "kindness" },
  ];
  const book = bookOf(events);
  expect(passAfter(events)).toMatchObject({ left: 6, expired: 0, useBy: "2027-02-16" });
  expect(balances(book)).toEqual(balances(bookOf(fourUsed)));
  // in January it was income, and on the 30th no longer: nothing is changed in place
  expect(balanceOf(book.slice(0, -1), "expired:pass", "GBP")).toBe(-5100);
});
