import { passAfter, type PassEvent } from "#core/books";
import { plainWriter } from "#core/words";
import { expect, test } from "vitest";
import { passWords, termsWords } from "./pass-words.ts";

const writer = plainWriter("en-GB");
const sold: PassEvent & { readonly kind: "sold" } = {
  kind: "sold",
  on: "2026-09-08",
  pass: "pass-1",
  form: "pass",
  holder: "ana",
  name: "Pass of 10",
  size: 10,
  price: 8500,
  currency: "GBP",
  paid: "later",
  useBy: "2026-12-22",
  valid: "all",
  sessions: [],
  terms: { perClassOnRefund: 1000, transferable: false, pauses: 1 },
};

test("a pass says what is left and until when, what is owed, and when its last day is over", () => {
  expect(passWords(passAfter([sold]), "2026-12-22", writer)).toEqual([
    "10 of 10 classes left, to use by Tuesday 22 December 2026.",
    "85.00 GBP is still to be paid for it.",
  ]);
  expect(passWords(passAfter([sold]), "2026-12-23", writer)[0]).toBe(
    "10 of 10 classes left, but its last day was Tuesday 22 December 2026.",
  );
});

test("a paused pass says from when, and no reason", () => {
  const paused = passAfter([sold, { kind: "paused", on: "2026-10-01", from: "2026-10-06" }]);
  expect(passWords(paused, "2026-10-07", writer).slice(0, 2)).toEqual([
    "10 of 10 classes left.",
    "Paused from Tuesday 6 October 2026. Its use-by, Tuesday 22 December 2026, moves by the teaching dates in the pause.",
  ]);
});

test("a pass that is used up says where its classes went", () => {
  const back = { kind: "refunded", on: "2026-10-08", classes: 9, amount: 7650, how: "cash" } as const;
  const used = { kind: "used", on: "2026-09-15", session: "t-1", class: "tuesday", why: "attended" } as const;
  // 85.00 × 9 ÷ 10 = 76.50 of what is owed is let go, and 8.50 stays to be paid
  expect(passWords(passAfter([sold, used, back]), "2026-10-09", writer)).toEqual([
    "Nothing is left of 10 classes: 1 used, 9 given back.",
    "8.50 GBP is still to be paid for it.",
  ]);
});

test("its terms are three sentences", () => {
  expect(termsWords(passAfter([sold]), [], writer)).toEqual([
    "Sold on Tuesday 8 September 2026 for 85.00 GBP; good for all classes.",
    "Given back as its price less 10.00 GBP for each class taken.",
    "It cannot be handed on. It can be paused once.",
  ]);
});
