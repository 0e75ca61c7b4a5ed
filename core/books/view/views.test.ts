import { plainWriter } from "#core/words";
import { expect, test } from "vitest";
import { costDue, costPaid, duePaid } from "../money/cost-entries.ts";
import { cashFound, moneyMoved, ownPutIn } from "../money/till-entries.ts";
import { workDone } from "../money/work-entries.ts";
import { applyPassEvent } from "../pass/apply-pass-event.ts";
import { passEntries } from "../pass/pass-entries.ts";
import type { PassEvent } from "../pass/pass-event.ts";
import type { PassState } from "../pass/pass-state.ts";
import { placePaid, placeTaught } from "../place/place-entries.ts";
import { balanceOf, balances } from "../posting/balances.ts";
import type { Entry } from "../posting/entry.ts";
import { bookLines, sideOf } from "./book-line.ts";
import { cashBox, cashCount } from "./cash-count.ts";
import { cashView } from "./cash-view.ts";
import { earnedView } from "./earned-view.ts";
import { owedView } from "./owed-view.ts";
import { takingsOf } from "./takings.ts";
import { yearEnd } from "./year-end.ts";
import { bookRows, yearEndRows } from "./year-end-rows.ts";

const uk = plainWriter("en-GB");

// A pass of ten for 85.00 in cash on 31 March 2026; a class of it on 31 March and three after 5 April; one single of
// 10.00 by card; the hall's 27.00 due in March and paid in April; a studio class not yet paid; 20.00 of float.
const events: readonly PassEvent[] = [
  {
    kind: "sold",
    on: "2026-03-31",
    pass: "p1",
    form: "pass",
    holder: "person-1",
    name: "Ten classes",
    size: 10,
    price: 8500,
    currency: "GBP",
    paid: "cash",
    useBy: "2026-09-29",
    valid: "all",
    sessions: [],
    terms: { perClassOnRefund: 1000, transferable: false, pauses: null },
  },
  ...["2026-03-31", "2026-04-07", "2026-04-14", "2026-04-21"].map(
    (on): PassEvent => ({ kind: "used", on, session: `s.${on}`, class: "tuesday", why: "attended" }),
  ),
  { kind: "refunded", on: "2026-05-05", classes: 6, amount: 4500, how: "bank" },
];

function passBook(): readonly Entry[] {
  const book: Entry[] = [];
  let state: PassState | null = null;
  for (const event of events) {
    book.push(...passEntries(state, event));
    state = applyPassEvent(state, event);
  }
  return book;
}

const single = { place: "pl-1", heading: "single", currency: "GBP", price: 1000, paid: 0 } as const;
const hire = { cost: "hall", to: "tithe-barn", amount: 2700, currency: "GBP", on: "2026-03-31" } as const;
const rest: readonly Entry[] = [
  ownPutIn({ to: "cash", amount: 2000, currency: "GBP", on: "2026-03-31" }),
  placePaid(single, { amount: 1000, by: "card", on: "2026-03-31", taught: false }),
  placeTaught({ ...single, paid: 1000 }, "2026-03-31"),
  costDue(hire),
  costPaid({ ...hire, cost: "music", to: "shop", amount: 600 }, "cash"),
  workDone({ heading: "studio", invoice: "inv-7", amount: 3000, currency: "GBP", on: "2026-04-01" }),
  moneyMoved({ from: "cash", to: "bank", amount: 7000, fee: 0, currency: "GBP", on: "2026-03-31" }),
  moneyMoved({ from: "card", to: "bank", amount: 1000, fee: 20, currency: "GBP", on: "2026-04-02" }),
  duePaid({ ...hire, on: "2026-04-10" }, "bank"),
  cashFound({ difference: -50, currency: "GBP", on: "2026-04-21" }),
];
const book = [...passBook(), ...rest];
const lines = bookLines(book);

test("BOOKS-40 the cash view is money when it moved, by day and month and where it lay", () => {
  const { days, months } = cashView(lines, "GBP");
  expect(days.filter(({ when }) => when === "2026-03-31")).toEqual([
    // 70.00 brought from the box to the bank
    { when: "2026-03-31", means: "bank", in: 7000, out: 0 },
    { when: "2026-03-31", means: "card", in: 1000, out: 0 },
    // 85.00 + 20.00 in; 6.00 + 70.00 out
    { when: "2026-03-31", means: "cash", in: 10_500, out: 7600 },
  ]);
  expect(months.map(({ when, means, in: into, out }) => [when, means, into, out])).toEqual([
    ["2026-03", "bank", 7000, 0],
    ["2026-03", "card", 1000, 0],
    ["2026-03", "cash", 10_500, 7600],
    ["2026-04", "bank", 980, 2700],
    ["2026-04", "card", 0, 1000],
    ["2026-04", "cash", 0, 50],
    ["2026-05", "bank", 0, 4500],
  ]);
});

