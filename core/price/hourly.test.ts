import { isCurrency, minor, minutes } from "#core/words";
import { readHireTerms } from "#core/hall";
import { Fraction } from "fraction.js";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import type { Evening } from "./evening-types.ts";
import { eveningAnswer } from "./evening-answer.ts";

function quayStreet(): Evening {
  const currency = "GBP";
  if (!isCurrency(currency)) throw new Error(currency);
  const rules = { minimumMinutes: 0, incrementMinutes: 30, freeBeforeMinutes: 20, freeAfterMinutes: 0 };
  const hire = readHireTerms({ perHour: "14.00", ...rules }, currency, "hire");
  if (!hire.ok) throw new Error("sound terms were refused");
  return {
    currency,
    date: Temporal.PlainDate.from("2027-05-11"),
    hire: hire.value,
    minutes: {
      setUp: minutes(20),
      class: minutes(60),
      packDown: minutes(15),
      travel: minutes(30),
      other: minutes(25),
    },
    travelCost: minor(340),
    otherCost: minor(0),
    perHead: minor(20),
    payers: [{ key: "single", share: new Fraction(1), price: minor(820), classes: 1 }],
    heads: new Fraction(8),
    fixed: null,
  };
}

const answered = (change: Partial<Evening> = {}): ReturnType<typeof eveningAnswer> =>
  eveningAnswer({ ...quayStreet(), ...change });

test("PRICE-7 her time is door to door and preparation, also where the hall charges nothing for it", () => {
  // 20 set-up are free: charged 75 → 90 min, 21.00; with 3.40 travel 24.40; 8 × 8.00 − 24.40 = 39.60
  const answer = answered();
  expect([answer.chargedMinutes, answer.doorToDoorMinutes, answer.otherMinutes]).toEqual([90, 125, 25]);
  // 39.60 ÷ 125 × 60 = 19.008; ÷ 150 × 60 = 15.84
  expect([answer.perDoorToDoorHour?.valueOf(), answer.trueHourly?.valueOf()]).toEqual([1900.8, 1584]);
});

test("PRICE-8 fixed costs lower the true hourly and nothing else", () => {
  // 180.00 ÷ 40 = 4.50: (39.60 − 4.50) ÷ 150 × 60 = 14.04
  const plain = answered();
  const fixed = answered({ fixed: { perYear: minor(18_000), sessions: new Fraction(40) } });
  expect(fixed.trueHourly?.valueOf()).toBe(1404);
  expect(fixed.perDoorToDoorHour?.equals(plain.perDoorToDoorHour ?? 0)).toBe(true);
  expect(fixed.contribution.equals(plain.contribution)).toBe(true);
  expect(fixed.breakEven).toBe(plain.breakEven);
});

test("PRICE-7 an evening that loses costs her its hours", () => {
  // 2 × 8.00 − 24.40 = −8.40; ÷ 150 × 60 = −3.36
  expect(answered({ heads: new Fraction(2) }).trueHourly?.valueOf()).toBe(-336);
});

test("PRICE-7 no time stated gives no hourly figure and says so", () => {
  const none = minutes(0);
  const answer = answered({
    minutes: { setUp: none, class: none, packDown: none, travel: none, other: none },
  });
  expect([answer.trueHourly, answer.perDoorToDoorHour]).toEqual([null, null]);
  expect(answer.working.hourly.at(-1)).toMatchObject({ sum: "no time is stated", amount: "" });
});

test("PRICE-6 a mean number of people is counted with its fraction", () => {
  // 9.5 × 8.00 − 24.40 = 51.60
  expect(answered({ heads: new Fraction("9.5") }).contribution.valueOf()).toBe(5160);
});

const most = (change: Partial<Evening>): number => answered(change).table.length - 1;

test("PRICE-6 the table runs past the ordinary evening and the break-even, 200 heads at most", () => {
  expect(most({})).toBe(20);
  expect(most({ heads: new Fraction("30.5") })).toBe(31);
  // 24.40 ÷ 0.50 = 48.8
  expect(most({ perHead: minor(770) })).toBe(49);
  expect(most({ perHead: minor(819) })).toBe(200);
});
