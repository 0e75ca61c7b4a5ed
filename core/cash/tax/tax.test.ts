import { expect, test } from "vitest";
import { type MoneyJson, moneyAnswer, taxTableDocuments, type YearMoneyDocumentInput } from "../index.ts";

type Given = Partial<YearMoneyDocumentInput>;

function answer(given: Given): MoneyJson {
  const read = moneyAnswer({ currency: "GBP", from: "2026-04-06", ...given });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.json;
}

function codes(given: Given): readonly string[] {
  const read = moneyAnswer({
    currency: "GBP",
    from: "2026-04-06",
    ...earning("2026-05-01", "100"),
    ...given,
  });
  return read.ok ? [] : read.problems.map(({ code, place }) => `${code} at ${place}`);
}

function earning(on: string, amount: string, costs = "0"): Given {
  return {
    moves: [
      { name: "all takings", way: "in", amount, on },
      { name: "all costs", way: "out", amount: costs, on },
    ],
  };
}

const dated = ({ tax }: MoneyJson) => tax?.dates.map((it) => [it.date, it.what, it.amount]);

test("CASH-20: takings count on the day they are paid, not on the day they are taught", () => {
  const { tax } = answer({
    tax: { place: "uk" },
    months: 24,
    work: [{ id: "plum", kind: "studio", dates: ["2027-03-29"], perSession: "3000.00" }],
  });
  // taught on 29 March 2027, paid on 30 April 2027
  expect(tax?.years.map((it) => it.received)).toEqual(["0.00", "3000.00"]);
});

test("CASH-20: a year that goes on after the months asked is filled up with their average day", () => {
  const { tax } = answer({ tax: { place: "uk" }, months: 6, ...earning("2026-05-01", "1830", "366") });
  // 183 days seen (6 April to 5 October), 182 unseen: 1830 + 182 × 10 = 3650; 366 + 182 × 2 = 730
  expect(tax?.years[0]).toMatchObject({ unseenDays: 182, received: "3650.00", costs: "730.00" });
});

test("CASH-20: what the tax year had before the first day counts towards it", () => {
  const { tax } = answer({
    from: "2026-10-06",
    months: 6,
    tax: { place: "uk", soFar: { income: "4000", costs: "1500" } },
    ...earning("2026-11-01", "6000", "500"),
  });
  // 6 October to 5 April: nothing unseen
  expect(tax?.years[0]).toMatchObject({ unseenDays: 0, received: "10000.00", costs: "2000.00" });
});

test("CASH-21: a year without rates takes the nearest and says so", () => {
  const json = answer({ from: "2029-04-06", tax: { place: "uk" }, ...earning("2029-05-01", "20000") });
  expect(json.tax?.years[0]).toMatchObject({ table: "uk-2026", ownTable: false });
  expect(json.sentences.join(" ")).toContain("no rates for that year here yet");
});

test("CASH-21: a table of her own stands before the one that comes with it", () => {
  const [file] = taxTableDocuments().filter(({ id }) => id === "uk-2026");
  if (file?.rules !== "uk") throw new Error("no file");
  const mine = { ...file, id: "mine", bands: [{ upTo: null, rate: 0.3 }] };
  const { tax } = answer({ tax: { place: "uk", tables: [mine] }, ...earning("2026-05-01", "22570") });
  // 22,570 − allowance 12,570 − trading allowance 1,000 = 9,000 at 30 %; Class 4 6 % of 9,000
  expect(tax?.years[0]).toMatchObject({ table: "mine", ownTable: true, bill: "3240.00" });
});

test("CASH-21: tables of her own that overlap, in another currency or for no tax year are told", () => {
  const file = taxTableDocuments().find(({ id }) => id === "uk-2026");
  if (file === undefined) throw new Error("no file");
  const late = { ...file, from: "2027-01-01", until: "2027-12-31" };
  expect(codes({ tax: { place: "uk", tables: [file, late] } })).toEqual([
    "tax-tables-overlap at tax.tables[1]",
  ]);
  expect(codes({ tax: { place: "uk", tables: [{ ...file, until: "2026-06-01" }] } })).toEqual([
    "tax-table-span at tax.tables[0].until",
  ]);
  expect(codes({ tax: { place: "us" } })).toEqual(["tax-currency at tax.place"]);
  expect(codes({ tax: { place: "the moon" } })).toEqual(["tax-place-unknown at tax.place"]);
});

test("CASH-21: no two tables that come with it hold for the same day of one place, and each names its sources", () => {
  const files = taxTableDocuments();
  for (const one of files) {
    expect(one.sources.length).toBeGreaterThan(0);
    const others = files.filter((it) => it !== one && it.place === one.place);
    expect(others.filter((it) => it.from <= one.until && one.from <= it.until)).toEqual([]);
  }
});

