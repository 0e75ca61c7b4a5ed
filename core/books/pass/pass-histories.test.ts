import { owedOn } from "#core/price";
import { minor, plainWriter } from "#core/words";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { balanceOf, balances } from "../posting/balances.ts";
import type { Entry } from "../posting/entry.ts";
import { isBalanced } from "../posting/is-balanced.ts";
import { bookLines } from "../view/book-line.ts";
import { earnedView } from "../view/earned-view.ts";
import { owedView } from "../view/owed-view.ts";
import { yearEnd } from "../view/year-end.ts";
import { applyPassEvent } from "./apply-pass-event.ts";
import { passAfter } from "./pass-after.ts";
import { passEntries } from "./pass-entries.ts";
import type { PassEvent, PassSold } from "./pass-event.ts";
import { passProblem } from "./pass-problem.ts";
import { freeOf, type PassState } from "./pass-state.ts";
import { refundOf } from "./refund-of.ts";
import { shareOf } from "./share-of.ts";

const uk = plainWriter("en-GB");

// dates of one winter, wanted and unwanted events alike: the guard picks those that may be
const date = fc.integer({ min: 1, max: 28 }).map((day) => `2026-11-${String(day).padStart(2, "0")}`);
const session = fc.constantFrom("s1", "s2", "s3", "s4", "s5", "s6", "s7");
const how = fc.constantFrom("cash" as const, "card" as const, "bank" as const);
const taught = fc.constantFrom("tuesday", "saturday");
const amount = fc.integer({ min: 0, max: 9000 });

const sale: fc.Arbitrary<PassSold> = fc.record({
  kind: fc.constant("sold" as const),
  on: fc.constant("2026-11-01"),
  pass: fc.constant("p1"),
  form: fc.constant("pass" as const),
  holder: fc.constant("person-1"),
  name: fc.constant("Some classes"),
  size: fc.integer({ min: 1, max: 12 }),
  price: amount,
  currency: fc.constantFrom("GBP", "USD", "JPY"),
  paid: fc.constantFrom("cash" as const, "later" as const),
  useBy: date,
  valid: fc.constantFrom("all" as const, ["tuesday"]),
  sessions: fc.constant([]),
  terms: fc.record({
    perClassOnRefund: fc.option(fc.integer({ min: 0, max: 2000 }), { nil: null }),
    transferable: fc.boolean(),
    pauses: fc.option(fc.nat(2), { nil: null }),
  }),
});
const blockSale = sale.map((it): PassSold => {
  const sessions = ["s1", "s2", "s3", "s4", "s5", "s6"].slice(0, Math.min(it.size, 6));
  return { ...it, form: "block", size: sessions.length, sessions };
});

const meeting = { on: date, session, class: taught };
const later: fc.Arbitrary<PassEvent> = fc.oneof(
  fc.record({ kind: fc.constant("promised" as const), ...meeting }),
  fc.record({ kind: fc.constant("freed" as const), on: date, session }),
  fc.record({ kind: fc.constant("used" as const), ...meeting, why: fc.constant("attended" as const) }),
  fc.record({
    kind: fc.constant("returned" as const),
    on: date,
    session,
    why: fc.constant("mistake" as const),
  }),
  fc.record({ kind: fc.constant("swapped" as const), on: date, from: session, to: session }),
  fc.record({ kind: fc.constant("paid" as const), on: date, amount, how }),
  fc.record({ kind: fc.constant("paused" as const), on: date, from: date }),
  fc.record({ kind: fc.constant("resumed" as const), on: date, useBy: date }),
  fc.record({
    kind: fc.constant("extended" as const),
    on: date,
    useBy: date,
    why: fc.constant("kindness" as const),
  }),
  fc.record({
    kind: fc.constant("transferred" as const),
    on: date,
    to: fc.constantFrom("person-1", "person-2"),
  }),
  fc.record({
    kind: fc.constant("refunded" as const),
    on: date,
    classes: fc.integer({ min: 1, max: 3 }),
    amount,
    how,
    sessions: fc.uniqueArray(session, { maxLength: 2 }),
  }),
  fc.record({ kind: fc.constant("expired" as const), on: date, classes: fc.integer({ min: 1, max: 6 }) }),
);

const history = fc.tuple(fc.oneof(sale, blockSale), fc.array(later, { maxLength: 40 }));

type Lived = {
  readonly state: PassState;
  readonly events: readonly PassEvent[];
  readonly book: readonly Entry[];
};

/** What of a drawn history the guard lets happen, and what it writes; an event that throws fails the test. */
function lived(sold: PassSold, drawn: readonly PassEvent[]): Lived | null {
  if (passProblem(null, sold, uk) !== null) return null;
  let state = applyPassEvent(null, sold);
  const events: PassEvent[] = [sold];
  const book: Entry[] = [...passEntries(null, sold)];
  for (const event of drawn) {
    if (passProblem(state, event, uk) !== null) continue;
    book.push(...passEntries(state, event));
    state = applyPassEvent(state, event);
    events.push(event);
  }
  return { state, events, book };
}

function eachHistory(check: (it: Lived) => void): readonly string[] {
  const kinds = new Set<string>();
  fc.assert(
    fc.property(history, ([sold, drawn]) => {
      const it = lived(sold, drawn);
      fc.pre(it !== null);
      if (it === null) return;
      for (const { kind } of it.events) kinds.add(kind);
      check(it);
    }),
    { numRuns: 600 },
  );
  return [...kinds];
}

