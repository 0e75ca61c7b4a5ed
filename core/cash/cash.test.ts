import { expect, test } from "vitest";
import { type MoneyJson, moneyAnswer, type YearMoneyDocumentInput } from "./index.ts";

type Given = Omit<YearMoneyDocumentInput, "currency" | "from"> &
  Partial<Pick<YearMoneyDocumentInput, "currency" | "from">>;

function answer(given: Given): MoneyJson {
  const read = moneyAnswer({ currency: "GBP", from: "2027-01-01", ...given });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  expect(read.value.unused).toEqual([]);
  return read.value.json;
}

function codes(given: Given): readonly string[] {
  const read = moneyAnswer({ currency: "GBP", from: "2027-01-01", ...given });
  return read.ok ? [] : read.problems.map(({ code, place }) => `${code} at ${place}`);
}

const studio = { id: "plum", kind: "studio", perSession: "30.00" } as const;

test("CASH-1: a studio that pays 30 days after the month's end pays for 4 and 11 January on 2 March", () => {
  // 31 January + 30 days = 2 March 2027
  const { months } = answer({ work: [{ ...studio, dates: ["2027-01-04", "2027-01-11"] }], months: 3 });
  expect(months.map((it) => it.in)).toEqual(["0.00", "0.00", "60.00"]);
});

function paidOn(paid: NonNullable<NonNullable<YearMoneyDocumentInput["work"]>[number]["paid"]>) {
  const { months } = answer({ work: [{ ...studio, dates: ["2027-03-09"], paid }], months: 6 });
  return months.find((it) => it.in !== "0.00")?.month;
}

test("CASH-1: four ways for the same session on 9 March to be paid", () => {
  expect(paidOn({ when: "on-the-day", days: 0 })).toBe("2027-03");
  expect(paidOn({ when: "days-after", days: 60 })).toBe("2027-05"); // 8 May
  expect(paidOn({ when: "after-month", days: 30 })).toBe("2027-04"); // 30 April
  expect(paidOn({ when: "before-month", days: 14 })).toBe("2027-02"); // 15 February
});

test("CASH-1: a hall paid in arrears is paid later than the takings that it brought", () => {
  const { months } = answer({
    work: [
      {
        id: "tue",
        kind: "own",
        dates: ["2027-01-05", "2027-01-12"],
        perSession: "80.00",
        costs: [{ name: "hall", perSession: "28.00", paid: { when: "after-month", days: 14 } }],
      },
    ],
    months: 2,
  });
  // 2 × 80 in January, 2 × 28 on 14 February
  expect(months.map((it) => [it.in, it.out])).toEqual([
    ["160.00", "0.00"],
    ["0.00", "56.00"],
  ]);
});

test("CASH-2: sessions taught before the first day and paid after it come in, those paid before do not", () => {
  // 9 November + month + 30 days = 30 December, before; 7 December → 30 January
  const { months } = answer({ work: [{ ...studio, dates: ["2026-11-09", "2026-12-07"] }], months: 1 });
  expect(months.map((it) => it.in)).toEqual(["30.00"]);
});

test("CASH-3: half of the takings by passes for three sessions at a time comes in on every third", () => {
  // each session 80: 40 in cash, 40 by passes; on 5 and 26 January 3 × 40 and 2 × 40 (two are left) are sold
  const { months, working } = answer({
    work: [
      {
        id: "tue",
        kind: "own",
        dates: ["2027-01-05", "2027-01-12", "2027-01-19", "2027-01-26", "2027-02-02"],
        perSession: "80.00",
        passes: { share: 0.5, sessions: 3 },
      },
    ],
    months: 2,
  });
  expect(working.find(({ label }) => label.startsWith("passes"))).toMatchObject({
    sum: "2 times",
    amount: "200.00",
  });
  // January: 4 × 40 + 120 + 80 = 360, one class of 40 is owed at its end
  expect(months.map((it) => [it.in, it.owed])).toEqual([
    ["360.00", "40.00"],
    ["40.00", "0.00"],
  ]);
});

test("CASH-3: what is owed at the start is taught before any pass is sold", () => {
  // 60 owed covers one session of 40 and half of the next: on the second 2 × 40 − 20 is sold
  const { months } = answer({
    work: [
      {
        id: "tue",
        kind: "own",
        dates: ["2027-01-05", "2027-01-12", "2027-01-19"],
        perSession: "40.00",
        passes: { share: 1, sessions: 4, owed: "60.00" },
      },
    ],
    months: 1,
  });
  expect(months[0]).toMatchObject({ in: "60.00", owed: "0.00" });
});

test("CASH-4: a day's takings can pay for what goes out on it, and the first of two equal lows is told", () => {
  const { lowest } = answer({
    opening: "50.00",
    work: [{ id: "tue", kind: "own", dates: ["2027-01-05"], perSession: "70.00" }],
    moves: [
      { name: "insurance", way: "out", amount: "90.00", on: "2027-01-05" },
      { name: "kit", way: "out", amount: "20.00", on: "2027-01-09" },
      { name: "back", way: "in", amount: "20.00", on: "2027-01-20" },
      { name: "kit", way: "out", amount: "20.00", on: "2027-01-25" },
    ],
    months: 1,
  });
  // 50 → 50 + 70 − 90 = 30 → 10 on the 9th → 30 → 10 on the 25th
  expect(lowest.on.middle).toBe("2027-01-09");
  expect(lowest.balance.middle).toBe("10.00");
});

