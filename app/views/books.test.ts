import {
  bookLines,
  cashFound,
  costDue,
  duePaid,
  type Entry,
  moneyMoved,
  ownPutIn,
  passAfter,
  passEntries,
  type PassEvent,
  placePaid,
  placeTaught,
  workDone,
} from "#core/books";
import { plainWriter } from "#core/words";
import { expect, test } from "vitest";
import { booksAnswer } from "./books-answer.ts";
import { booksCash, cashLines } from "./books-cash.ts";
import { booksEarned, earnedLines } from "./books-earned.ts";
import type { BooksInput, BooksLine } from "./books-input.ts";
import { balancesAfter, booksOwed } from "./books-owed.ts";
import { booksTakings } from "./books-takings.ts";
import { taxYearAround } from "./books-tax-year.ts";
import { booksYearEnd } from "./books-year-end.ts";

const GBP = { currency: "GBP" } as const;
const session = "tuesday.2026-11-10";

const sold: PassEvent = {
  kind: "sold",
  pass: "p7",
  form: "pass",
  name: "Pass of 10",
  holder: "ana",
  size: 10,
  price: 8500,
  currency: "GBP",
  paid: "cash",
  on: "2026-11-03",
  useBy: "2027-03-01",
  valid: ["tuesday"],
  sessions: [],
  terms: { perClassOnRefund: 1000, transferable: true, pauses: null },
};
const used: PassEvent = { kind: "used", on: "2026-11-10", session, class: "tuesday", why: "attended" };
const hall = { cost: "hall", to: "tithe-barn", amount: 2700, ...GBP } as const;
const place = { place: "pl-1", heading: "single", ...GBP, price: 1000, paid: 0 } as const;

/*
 * November: 20.00 of her own and 85.00 for a pass into the box, 50.00 from the box to the bank, 27.00 from the bank
 * for the hall. In hand: 20 + 85 − 50 = 55 in the box, 50 − 27 = 23 in the bank, 78.00 in all = 85 − 27 + 20.
 * Earned: one class of the pass 8.50, a single 10.00 that is unpaid, a studio's 30.00 that is unpaid: 48.50; the hall's
 * 27.00 off leaves 21.50. Owed: 9 classes, 76.50. December: the single's 10.00 is paid by card.
 */
const november: BooksInput = {
  ...GBP,
  from: "2026-04-06",
  until: "2027-04-05",
  before: [],
  earlier: [],
  lines: [
    ...kept("books", ownPutIn({ amount: 2000, ...GBP, on: "2026-11-01", to: "cash" })),
    ...kept("pass/p7", ...passEntries(null, sold)),
    ...kept(
      `session/${session}`,
      ...passEntries(passAfter([sold]), used),
      placeTaught(place, "2026-11-10"),
      costDue({ ...hall, on: "2026-11-10" }),
    ),
    ...kept(
      "books",
      moneyMoved({ from: "cash", to: "bank", amount: 5000, fee: 0, ...GBP, on: "2026-11-11" }),
    ),
    ...kept(
      "books",
      workDone({ heading: "studio", invoice: "inv-7", amount: 3000, ...GBP, on: "2026-11-12" }),
    ),
    ...kept("books", duePaid({ ...hall, on: "2026-11-30" }, "bank")),
  ],
  names: {
    pass: (id) => (id === "p7" ? { name: "Pass of 10", holder: "Ana Brook" } : undefined),
    place: (_, id) => (id === "pl-1" ? "Ben Hale" : null),
    session: (id) => (id === session ? { name: "Slow Tuesday", date: "2026-11-10" } : undefined),
    payee: (id) => (id === "tithe-barn" ? "Tithe Barn" : undefined),
  },
  locale: "en-GB",
  writer: plainWriter("en-GB"),
};

const paidInDecember: BooksInput = {
  ...november,
  lines: [
    ...november.lines,
    ...kept(
      `session/${session}`,
      placePaid(place, { amount: 1000, by: "card", on: "2026-12-01", taught: true }),
    ),
  ],
};

