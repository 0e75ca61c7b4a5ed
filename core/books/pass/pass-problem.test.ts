import { plainWriter } from "#core/words";
import { expect, test } from "vitest";
import { passAfter } from "./pass-after.ts";
import type { PassEvent, PassSold } from "./pass-event.ts";
import { passProblem } from "./pass-problem.ts";
import type { PassState } from "./pass-state.ts";

const uk = plainWriter("en-GB");

const sold: PassSold = {
  kind: "sold",
  on: "2026-09-08",
  pass: "p1",
  form: "pass",
  holder: "person-1",
  name: "Three classes",
  size: 3,
  price: 2500,
  currency: "GBP",
  paid: "cash",
  useBy: "2026-11-03",
  valid: ["tuesday"],
  sessions: [],
  terms: { perClassOnRefund: null, transferable: false, pauses: 1 },
};

const block: PassSold = { ...sold, form: "block", sessions: ["s1", "s2", "s3"] };

const use = (session: string, on = "2026-09-15", taught = "tuesday"): PassEvent => ({
  kind: "used",
  on,
  session,
  class: taught,
  why: "attended",
});
const hold = (session: string, on = "2026-09-22"): PassEvent => ({
  kind: "promised",
  on,
  session,
  class: "tuesday",
});
const swap = (from: string, to: string): PassEvent => ({ kind: "swapped", on: "2026-09-16", from, to });
const pause: PassEvent = { kind: "paused", on: "2026-09-15", from: "2026-09-22" };
const refund: PassEvent = { kind: "refunded", on: "2026-10-01", classes: 1, amount: 833, how: "bank" };

function code(state: PassState | null, event: PassEvent): string {
  return passProblem(state, event, uk)?.code ?? "may be";
}

test("BOOKS-15 what may be sold, and what may not", () => {
  expect(code(null, sold)).toBe("may be");
  expect(code(passAfter([sold]), sold)).toBe("pass-sold-twice");
  expect(code(null, { ...sold, size: 0 })).toBe("pass-size-unlikely");
  expect(code(null, { ...block, sessions: ["s1", "s1", "s3"] })).toBe("pass-block-uneven");
  expect(code(null, { ...sold, currency: "ABC" })).toBe("pass-currency-unknown");
  expect(code(null, { ...sold, price: 25.5 })).toBe("pass-price-unlikely");
  expect(code(null, { ...sold, useBy: "2026-09-07" })).toBe("pass-use-by-before-sale");
  expect(code(null, use("s1"))).toBe("pass-unknown");
});

test("BOOKS-15 a class is taken off once for a session, of a class the pass is good for, while it runs", () => {
  const state = passAfter([sold, use("s1")]);
  expect(code(state, use("s2"))).toBe("may be");
  expect(code(state, use("s1"))).toBe("pass-twice-for-session");
  expect(code(state, use("s2", "2026-09-15", "saturday"))).toBe("pass-not-for-class");
  expect(code(state, use("s8", "2026-11-03"))).toBe("may be");
  expect(code(state, use("s9", "2026-11-04"))).toBe("pass-past-use-by");
  expect(code(passAfter([sold, use("s1"), use("s2"), use("s3")]), use("s4"))).toBe("pass-used-up");
  expect(code(passAfter([block]), use("s4"))).toBe("pass-not-for-session");
});

test("BOOKS-15 a paused pass takes nothing from the first day of the pause, and the evenings before it still count", () => {
  const state = passAfter([sold, pause]);
  expect(passProblem(state, use("s3", "2026-09-22"), uk)).toEqual({
    code: "pass-paused",
    place: "pass",
    says: "This pass is paused from Tuesday 22 September 2026.",
    next: "End the pause first; its use-by moves with it.",
  });
  expect(code(state, use("s2", "2026-09-15"))).toBe("may be");
});

test("BOOKS-15 BOOKS-16 what was spoken for in time may be taken off on its day; nobody else gets that class", () => {
  const all = passAfter([sold, hold("s1"), hold("s2"), hold("s3")]);
  expect(code(all, use("s1", "2026-09-22"))).toBe("may be");
  expect(code(all, use("s9"))).toBe("pass-used-up");
  expect(code(all, hold("s1"))).toBe("pass-twice-for-session");
  // its last day was moved nowhere, yet a place held before is honoured
  const over = { ...all, useBy: "2026-09-20" };
  expect(code(over, use("s1", "2026-09-22"))).toBe("may be");
  expect(code(all, { kind: "freed", on: "2026-09-20", session: "s1" })).toBe("may be");
});