test("BOOKS-10 BOOKS-15 whatever the guard lets through applies, and leaves a pass that can be", () => {
  const kinds = eachHistory(({ state }) => {
    expect(state.left).toBe(state.size - state.used.length - state.refunded - state.expired);
    expect(state.left).toBeGreaterThanOrEqual(0);
    expect(freeOf(state)).toBeGreaterThanOrEqual(0);
    expect(new Set(state.used.map((use) => use.session)).size).toBe(state.used.length);
    expect(state.unpaid).toBeGreaterThanOrEqual(0);
    expect(state.paidBack).toBeLessThanOrEqual(state.price - state.letGo);
  });
  // every kind of event really happened in some history
  expect(kinds).toHaveLength(13);
});

test("BOOKS-10 the events kept as text and read again give the same pass", () => {
  eachHistory(({ state, events }) => {
    expect(passAfter(JSON.parse(JSON.stringify(events)))).toEqual(state);
    expect(JSON.parse(JSON.stringify(state))).toEqual(state);
  });
});

test("BOOKS-1 BOOKS-12 every entry balances, and what lies in the accounts is what the pass says", () => {
  eachHistory(({ state, book }) => {
    for (const it of book) expect(isBalanced(it)).toBe(true);
    const { pass, form, holder, currency } = state;
    const classes = `classes:${pass}`;
    expect(balanceOf(book, `left:${holder}`, classes)).toBe(state.left);
    expect(balanceOf(book, "taken", classes)).toBe(state.used.length);
    expect(balanceOf(book, "lapsed", classes)).toBe(state.expired);
    expect(balanceOf(book, "given-back", classes)).toBe(state.refunded);
    expect(balanceOf(book, `unpaid:${form}:${pass}`, currency)).toBe(state.unpaid);
    const means = ["cash", "card", "bank"].map((account) => balanceOf(book, account, currency));
    expect(means.reduce((sum, it) => sum + it, 0)).toBe(
      state.price - state.unpaid - state.letGo - state.paidBack,
    );
  });
});

test("BOOKS-11 the debt on a pass is nothing once all its classes are gone, whatever the order", () => {
  let gone = 0;
  eachHistory(({ state, book }) => {
    const owed = 0 - balanceOf(book, `owed:${state.form}:${state.pass}`, state.currency);
    expect(owed).toBeGreaterThanOrEqual(0);
    if (state.left > 0) return;
    gone += 1;
    expect(owed).toBe(0);
  });
  expect(gone).toBeGreaterThan(20);
});

test("BOOKS-11 the shares of any price in any number of classes add to the price and differ by a coin at most", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 10_000_000 }), fc.integer({ min: 1, max: 200 }), (price, size) => {
      const shares = Array.from({ length: size }, (_, index) => shareOf(price, size, index + 1));
      expect(shares.reduce((sum, it) => sum + it, 0)).toBe(price);
      expect(Math.max(...shares) - Math.min(...shares)).toBeLessThanOrEqual(1);
    }),
  );
});

test("BOOKS-33 what a refund suggests may always be given, and empties the pass", () => {
  let given = 0;
  eachHistory(({ state }) => {
    if (state.form === "block" || freeOf(state) < 1) return;
    const classes = freeOf(state);
    const { suggested } = refundOf(state, { classes, on: "2026-11-28" }, uk);
    const event: PassEvent = {
      kind: "refunded",
      on: "2026-11-28",
      classes,
      amount: suggested.amount,
      how: "bank",
    };
    expect(passProblem(state, event, uk)).toBe(null);
    const after = applyPassEvent(state, event);
    expect(after.paidBack - state.paidBack).toBe(suggested.paidOut);
    given += 1;
  });
  expect(given).toBeGreaterThan(50);
});

test("BOOKS-71 in any history the cash basis by heading is the money in hand, and earned and owed make up the rest", () => {
  eachHistory(({ state, book }) => {
    const { currency, form } = state;
    const year = yearEnd(bookLines(book), { from: "2026-11-01", until: "2026-11-30", currency });
    const inHand = ["cash", "card", "bank"].map((account) => balanceOf(book, account, currency));
    expect(year.incomeTotal).toBe(inHand.reduce((sum, it) => sum + it, 0));
    const earned = earnedView(bookLines(book), currency).months.reduce((sum, { left }) => sum + left, 0);
    const { owedTotal, unpaidTotal, classesTotal } = owedView(balances(book), currency);
    // what came in + what is still to come in = what was earned + what is still owed
    expect(year.incomeTotal + unpaidTotal).toBe(earned + owedTotal);
    expect(classesTotal).toBe(balanceOf(book, `owed:${form}:p1`, currency) === 0 ? 0 : state.left);
  });
});

test("BOOKS-42 the debt in whole coins is the exact price × left ÷ classes, rounded once", () => {
  eachHistory(({ state, book }) => {
    const owed = 0 - balanceOf(book, `owed:${state.form}:p1`, state.currency);
    const exact = owedOn({ price: minor(state.price), classes: state.size, left: state.left });
    expect(exact.sub(owed).abs().compare("1/2")).toBeLessThanOrEqual(0);
  });
});