test("the answer says what came in, what was earned and what is owed in classes, and that the books balance", () => {
  const answer = booksAnswer(november, "2026-11-25");
  expect(answer.says).toEqual([
    "In November 2026 85.00 GBP came in for teaching and 27.00 GBP was paid for costs.",
    "48.50 GBP was earned by what was taught, and 27.00 GBP of costs arose.",
    "You owe 9 classes on passes and blocks; with places paid ahead that is 76.50 GBP in hand and not yet earned.",
  ]);
  expect(answer.balanced).toBe(true);
  expect(answer.check).toContain(`all ${november.lines.length} lines`);
});

test("books that somebody changed from outside are said not to balance", () => {
  const lines = november.lines.map((line, at) => (at === 0 ? { ...line, amount: line.amount + 1 } : line));
  expect(booksAnswer({ ...november, lines }, "2026-11-25").balanced).toBe(false);
});

test("the cash view's headings and its places come to the same change of money in hand", () => {
  const [month] = booksCash(november);
  expect(month?.says).toBe("November 2026: 85.00 GBP came in, 27.00 GBP was paid.");
  expect(month?.headings.map(({ label, amount }) => [label, amount])).toEqual([
    ["came in for passes", "85.00 GBP"],
    ["paid for hall hire", "−27.00 GBP"],
    ["your own money put in less taken out", "20.00 GBP"],
    ["change of the money in hand", "78.00 GBP"],
  ]);
  expect(month?.places).toEqual([
    { where: "in the bank", in: "50.00 GBP", out: "27.00 GBP", change: "23.00 GBP" },
    { where: "in the cash box", in: "105.00 GBP", out: "50.00 GBP", change: "55.00 GBP" },
  ]);
});

test("each movement of a month is a line with what it was for and whose it was", () => {
  expect(cashLines(november, "2026-11").map(({ what, person, amount }) => [what, person, amount])).toEqual([
    ["your own money", null, "20.00 GBP"],
    ["pass, Pass of 10", "Ana Brook", "85.00 GBP"],
    ["moved from one place to another", null, "−50.00 GBP"],
    ["moved from one place to another", null, "50.00 GBP"],
    ["hall hire, Tithe Barn", null, "−27.00 GBP"],
  ]);
});

test("the earned view counts what was taught and what arose, whenever it is paid", () => {
  const months = booksEarned(paidInDecember);
  // December's 10.00 is money, not income: it was earned in November
  expect(months.map(({ says }) => says)).toEqual([
    "November 2026: 48.50 GBP earned, 27.00 GBP of costs, 21.50 GBP left.",
  ]);
  const lines = earnedLines(paidInDecember, "2026-11");
  expect(lines.map(({ what, person, amount }) => [what, person, amount])).toEqual([
    ["pass, Pass of 10", "Ana Brook", "8.50 GBP"],
    ["single place, Slow Tuesday", "Ben Hale", "10.00 GBP"],
    ["hall hire, Tithe Barn", null, "−27.00 GBP"],
    ["class for a studio, inv 7", null, "30.00 GBP"],
  ]);
});

test("who owes what: a debt in classes, a place and an invoice unpaid with how each is settled, nothing left to pay", () => {
  const found = booksOwed(november);
  expect(found.owed).toEqual([
    { id: "p7", what: "Pass of 10", person: "Ana Brook", classes: 9, amount: 7650 },
  ]);
  expect(found.unpaid).toEqual([
    {
      id: "pl-1",
      what: "Slow Tuesday, Tuesday 10 November 2026",
      person: "Ben Hale",
      amount: 1000,
      settle: { kind: "place", session, place: "pl-1" },
    },
    {
      id: "inv-7",
      what: "class for a studio, inv-7",
      person: null,
      amount: 3000,
      settle: { kind: "work", heading: "studio", invoice: "inv-7" },
    },
  ]);
  expect(found.due).toEqual([]);
  expect(booksOwed(paidInDecember).unpaidTotal).toBe(3000);
});

