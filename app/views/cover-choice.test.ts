import { plainWriter } from "#core/words";
import { expect, test } from "vitest";
import { coverChoice } from "./cover-choice.ts";

const writer = plainWriter("en-GB");

test("a lost voice: 13 booked, 11 expected, 7.70 each, hall 27.00 past its notice, cover 35.00", () => {
  // 11 × 7.70 = 84.70; − 27.00 − 35.00 = 22.70 against − 27.00
  const asked = { currency: "GBP", booked: 13, expected: 11, margin: 770, hall: 2700, hallPastNotice: true };
  const choice = coverChoice({ ...asked, fee: 3500 }, writer);
  expect(choice.says).toBe(
    "Having it covered leaves 22.70 GBP; cancelling leaves -27.00 GBP. Having it covered is better by 49.70 GBP, before what people feel about it.",
  );
  expect(choice.running.map(({ amount }) => amount)).toEqual([
    "84.70 GBP",
    "-27.00 GBP",
    "-35.00 GBP",
    "22.70 GBP",
  ]);
});

test("a thin class whose hall can still be given back is run only for what it leaves", () => {
  // 2 × 7.70 − 27.00 = −11.60 against 0
  const asked = { currency: "GBP", booked: 2, expected: 2, margin: 770, hall: 2700, hallPastNotice: false };
  expect(coverChoice({ ...asked, fee: null }, writer).says).toContain("Cancelling is better by 11.60 GBP");
});

test("where both leave the same, neither is called better", () => {
  // nobody expected, the hall charged either way: −27.00 and −27.00
  const asked = { currency: "GBP", booked: 0, expected: 0, margin: 770, hall: 2700, hallPastNotice: true };
  expect(coverChoice({ ...asked, fee: null }, writer).says).toBe(
    "Running it leaves -27.00 GBP; cancelling leaves -27.00 GBP. They come to the same, before what people feel about it.",
  );
});