test("BOOKS-41 the earned view is income when it was taught and costs when they arose, leftovers on their own line", () => {
  const { months } = earnedView(lines, "GBP");
  expect(months).toEqual([
    {
      month: "2026-03",
      income: [
        { part: "earned", heading: "pass", amount: 850 },
        { part: "earned", heading: "single", amount: 1000 },
      ],
      costs: [
        { heading: "hall", amount: 2700 },
        { heading: "music", amount: 600 },
      ],
      // 18.50 − 33.00
      left: -1450,
    },
    {
      month: "2026-04",
      income: [
        { part: "earned", heading: "pass", amount: 2550 },
        { part: "earned", heading: "studio", amount: 3000 },
      ],
      costs: [{ heading: "fees", amount: 20 }],
      left: 5530,
    },
    {
      month: "2026-05",
      // 51.00 was owed and 45.00 went back
      income: [{ part: "kept", heading: "pass", amount: 600 }],
      costs: [],
      left: 600,
    },
  ]);
});

test("BOOKS-42 owed classes for each pass and in all, what is unpaid to her, and what she has yet to pay", () => {
  const atYearEnd = book.filter(({ date }) => date <= "2026-04-05");
  expect(owedView(balances(atYearEnd), "GBP")).toEqual({
    currency: "GBP",
    // 85.00 × 9 ÷ 10
    owed: [{ heading: "pass", id: "p1", amount: 7650, classes: 9 }],
    owedTotal: 7650,
    classesTotal: 9,
    unpaid: [{ heading: "studio", id: "inv-7", amount: 3000 }],
    unpaidTotal: 3000,
    due: [{ heading: "hall", to: "tithe-barn", amount: 2700 }],
    dueTotal: 2700,
  });
  expect(owedView(balances(book), "GBP")).toMatchObject({
    owed: [],
    owedTotal: 0,
    due: [],
    unpaidTotal: 3000,
  });
});

test("BOOKS-43 a day's takings by means; what is only moved, put in or spent is not taken", () => {
  expect(takingsOf(lines, "2026-03-31", "GBP")).toEqual({
    date: "2026-03-31",
    currency: "GBP",
    means: [
      { means: "cash", taken: 8500, givenBack: 0, paidOut: 600, moved: -5000 },
      { means: "card", taken: 1000, givenBack: 0, paidOut: 0, moved: 0 },
      { means: "bank", taken: 0, givenBack: 0, paidOut: 0, moved: 7000 },
    ],
    total: 9500,
  });
  // card takings on their way to the bank, less the fee: moved, and not paid out
  expect(takingsOf(lines, "2026-04-02", "GBP").means).toEqual([
    { means: "card", taken: 0, givenBack: 0, paidOut: 0, moved: -1000 },
    { means: "bank", taken: 0, givenBack: 0, paidOut: 0, moved: 980 },
  ]);
  expect(takingsOf(lines, "2026-05-05", "GBP")).toMatchObject({
    means: [{ means: "bank", givenBack: 4500 }],
    total: -4500,
  });
});

test("BOOKS-44 the box against the books: float + taken − paid out, and a difference is said", () => {
  const box = { float: 2000, taken: 4500, paidOut: 600, moved: 0, currency: "GBP" };
  expect(cashCount(box, 5900, uk)).toEqual({
    expected: 5900,
    difference: 0,
    sentence:
      "The box holds what it should: float 20.00 GBP + taken 45.00 GBP − paid out 6.00 GBP = 59.00 GBP.",
  });
  expect(cashCount(box, 5000, uk)).toEqual({
    expected: 5900,
    difference: -900,
    sentence:
      "The box holds 9.00 GBP less than it should: float 20.00 GBP + taken 45.00 GBP − paid out 6.00 GBP = 59.00 GBP. Perhaps change was given or something paid and not written down.",
  });
  expect(cashCount({ ...box, moved: -3000 }, 3900, uk).sentence).toBe(
    "The box holds 10.00 GBP more than it should: float 20.00 GBP + taken 45.00 GBP − paid out 6.00 GBP − taken to another place 30.00 GBP = 29.00 GBP. Perhaps something was taken and not written down.",
  );
});

test("BOOKS-44 the box of a day by the books begins with what the days before left in it", () => {
  // 31 March: 85.00 taken, 6.00 of music, 20.00 put in and 70.00 to the bank
  const march = { float: 0, taken: 8500, paidOut: 600, moved: -5000, currency: "GBP" };
  expect(cashBox(lines, "2026-03-31", "GBP")).toEqual(march);
  // 21 April: 29.00 were there; 0.50 was missing when it was counted
  const april = { float: 2900, taken: 0, paidOut: 0, moved: -50, currency: "GBP" };
  expect(cashBox(lines, "2026-04-21", "GBP")).toEqual(april);
  for (const date of ["2026-03-30", "2026-03-31", "2026-04-21", "2026-05-05"]) {
    const until = book.filter((it) => it.date <= date);
    expect(cashCount(cashBox(lines, date, "GBP"), 0, uk).expected).toBe(balanceOf(until, "cash", "GBP"));
  }
});