test("a year later what was there before is still owed, and the line that tells whose place was unpaid is found", () => {
  const later = {
    ...november,
    from: "2027-04-06",
    until: "2028-04-05",
    before: balancesAfter(november),
    lines: [],
  };
  const found = booksOwed(later);
  expect([found.owedTotal, found.unpaidTotal]).toEqual([7650, 4000]);
  expect(found.unpaid[0]).toMatchObject({ id: "pl-1", person: null, settle: null });
  const earlier = november.lines.filter(({ account }) => account.startsWith("unpaid:single:"));
  expect(booksOwed({ ...later, earlier }).unpaid[0]).toMatchObject({
    person: "Ben Hale",
    settle: { session },
  });
});

test("a day's takings leave out what only changed its place, and the box should hold the books' cash", () => {
  const day = { ...november, lines: november.lines.filter(({ date }) => date === "2026-11-11") };
  const before = balancesAfter({
    before: [],
    lines: november.lines.filter(({ date }) => date < "2026-11-11"),
  });
  const found = booksTakings({ ...day, before }, "2026-11-11");
  // the day before 20.00 + 85.00 in the box; 50.00 went to the bank
  expect(found.box).toMatchObject({ float: 10_500, taken: 0, moved: -5000 });
  expect(found.rows.map(({ where, moved }) => [where, moved])).toEqual([
    ["in the cash box", "−50.00 GBP"],
    ["in the bank", "50.00 GBP"],
  ]);
  expect(found.says).toBe("0.00 GBP was taken on Wednesday 11 November 2026, less what was given back.");
});

test("the tax year counts money only, with owed and unpaid for memory and the trading allowance beside the costs", () => {
  const found = booksYearEnd(november);
  expect(found.says).toBe(
    "From 6 April 2026 until 5 April 2027 85.00 GBP was received and 27.00 GBP was paid: 58.00 GBP is left.",
  );
  expect(found.memory.map(({ amount }) => amount)).toEqual([
    "76.50 GBP",
    "40.00 GBP",
    "0.00 GBP",
    "20.00 GBP",
  ]);
  // 85.00 − 27.00 = 58.00 by the costs; the allowance of 1,000.00 never makes a loss: 85.00 − 85.00
  expect(found.beside?.lines.map(({ sum, amount }) => [sum, amount])).toEqual([
    ["85.00 GBP − 27.00 GBP", "58.00 GBP"],
    ["85.00 GBP − 85.00 GBP in place of all costs", "0.00 GBP"],
  ]);
});

test("what was missing from the cash box is said with the year and is part of what is left", () => {
  const count = cashFound({ difference: -250, ...GBP, on: "2026-11-20" });
  const found = booksYearEnd({ ...november, lines: [...november.lines, ...kept("books", count)] });
  // 85.00 − 27.00 − 2.50 = 55.50
  expect(found.says).toContain(
    "85.00 GBP was received, 27.00 GBP was paid and 2.50 GBP was missing from the cash box: 55.50 GBP is left.",
  );
});

test("a calendar year in dollars has no trading allowance beside it", () => {
  const lines = november.lines.map((it) => (it.commodity === "GBP" ? { ...it, commodity: "USD" } : it));
  const us = { ...november, lines, currency: "USD", from: "2026-01-01", until: "2026-12-31" };
  expect(booksYearEnd(us).beside).toBeNull();
  expect(booksYearEnd(us).year.left).toBe(5800);
});

/** Entries as the record keeps them, each action by itself. */
function kept(about: string, ...entries: readonly Entry[]): readonly BooksLine[] {
  const action = `${about} ${entries[0]?.date ?? ""}`;
  return bookLines(entries).map((line) => ({ ...line, action, about }));
}

test("a tax year in pounds begins on 6 April, in dollars on 1 January", () => {
  expect(taxYearAround("2026-04-05", "GBP")).toEqual({ from: "2025-04-06", until: "2026-04-05" });
  expect(taxYearAround("2026-04-06", "GBP")).toEqual({ from: "2026-04-06", until: "2027-04-05" });
  expect(taxYearAround("2026-04-05", "USD")).toEqual({ from: "2026-01-01", until: "2026-12-31" });
});