test("CASH-5: the reserve is the fall to the lowest point and a month of what goes out", () => {
  const { reserve, sentences } = answer({
    opening: "100.00",
    moves: [
      { name: "hall", way: "out", amount: "240.00", on: "2027-02-01" },
      { name: "takings", way: "in", amount: "500.00", on: "2027-03-01" },
    ],
    months: 3,
  });
  // falls from 100 to −140: 240; out 240 ÷ 3 months = 80
  expect(reserve).toEqual({
    fall: "240.00",
    month: "80.00",
    advised: { low: "320.00", middle: "320.00", high: "320.00" },
  });
  expect(sentences[1]).toContain("140.00 GBP more is needed");
  expect(sentences[2]).toContain("You have 100.00 GBP: 220.00 GBP short.");
});

test("CASH-6: a band of takings and of a cost makes a low, a middle and a high year", () => {
  const { months, uncertain } = answer({
    work: [
      {
        id: "tue",
        kind: "own",
        dates: ["2027-01-05"],
        perSession: { low: "60", middle: "80", high: "90" },
      },
    ],
    moves: [
      { name: "repair", way: "out", amount: { low: "10", middle: "20", high: "40" }, on: "2027-01-31" },
    ],
    months: 1,
  });
  expect(uncertain).toBe(true);
  // 60 − 40, 80 − 20, 90 − 10
  expect(months[0]?.end).toEqual({ low: "20.00", middle: "60.00", high: "80.00" });
});

test("CASH-7: a monthly payment from 31 January falls on 28 February and 31 March", () => {
  const { months } = answer({
    moves: [{ name: "loan", way: "out", amount: "10", on: "2027-01-31", everyMonths: 1 }],
    months: 3,
  });
  expect(months.map((it) => [it.out, it.lowestOn])).toEqual([
    ["10.00", "2027-01-31"],
    ["10.00", "2027-02-28"],
    ["10.00", "2027-03-31"],
  ]);
});

test("CASH-7: until a last day, and not beyond the months asked", () => {
  const move = { name: "loan", way: "out", amount: "10", on: "2027-01-15", everyMonths: 3 } as const;
  const out = (until?: string) =>
    answer({ moves: [{ ...move, ...(until === undefined ? {} : { until }) }], months: 12 }).months.filter(
      (it) => it.out === "10.00",
    ).length;
  expect(out()).toBe(4);
  expect(out("2027-07-14")).toBe(2);
});

test("CASH-6: pay that changes from a day on brings the new amount from that day", () => {
  const { months } = answer({
    work: [
      {
        id: "tue",
        kind: "own",
        weekly: { weekday: 2, from: "2027-01-01", until: "2027-02-28", off: ["2027-02-16"] },
        perSession: "50",
        changes: [{ from: "2027-01-19", perSession: "60" }],
      },
    ],
    months: 2,
  });
  // Tuesdays 5, 12 at 50; 19, 26 at 60; February 2, 9, 23
  expect(months.map((it) => it.in)).toEqual(["220.00", "180.00"]);
});

test("CASH-9: what cannot be meant is told at its place", () => {
  expect(codes({})).toEqual(["money-empty at work"]);
  expect(codes({ work: [studio] })).toEqual(["work-without-dates at work[0]"]);
  expect(codes({ work: [{ ...studio, dates: ["2027-01-04"], perSession: "-3" }] })).toEqual([
    "money-negative at work[0].perSession",
  ]);
  expect(
    codes({ work: [{ ...studio, dates: ["2027-01-04"], paid: { when: "days-after", days: 400 } }] }),
  ).toEqual(["lag-out-of-range at work[0].paid.days"]);
  expect(
    codes({ work: [{ ...studio, dates: ["2027-02-30"], perSession: { low: "9", middle: "8" } }] }),
  ).toEqual(["date-unreadable at work[0].dates[0]", "band-order at work[0].perSession"]);
  expect(codes({ months: 0, moves: [{ name: "a", way: "in", amount: "1", on: "2027-01-01" }] })).toEqual([
    "money-months at months",
  ]);
  expect(
    codes({
      work: [
        { ...studio, dates: [] },
        { ...studio, dates: [] },
      ],
    }),
  ).toEqual(["work-twice at work[1].id"]);
});

test("CASH-9: takings in dollars are told in dollars", () => {
  const { sentences } = answer({
    currency: "USD",
    from: "2026-01-01",
    opening: "200",
    work: [{ id: "grange", kind: "own", dates: ["2026-01-06"], perSession: "96" }],
    months: 1,
  });
  expect(sentences[0]).toBe(
    "The bank is lowest on 2026-01-01 with 200.00 USD, and holds 296.00 USD at the end of 2026-01-31.",
  );
  expect(sentences.at(-1)).toBe("Tax is not in this.");
});

test("CASH-10: least of the bank is hers where the tax pot and the classes owed leave least", () => {
  const { says } = answer({
    opening: "100",
    months: 2,
    tax: { place: "uk", last: { bill: "60" }, registered: true },
    work: [
      {
        id: "tue",
        kind: "own",
        dates: ["2027-01-12", "2027-02-09"],
        perSession: "40",
        passes: { share: 1, sessions: 2 },
      },
    ],
  });
  // January: 100 + 80 − 60 of tax on the 31st = 120, of which the session in February is owed; nothing in the pot
  expect(says.cash.at(-1)).toBe(
    "Least of it is yours at the end of 2027-01: of 120.00 GBP, 0.00 GBP belongs in the tax pot and 40.00 GBP is owed in classes; 80.00 GBP is yours.",
  );
});
