import { plainWriter } from "#core/words";
import { expect, test } from "vitest";
import { termsInWords } from "./terms-in-words.ts";

test("BOOKS-34 the terms of a pass are three lines, said when it is sold", () => {
  const uk = plainWriter("en-GB");
  expect(termsInWords({ perClassOnRefund: 1000, transferable: true, pauses: 1 }, "GBP", uk)).toEqual([
    "Given back: the price less 10.00 GBP for each class taken.",
    "It can be paused once: the use-by moves by the teaching dates that are missed, and no reason is asked.",
    "It can be handed on to somebody else, who fills in a health form first.",
  ]);
  expect(termsInWords({ perClassOnRefund: null, transferable: false, pauses: 0 }, "GBP", uk)).toEqual([
    "Given back: the share of the classes that are left.",
    "It cannot be paused.",
    "It is for one person and cannot be handed on.",
  ]);
  const often = termsInWords({ perClassOnRefund: null, transferable: false, pauses: null }, "USD", uk)[1];
  expect(often).toContain("It can be paused: the use-by moves");
});
