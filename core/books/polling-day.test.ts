// A Thursday on which the hall is a polling station. 14 are booked: 9 on passes of ten at 85.00, 3 on a block of
// six for 54.00, 2 singles at 10.00 paid ahead; the hire is 27.00.
import { plainWriter } from "#core/words";
import { expect, test } from "vitest";
import { costDue, costLetGo } from "./money/cost-entries.ts";
import { applyPassEvent } from "./pass/apply-pass-event.ts";
import { movedByClosure } from "./pass/moved-by-closure.ts";
import { passAfter } from "./pass/pass-after.ts";
import { passEntries } from "./pass/pass-entries.ts";
import type { PassEvent, PassSold } from "./pass/pass-event.ts";
import { passProblem } from "./pass/pass-problem.ts";
import { freeOf, type PassState } from "./pass/pass-state.ts";
import { refundOf } from "./pass/refund-of.ts";
import { moveUseBy } from "./pass/use-by.ts";
import { placeGivenBack, placePaid } from "./place/place-entries.ts";
import { balanceOf, balances } from "./posting/balances.ts";
import type { Entry } from "./posting/entry.ts";
import { isBalanced } from "./posting/is-balanced.ts";
import { bookLines } from "./view/book-line.ts";
import { owedView } from "./view/owed-view.ts";
import { takingsOf } from "./view/takings.ts";

const uk = plainWriter("en-GB");
const closed = { session: "thursday.2027-05-06", class: "thursday", date: "2027-05-06" };
const told = "2027-04-24";
// 6 May is no teaching date any more
const thursdays = ["2027-04-29", "2027-05-13", "2027-05-20", "2027-05-27", "2027-06-03", "2027-06-10"];

const terms = { perClassOnRefund: null, transferable: false, pauses: null };

function pass(holder: number): readonly PassEvent[] {
  const sold: PassSold = {
    kind: "sold",
    on: "2027-03-04",
    pass: `p${holder}`,
    form: "pass",
    holder: `person-${holder}`,
    name: "Ten classes",
    size: 10,
    price: 8500,
    currency: "GBP",
    paid: "bank",
    useBy: "2027-06-03",
    valid: "all",
    sessions: [],
    terms,
  };
  return [sold, { kind: "promised", on: closed.date, session: closed.session, class: closed.class }];
}

function block(holder: number): readonly PassEvent[] {
  const sessions = ["2027-04-15", "2027-04-22", "2027-04-29", "2027-05-06", "2027-05-13", "2027-05-20"].map(
    (date) => `thursday.${date}`,
  );
  const [sold] = pass(holder);
  if (sold?.kind !== "sold") throw new Error("no sale");
  return [{ ...sold, pass: `b${holder}`, form: "block", size: 6, price: 5400, sessions }];
}

function booked(events: readonly PassEvent[]): { state: PassState; book: readonly Entry[] } {
  const book: Entry[] = [];
  let state: PassState | null = null;
  for (const event of events) {
    book.push(...passEntries(state, event));
    state = applyPassEvent(state, event);
  }
  return { state: passAfter(events), book };
}

const passes = Array.from({ length: 9 }, (_, index) => booked(pass(index + 1)));
const blocks = Array.from({ length: 3 }, (_, index) => booked(block(index + 10)));
const singles = ["pl-13", "pl-14"].map((place) => ({
  place,
  heading: "single" as const,
  currency: "GBP",
  price: 1000,
  paid: 0,
}));
const hire = {
  cost: "hall",
  to: "mission-room",
  amount: 2700,
  currency: "GBP",
  on: told,
  session: closed.session,
} as const;

const before: readonly Entry[] = [
  ...passes.flatMap(({ book }) => book),
  ...blocks.flatMap(({ book }) => book),
  ...singles.map((it) => placePaid(it, { amount: 1000, by: "cash", on: "2027-04-20", taught: false })),
  costDue({ ...hire, on: "2027-04-20" }),
];

function shareBack(state: PassState): PassEvent {
  const { suggested } = refundOf(state, { classes: 1, on: told }, uk);
  return {
    kind: "refunded",
    on: told,
    classes: 1,
    amount: suggested.amount,
    how: "bank",
    sessions: [closed.session],
  };
}

test("BOOKS-21 BOOKS-16 nine on passes are not charged: their class is free again, their use-by one teaching date later", () => {
  for (const { state } of passes) {
    expect(movedByClosure(state, closed)).toBe(true);
    const { date, guessed } = moveUseBy(state.useBy, thursdays, 1);
    const events: readonly PassEvent[] = [
      { kind: "freed", on: told, session: closed.session },
      { kind: "extended", on: told, useBy: date, why: "closure", session: closed.session },
    ];
    let after = state;
    for (const event of events) {
      expect(passProblem(after, event, uk)).toBe(null);
      expect(passEntries(after, event)).toEqual([]);
      after = applyPassEvent(after, event);
    }
    expect([after.left, freeOf(after), after.useBy, guessed]).toEqual([10, 10, "2027-06-10", 0]);
  }
});

test("BOOKS-32 three on a block of six for 54.00 get another date, or 9.00 each", () => {
  for (const { state } of blocks) {
    expect(movedByClosure(state, closed)).toBe(false);
    const money = shareBack(state);
    expect(money).toMatchObject({ amount: 900 });
    expect(passProblem(state, money, uk)).toBe(null);
    const swap: PassEvent = {
      kind: "swapped",
      on: told,
      from: closed.session,
      to: "thursday.2027-05-27",
    };
    expect(passProblem(state, swap, uk)).toBe(null);
    expect(applyPassEvent(state, swap).sessions.at(3)).toBe("thursday.2027-05-27");
  }
});

test("BOOKS-52 BOOKS-60 27.00 of hire is let go, 20.00 of singles and three times 9.00 go back, and all of it balances", () => {
  const after: readonly Entry[] = [
    ...blocks.flatMap(({ state }) => passEntries(state, shareBack(state))),
    ...singles.map((it) => placeGivenBack({ ...it, paid: 1000 }, { amount: 1000, by: "cash", on: told })),
    costLetGo(hire),
  ];
  const book = [...before, ...after];
  expect(isBalanced({ lines: book.flatMap(({ lines }) => lines) })).toBe(true);
  // nothing was taught, so nothing is earned, spent or kept
  const money = balances(book).filter(({ commodity }) => commodity === "GBP");
  expect(money.filter(({ account }) => /^(earned|cost|kept|goodwill|due)/.test(account))).toEqual([]);
  const view = owedView(balances(book), "GBP");
  // 9 × 85.00 + 3 × 45.00 = 900.00, in 9 × 10 + 3 × 5 = 105 classes
  expect([view.owedTotal, view.classesTotal, view.dueTotal]).toEqual([90_000, 105, 0]);
  expect(balanceOf(book, "cash", "GBP")).toBe(0);
  expect(takingsOf(bookLines(after), told, "GBP").means).toEqual([
    { means: "cash", taken: 0, givenBack: 2000, paidOut: 0, moved: 0 },
    { means: "bank", taken: 0, givenBack: 2700, paidOut: 0, moved: 0 },
  ]);
});