function yearWithCosts(costs: string) {
  return answer({ tax: { place: "uk" }, ...earning("2026-05-01", "15000", costs) }).tax?.years[0];
}

test("CASH-22: the trading allowance of 1,000 is better than costs of 400, and costs of 1,600 better than it", () => {
  expect(yearWithCosts("400")).toMatchObject({ method: "allowance", profit: "14000.00" });
  expect(yearWithCosts("1600")).toMatchObject({ method: "costs", profit: "13400.00" });
});

test("CASH-22: a job that uses the allowance leaves every pound of profit to be taxed at a fifth, without Class 4", () => {
  const { tax } = answer({ tax: { place: "uk", other: "14000" }, ...earning("2026-05-01", "7000", "2000") });
  // profit 5,000 × 20 %; the job's own tax, (14,000 − 12,570) × 20 % = 286, is taken from its pay
  expect(tax?.years[0]).toMatchObject({ incomeTax: "1000.00", contribution: "0.00", bill: "1000.00" });
});

test("CASH-22: above 100,000 one of the allowance goes for every two", () => {
  const { tax } = answer({ tax: { place: "uk" }, ...earning("2026-05-01", "112000", "2000") });
  // profit 110,000: allowance 12,570 − 5,000 = 7,570; taxed 102,430 = 37,700 × 20 % + 64,730 × 40 % = 33,432
  // Class 4: 37,700 × 6 % + 59,730 × 2 % = 2,262 + 1,194.60
  expect(tax?.years[0]).toMatchObject({ incomeTax: "33432.00", contribution: "3456.60" });
});

test("CASH-22: under the small profits voluntary Class 2 is told beside the bill", () => {
  const json = answer({ tax: { place: "uk" }, ...earning("2026-05-01", "6000", "1500") });
  // 52 × 3.65
  expect(json.sentences.join(" ")).toContain("Class 2 of 189.80 GBP");
  expect(json.tax?.years[0]?.bill).toBe("0.00");
});

test("CASH-23: a first bill of 1,200 asks 1,800 in January and 600 in July", () => {
  const json = answer({
    from: "2026-09-01",
    tax: { place: "uk", last: { bill: "1200" } },
    ...earning("2026-09-02", "1"),
  });
  expect(dated(json)?.slice(0, 3)).toEqual([
    ["2027-01-31", "balance", "1200.00"],
    ["2027-01-31", "on account", "600.00"],
    ["2027-07-31", "on account", "600.00"],
  ]);
  expect(json.months.find(({ month }) => month === "2027-01")?.tax).toBe("1800.00");
  expect(json.sentences.join(" ")).toContain("1800.00 GBP, half as much again as the bill");
});

test("CASH-23: nothing is asked on account after a bill under 1,000", () => {
  const json = answer({
    from: "2026-09-01",
    tax: { place: "uk", last: { bill: "999.99" } },
    ...earning("2026-09-02", "1"),
  });
  expect(dated(json)).toEqual([["2027-01-31", "balance", "999.99"]]);
});

test("CASH-23: nothing is asked on account when more than 80 % is taken at source", () => {
  // other income 60,000: tax 11,432; profit 2,600 more at 40 % is 1,040 of 12,472 in all: 92 % at source
  const json = answer({
    months: 24,
    tax: { place: "uk", other: "60000", registered: true },
    ...earning("2026-05-01", "4600", "2000"),
  });
  const first = json.tax?.dates.filter(({ date }) => date === "2028-01-31");
  expect(first?.map((it) => [it.what, it.amount])).toEqual([["balance", "1040.00"]]);
});

test("CASH-23: the second July half of the year that has just ended falls due when it begins in May", () => {
  const json = answer({
    from: "2026-05-01",
    tax: { place: "uk", last: { bill: "2000", onAccount: "1500" } },
    ...earning("2026-05-02", "1"),
  });
  // 1,500 on account: 750 were paid in January, 750 are due in July; then 500 are left
  expect(dated(json)?.slice(0, 3)).toEqual([
    ["2026-07-31", "on account", "750.00"],
    ["2027-01-31", "balance", "500.00"],
    ["2027-01-31", "on account", "1000.00"],
  ]);
});

test("CASH-24: estimates fall on the four dates, moved on from a weekend to Monday", () => {
  const json = answer({
    currency: "USD",
    from: "2025-01-01",
    tax: { place: "us" },
    ...earning("2025-02-01", "20000"),
  });
  // 15 June 2025 is a Sunday. Schedule SE: 20,000 × .9235 = 18,470 × 15.3 % = 2,825.91, half 1,412.96 (rounded up)
  // taxed: 20,000 − 1,412.96 − 15,750 = 2,837.04 × 10 % = 283.70; the bill 3,109.61
  expect(json.tax?.years[0]).toMatchObject({ contribution: "2825.91", incomeTax: "283.70", bill: "3109.61" });
  expect(dated(json)).toEqual([
    ["2025-04-15", "instalment", "777.40"],
    ["2025-06-16", "instalment", "777.40"],
    ["2025-09-15", "instalment", "777.40"],
    ["2026-01-15", "instalment", "777.41"],
  ]);
});

