import { minor } from "#core/words";
import { Fraction } from "fraction.js";
import { expect, test } from "vitest";
import { earnedInProportion, earnedOn, owedClasses, owedOn } from "./owed-classes.ts";
import { passAnswer } from "./pass-answer.ts";
import type { PassDocumentInput } from "./pass-document.ts";

function answered(input: PassDocumentInput) {
  const found = passAnswer(input);
  if (!found.ok) throw new Error(found.problems.map(({ code, place }) => `${code} at ${place}`).join());
  return found.value;
}

function problemsOf(input: unknown): readonly string[] {
  const found = passAnswer(input);
  return found.ok ? [] : found.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("PRICE-20 PRICE-22 PRICE-23 a pass is answered in sentences, the weeks first", () => {
  const { json } = answered({
    classes: 5,
    attendance: 0.75,
    teachingWeeks: 6,
    calendar: {
      from: "2027-01-12",
      weekday: 2,
      closures: [{ from: "2027-02-15", until: "2027-02-19", why: "half-term" }],
    },
    currency: "GBP",
    live: [
      { price: "45.00", classes: 5, left: 2 },
      { price: "85.00", classes: 10, left: 3 },
    ],
    guesses: ["attendance"],
  });
  // P(X ≤ 4 of 8 at 3/4) = 7459 ÷ 65536 = 0.1138; of 6: 1909 ÷ 4096 = 0.4661
  // lost on average: Σ (5 − x) C(8, x) 3^x ÷ 65536 = (5 + 4·24 + 3·252 + 2·1512 + 5670) ÷ 65536 = 0.1457
  // owed: 45 × 2 ÷ 5 + 85 × 3 ÷ 10 = 18.00 + 25.50
  expect(json.sentences).toEqual([
    "A pass of 5 classes should run for 8 teaching weeks, for a holder who comes to 75 % of the sessions.",
    "11.4 % of such holders would lose classes, 0.15 each on average over all of them.",
    "With the 6 teaching weeks given now 46.6 % would lose classes: 2 weeks are missing.",
    "As a date that is 2027-03-09; 1 closed date moves it from 2027-03-02.",
    "You owe 5 classes, 43.50 GBP in all: a debt until they are taken or run out.",
    "The attendance is a guess; your register will know better.",
    "What a pass must allow, like a refund, differs from place to place: check the local law.",
  ]);
  expect(json).toMatchObject({
    teachingWeeks: 8,
    useBy: {
      date: "2027-03-09",
      withoutClosures: "2027-03-02",
      lost: [{ date: "2027-02-16", why: "half-term" }],
    },
    owed: { classes: 5, amount: "43.50", currency: "GBP" },
  });
  expect(json.shareLosingClasses).toBeCloseTo(7459 / 65536, 11);
  expect(json.given?.shareLosingClasses).toBeCloseTo(1909 / 4096, 11);
  expect(json.expectedClassesLost).toBeCloseTo(9551 / 65536, 11);
});

test("PRICE-20 the working shows the week that was not enough and the one that is", () => {
  const { json } = answered({ classes: 5, attendance: 0.75 });
  expect(json.working.map(({ label, sum, amount }) => `${label}: ${sum} = ${amount}`)).toEqual([
    "In 7 teaching weeks: at least 5 of 7, each with a chance of 0.75 = 75.6 %",
    "In 8 teaching weeks: at least 5 of 8, each with a chance of 0.75 = 88.6 %",
    "Teaching weeks: the fewest with 85 % or more = 8",
  ]);
});

test("PRICE-24 every problem of a pass document is told at once; a misspelt key is told beside the answer", () => {
  expect(
    problemsOf({
      classes: 5,
      attendance: 1,
      teachingWeeks: 0,
      calendar: { from: "2027-02-30", weekday: 8, closures: [{ from: "2027-03-02", until: "2027-03-01" }] },
      currency: "GBP",
      live: [{ price: "45.00", classes: 5, left: 6 }],
    }),
  ).toEqual([
    "attendance-out-of-range at attendance",
    "use-by-out-of-range at teachingWeeks",
    "date-unreadable at calendar.from",
    "weekday-unknown at calendar.weekday",
    "closure-backwards at calendar.closures[0]",
    "pass-left-out-of-range at live[0].left",
  ]);
  expect(problemsOf({ classes: 5, attendance: 0.5, live: [] })).toEqual([
    "live-currency-missing at currency",
  ]);
  const typo = { classes: 5, attendance: 0.5, atendance: 0.4 };
  expect(answered(typo).unused).toEqual(["atendance"]);
});

test("PRICE-23 what is earned and what is owed add to the price, to the third of a penny", () => {
  // 25.00 for 3 classes: 1 left owes 8.333…
  const pass = { price: minor(2500), classes: 3, left: 1 };
  expect(owedOn(pass).toFraction()).toBe("2500/3");
  expect(owedOn(pass).add(earnedOn(pass)).valueOf()).toBe(2500);
  expect(owedClasses([]).amount.valueOf()).toBe(0);
  expect(() => owedOn({ price: minor(2500), classes: 3, left: 4 })).toThrow("left: 4 of 3");
});

test("PRICE-23 in proportion to expected use nothing is earned beyond the price", () => {
  expect(earnedInProportion(new Fraction(80), 5, 8).valueOf()).toBe(50);
  expect(earnedInProportion(80, 9, 8).valueOf()).toBe(80);
  expect(() => earnedInProportion(80, 1, 0)).toThrow("expected use: 0");
});

test("PRICE-23 passes of one kind stand together, and what is owed can be followed with a pencil", () => {
  const owing = { classes: 10, attendance: 0.6, currency: "GBP" };
  const { json } = answered({
    ...owing,
    live: [
      { price: "82.00", classes: 10, passes: 3, left: 17 },
      { price: "45.00", classes: 5, left: 1 },
    ],
  });
  // 82.00 ÷ 10 × 17 = 139.40, and 45.00 ÷ 5
  expect(json.owed).toEqual({ classes: 18, amount: "148.40", currency: "GBP" });
  expect(
    json.working.filter(({ part }) => part === "owed").map(({ label, sum, amount }) => [label, sum, amount]),
  ).toEqual([
    ["3 passes of 10, 17 classes left", "82.00 ÷ 10 × 17", "139.40"],
    ["A pass of 5, 1 class left", "45.00 ÷ 5 × 1", "9.00"],
    ["Owed in classes", "", "148.40"],
  ]);
  expect(problemsOf({ ...owing, live: [{ price: "82.00", classes: 10, passes: 3, left: 31 }] })).toEqual([
    "pass-left-out-of-range at live[0].left",
  ]);
  expect(problemsOf({ ...owing, live: [{ price: "82.00", classes: 10, passes: 0, left: 0 }] })).toEqual([
    "pass-count at live[0].passes",
  ]);
});