test("BOOKS-15 pauses have an order and a number, and never cover a place that is held", () => {
  const state = passAfter([sold]);
  const resume: PassEvent = { kind: "resumed", on: "2026-10-06", useBy: "2026-11-17" };
  expect(code(state, pause)).toBe("may be");
  expect(code(state, resume)).toBe("pass-not-paused");
  const paused = passAfter([sold, pause]);
  expect(code(paused, pause)).toBe("pass-already-paused");
  expect(code(paused, { ...resume, on: "2026-09-20" })).toBe("pass-resumed-early");
  expect(code(paused, { ...resume, useBy: "2026-11-01" })).toBe("pass-use-by-not-later");
  expect(code(passAfter([sold, pause, resume]), { ...pause, from: "2026-10-13" })).toBe(
    "pass-pauses-used-up",
  );
  expect(code(state, { ...pause, from: "2026-11-10" })).toBe("pass-nothing-to-pause");
  expect(code(passAfter([sold, hold("s3")]), pause)).toBe("pass-held-in-pause");
});

test("BOOKS-15 money: no more is paid than is left to pay, no more given back than came in", () => {
  const state = passAfter([sold]);
  expect(code(state, { kind: "paid", on: "2026-09-15", amount: 1, how: "cash" })).toBe("pass-paid-too-much");
  const later = passAfter([{ ...sold, paid: "later" }]);
  expect(code(later, { kind: "paid", on: "2026-09-15", amount: 2500, how: "cash" })).toBe("may be");
  expect(code(later, { kind: "paid", on: "2026-09-15", amount: 2501, how: "cash" })).toBe(
    "pass-paid-too-much",
  );
  expect(code(state, refund)).toBe("may be");
  expect(code(state, { ...refund, classes: 4 })).toBe("pass-refund-too-many");
  expect(code(state, { ...refund, amount: 2501 })).toBe("pass-refund-too-much");
  expect(code(passAfter([sold, hold("s1")]), { ...refund, classes: 3 })).toBe("pass-refund-too-many");
});

test("BOOKS-15 a block gives back sessions by name, and swaps only those to come", () => {
  const state = passAfter([block, use("s1")]);
  expect(code(state, refund)).toBe("pass-refund-sessions");
  expect(code(state, { ...refund, sessions: ["s1"] })).toBe("pass-refund-sessions");
  expect(code(state, { ...refund, sessions: ["s2"] })).toBe("may be");
  expect(code(state, swap("s2", "s8"))).toBe("may be");
  expect(code(state, swap("s1", "s8"))).toBe("pass-not-in-block");
  expect(code(passAfter([block, hold("s2")]), swap("s2", "s8"))).toBe("pass-held-ahead");
  expect(code(state, swap("s2", "s3"))).toBe("pass-already-in-block");
});

test("BOOKS-15 handing on, running out and coming back", () => {
  const state = passAfter([sold, use("s1")]);
  const give: PassEvent = { kind: "transferred", on: "2026-09-20", to: "person-2" };
  expect(code(state, give)).toBe("pass-not-transferable");
  const free = passAfter([{ ...sold, terms: { ...sold.terms, transferable: true } }]);
  expect(code(free, give)).toBe("may be");
  expect(code(free, { ...give, to: "person-1" })).toBe("pass-nothing-to-hand-on");
  expect(code({ ...free, promised: [{ session: "s9", class: "tuesday", on: "2026-09-29" }] }, give)).toBe(
    "pass-held-ahead",
  );
  expect(code(state, { kind: "expired", on: "2026-11-03", classes: 2 })).toBe("pass-still-good");
  expect(code(state, { kind: "expired", on: "2026-11-04", classes: 2 })).toBe("may be");
  expect(code(state, { kind: "expired", on: "2026-11-04", classes: 3 })).toBe("pass-expired-too-many");
  expect(code(state, { kind: "expired", on: "2026-11-04", classes: 1.5 })).toBe("pass-expired-too-many");
  expect(code(passAfter([sold, pause]), { kind: "expired", on: "2026-11-04", classes: 3 })).toBe(
    "pass-still-good",
  );
  expect(code(state, { kind: "returned", on: "2026-09-20", session: "s2", why: "mistake" })).toBe(
    "pass-not-used",
  );
  expect(code(state, { kind: "returned", on: "2026-09-20", session: "s1", why: "mistake" })).toBe("may be");
});

test("BOOKS-15 a session that a block was swapped to after its last day is one of its sessions all the same", () => {
  const later = { kind: "swapped", on: block.on, from: "s2", to: "s8" } as const;
  const state = passAfter([block, later]);
  const after = { kind: "promised", on: "2099-01-05", session: "s8", class: "tuesday" } as const;
  expect(code(state, after)).toBe("may be");
  expect(code(passAfter([block, later, after]), { ...after, kind: "used", why: "attended" })).toBe("may be");
  expect(code(passAfter([sold]), { ...after, session: "s8" })).toBe("pass-past-use-by");
});