test("CASH-24: who begins in autumn spreads what is left over the dates that are left", () => {
  const json = answer({
    currency: "USD",
    from: "2025-08-01",
    months: 5,
    tax: { place: "us", soFar: { income: "10000" }, paidSoFar: "1109.61" },
    ...earning("2025-09-01", "10000"),
  });
  // the same year of 3,109.61: 2,000 are left for September and January
  expect(dated(json)).toEqual([
    ["2025-09-15", "instalment", "1000.00"],
    ["2026-01-15", "instalment", "1000.00"],
  ]);
});

test("CASH-24: a small year has no estimates, and one rate for the state is taken of the profit", () => {
  const json = answer({
    currency: "USD",
    from: "2026-01-01",
    tax: { place: "us", stateRate: 0.0495 },
    ...earning("2026-02-01", "3000"),
  });
  // 3,000 × .9235 = 2,770.50 × 15.3 % = 423.89; state 148.50; 572.39 in all, under 1,000
  expect(json.tax?.years[0]).toMatchObject({ state: "148.50", bill: "572.39" });
  expect(dated(json)).toEqual([["2027-04-15", "balance", "572.39"]]);
});

function dollarsDue(income: string) {
  const given = { currency: "USD", from: "2026-01-01", tax: { place: "us" } };
  return answer({ ...given, ...earning("2026-02-01", income) }).tax?.years[0]?.bill;
}

test("CASH-24: under 400 that count there is no self-employment tax", () => {
  expect(dollarsDue("433.00")).toBe("0.00"); // × .9235 = 399.88
  expect(dollarsDue("433.14")).toBe("61.20"); // × .9235 = 400.00 × 15.3 %
});

function highEarner(filing: "single" | "joint"): string | undefined {
  const given = { currency: "USD", from: "2026-01-01", tax: { place: "us", other: "180000", filing } };
  return answer({ ...given, ...earning("2026-02-01", "10000") }).tax?.years[0]?.contribution;
}

test("CASH-24: her wages and profit together reach the wage base, and the social part stops there", () => {
  // counts 9,235; the social part on 184,500 − 180,000 = 4,500: 558.00; Medicare 267.815: together 825.82
  expect(highEarner("single")).toBe("825.82");
  // jointly the wages may be another's: 9,235 × 15.3 % = 1,412.955
  expect(highEarner("joint")).toBe("1412.96");
});

test("CASH-25: what is put aside in whole percent covers the bill", () => {
  const { tax } = answer({ tax: { place: "uk" }, ...earning("2026-05-01", "18000", "2000") });
  // profit 16,000: 3,430 × 20 % + 3,430 × 6 % = 891.80; ÷ 18,000 = 4.95 %
  expect(tax?.years[0]).toMatchObject({ bill: "891.80", setAsidePercent: 5, nextRate: "0.26" });
});

test("CASH-26: the pot grows with the receipts and is paid out of in January", () => {
  const json = answer({
    from: "2026-04-06",
    months: 24,
    tax: { place: "uk", registered: true },
    moves: [{ name: "takings", way: "in", amount: "2000", on: "2026-04-20", everyMonths: 1 }],
  });
  // 2026/27: 12 × 2,000, less 1,000 allowance: 23,000; (23,000 − 12,570) × 26 % = 2,711.80
  const pot = (month: string) => json.months.find((it) => it.month === month)?.pot;
  expect(pot("2026-04")).toBe("225.98"); // a twelfth
  expect(pot("2027-03")).toBe("2711.80");
  // January 2028: 2,711.80 + ten twelfths of 2,711.80 (2,259.83) − 2,711.80 − 1,355.90 on account
  expect(pot("2028-01")).toBe("903.93");
});

test("CASH-26: a pot that is short says by how much", () => {
  const json = answer({
    from: "2026-09-01",
    tax: { place: "uk", last: { bill: "800" }, pot: "300" },
    ...earning("2026-09-02", "1"),
  });
  expect(json.sentences.join(" ")).toContain("it holds 300.00 GBP, 500.00 GBP short");
});

function datesWith(tax: { readonly registered?: boolean }, income: string) {
  return dated(answer({ months: 12, tax: { place: "uk", ...tax }, ...earning("2026-05-01", income) }));
}

test("CASH-28: she registers by 5 October after the year in which takings pass the trading allowance", () => {
  expect(datesWith({}, "1000.01")).toContainEqual(["2027-10-05", "register", null]);
  expect(datesWith({}, "1000.00")).toEqual([]);
  expect(datesWith({ registered: true }, "1000.01")).toEqual([]);
});