test("BOOKS-70 the tax year until 5 April counts the whole pass and no studio class; the next the refund and the hall", () => {
  const year = { from: "2025-04-06", until: "2026-04-05", currency: "GBP" };
  expect(yearEnd(lines, year)).toEqual({
    ...year,
    income: [
      { heading: "pass", amount: 8500 },
      { heading: "single", amount: 1000 },
    ],
    incomeTotal: 9500,
    costs: [
      { heading: "fees", amount: 20 },
      { heading: "music", amount: 600 },
    ],
    costsTotal: 620,
    cashDifferences: 0,
    own: 2000,
    left: 8880,
  });
  expect(yearEnd(lines, { from: "2026-04-06", until: "2027-04-05", currency: "GBP" })).toMatchObject({
    income: [{ heading: "pass", amount: -4500 }],
    costs: [{ heading: "hall", amount: 2700 }],
    cashDifferences: -50,
    left: -7250,
  });
});

function receivedIn(from: string, until: string): number {
  return yearEnd(lines, { from, until, currency: "GBP" }).incomeTotal;
}

test("BOOKS-70 both dates belong to the year", () => {
  expect(receivedIn("2026-03-31", "2026-03-31")).toBe(9500);
  expect(receivedIn("2026-04-01", "2026-05-04")).toBe(0);
  expect(receivedIn("2026-05-05", "2026-05-05")).toBe(-4500);
});

test("BOOKS-71 over all years the cash basis is the money in her hand, and what she put in herself", () => {
  const all = yearEnd(lines, { from: "2000-01-01", until: "2099-12-31", currency: "GBP" });
  const inHand = balances(book)
    .filter(({ account }) => ["cash", "card", "bank"].includes(account))
    .reduce((sum, { amount }) => sum + amount, 0);
  expect(all.left + all.own).toBe(inHand);
});

test("BOOKS-72 rows that a spreadsheet takes as they are: amounts as numbers, no text as a formula", () => {
  const year = yearEnd(lines, { from: "2025-04-06", until: "2026-04-05", currency: "GBP" });
  const then = owedView(balances(book.filter(({ date }) => date <= "2026-04-05")), "GBP");
  expect(yearEndRows(year, then)).toEqual([
    ["what", "heading", "amount in GBP"],
    ["received", "pass", "85.00"],
    ["received", "single", "10.00"],
    ["received", "all", "95.00"],
    ["paid", "fees", "0.20"],
    ["paid", "music", "6.00"],
    ["paid", "all", "6.20"],
    ["cash differences", "", "0.00"],
    ["left", "2025-04-06 until 2026-04-05", "88.80"],
    ["own money put in less taken out", "not income", "20.00"],
    ["owed in classes and places at the end", "for memory, not counted", "76.50"],
    ["unpaid to her at the end", "for memory, not counted", "30.00"],
    ["due from her at the end", "for memory, not counted", "27.00"],
  ]);
  const nasty = { date: "2026-11-25", action: "=1+1", account: "cash", commodity: "GBP", amount: -5 };
  expect(bookRows([nasty, { ...nasty, action: "a", account: "taken", commodity: "classes:p1" }])).toEqual([
    ["date", "action", "account", "commodity", "amount"],
    ["2026-11-25", "'=1+1", "cash", "GBP", "-0.05"],
    ["2026-11-25", "a", "taken", "classes:p1", "-5"],
  ]);
});

test("BOOKS-2 a view reads the accounts of the closed list and no other", () => {
  expect(sideOf("unpaid:studio:inv-7")).toEqual({
    side: "income",
    part: "unpaid",
    heading: "studio",
    id: "inv-7",
  });
  expect(() => sideOf("tea")).toThrow("not an account: tea");
});

test("BOOKS-40 BOOKS-70 two currencies stand in two views: a dollar is never added to a pound", () => {
  const grange = placePaid(
    { place: "pl-9", heading: "single", currency: "USD", price: 1800, paid: 0 },
    { amount: 1800, by: "cash", on: "2026-03-31", taught: false },
  );
  const both = bookLines([...book, grange]);
  const calendarYear = { from: "2026-01-01", until: "2026-12-31" };
  expect(cashView(both, "GBP").days).toEqual(cashView(lines, "GBP").days);
  expect(cashView(both, "USD").days).toEqual([{ when: "2026-03-31", means: "cash", in: 1800, out: 0 }]);
  expect(yearEnd(both, { ...calendarYear, currency: "USD" }).income).toEqual([
    { heading: "single", amount: 1800 },
  ]);
  expect(yearEnd(both, { ...calendarYear, currency: "GBP" })).toEqual(
    yearEnd(lines, { ...calendarYear, currency: "GBP" }),
  );
  expect(owedView(balances([...book, grange]), "USD").owedTotal).toBe(1800);
  expect(takingsOf(both, "2026-03-31", "USD").total).toBe(1800);
});
