import { type ClassDocument, classDocumentSchema } from "#core/class";
import { type HallDocument, hallDocumentSchema } from "#core/hall";
import { expect, test } from "vitest";
import { type PriceSheetInput, priceSheet } from "./price-sheet.ts";

const tuesdays: ClassDocument = classDocumentSchema.parse({
  name: "Tuesday evening",
  weekday: 2,
  start: "18:30",
  minutes: { setUp: 20, class: 60, packDown: 15, travel: 30, preparation: 15, admin: 10 },
  costs: { travel: "3.40", music: "0", cover: "0", other: "0", perHead: "0.20" },
  prices: { single: "10.00", passes: [{ classes: 5, price: "45.00" }], concession: "8.00" },
  mix: { single: 0.5, "pass-5": 0.4, concession: 0.1 },
  heads: 8,
  year: {
    from: "2026-09-08",
    until: "2027-07-20",
    closures: [{ from: "2026-10-26", until: "2026-10-30", why: "half-term" }],
    fixedPerYear: "42.00",
  },
  planning: { attendance: 0.75, dispersion: 1 },
  guesses: ["heads"],
});

const quayStreet: HallDocument = hallDocumentSchema.parse({
  name: "Quay Street Mission Room",
  outline: [
    [0, 0],
    [8, 0],
    [8, 12],
    [0, 12],
  ],
  mat: { length: 1.8, width: 0.61 },
  gaps: { side: 0.5, end: 0.3, wall: 0.5 },
  hire: { perHour: "14.00", incrementMinutes: 30 },
});

const whole: PriceSheetInput = {
  practice: { currency: "GBP", locale: "en-GB" },
  document: tuesdays,
  hall: quayStreet,
  capacity: { capacity: 12 },
  today: "2026-09-16",
  money: (exact) => `£${(exact.valueOf() / 100).toFixed(2)}`,
};

function sheet(change: Partial<PriceSheetInput> = {}) {
  return priceSheet({ ...whole, ...change });
}

function planned(planning: ClassDocument["planning"], change: Partial<ClassDocument> = {}) {
  return sheet({ document: { ...tuesdays, planning, ...change } });
}

test("courses and a year by the month tell what a late joiner pays and what comes back; the class counts its sessions", () => {
  expect(sheet().courses.kind).toBe("missing");
  const prices = {
    ...tuesdays.prices,
    courses: [{ sessions: 6, price: "51.00" }],
    monthly: { perSession: "8.50" },
  };
  const { courses } = planned(tuesdays.planning, { prices });
  if (courses.kind !== "ready") throw new Error(courses.kind);
  // 51.00 ÷ 6 = 8.50, with 4 left 34.00
  expect(courses.says[0]).toBe(
    "A course of 6 for £51.00: who joins with 4 left pays £34.00, and a session that you cancel gives back £8.50.",
  );
  // Tuesdays from 8 September 2026 until 20 July 2027 are 46, less 27 October: 45 × 8.50 = 382.50; ÷ 12 = 31.875
  expect(courses.says).toContain(
    "Paid by the month, 45 sessions a year at £8.50 are £382.50: twelve payments, 6 of £31.87 and 6 of £31.88. Say when it is sold that a month without class is paid for too.",
  );
  const [joining, back, year] = courses.workings;
  expect(joining?.lines[2]).toEqual({ label: "4 sessions left", sum: "51.00 ÷ 6 × 4", amount: "34.00" });
  expect(back?.lines.map(({ label, amount }) => `${label}: ${amount}`)).toEqual([
    "Each session that is cancelled: 8.50",
    "All of it together: 51.00",
  ]);
  expect(year?.lines[0]).toEqual({ label: "The year", sum: "8.50 × 45 sessions", amount: "382.50" });
  // 31.875, 63.75, 95.625, …: whole coins up to each month, so every second payment has the coin more
  expect(year?.lines.slice(1, 3).map(({ label, amount }) => `${label}: ${amount}`)).toEqual([
    "Payment 1, 3, 5, 7, 9 or 11: 31.87",
    "Payment 2, 4, 6, 8, 10 or 12: 31.88",
  ]);
});

test("a rise tells what it can lose, and a wanted pay its price, with sums that a pencil follows", () => {
  expect(sheet().higher.kind).toBe("missing");
  const pay = { perHour: "20.00", taxShare: 0.2 };
  const { higher } = planned({ ...tuesdays.planning, rise: "1.00", target: pay });
  if (higher.kind !== "ready") throw new Error(higher.kind);
  // 1.00 ÷ (11.00 − 0.20) = 9.3 % of the 4 who pay singles; 5 + 3.60 + 0.80 = 9.40 brought, a tenth more 10.34:
  // 0.94 ÷ (10.34 − 0.20) = 9.3 % of 8
  expect(higher.says.slice(0, 2)).toEqual([
    "With the single at £11.00 instead of £10.00 an evening stays level while no more than 9.3 % of those who pay singles go, 0.4 people.",
    "With every price up by as much in proportion, one person brings £10.34 instead of £9.40, and an evening stays level while no more than 9.3 % of all the people go, 0.7 people.",
  ]);
  // 125 min at 20.00 an hour is 41.67; ÷ 0.8 is 52.08
  const target = higher.workings.find(({ title }) => title === "The price for the pay you want");
  expect(target?.lines[0]).toMatchObject({
    sum: "125 min ÷ 60 × 20.00 ÷ 0.8 kept after tax",
    amount: "52.0833",
  });
  expect(higher.says.join(" ")).toMatch(/Your single of £10\.00 is £\d+\.\d\d less than that\./);
});

test("a pay that cannot be meant is told at its place and keeps back nothing else", () => {
  const asked = planned({ ...tuesdays.planning, rise: "much" });
  expect(asked.higher.kind === "unsound" && asked.higher.problems.map(({ place }) => place)).toEqual([
    "planning.rise",
  ]);
  expect(asked.sure.kind).toBe("ready");
});

test("classes that are owed are a debt, told where the passes are, with their sum", () => {
  expect(sheet().owed.kind).toBe("missing");
  const live = [{ price: "45.00", classes: 5, passes: 4, left: 11 }];
  const { owed } = planned({ ...tuesdays.planning, live });
  // 45.00 ÷ 5 × 11 = 99.00
  expect(owed.kind === "ready" && owed.says[0]).toBe(
    "You owe 11 classes, £99.00 in all: a debt until they are taken.",
  );
  const wrong = planned({
    ...tuesdays.planning,
    live: [{ price: "45.00", classes: 5, passes: 4, left: 21 }],
  });
  expect(wrong.owed.kind === "unsound" && wrong.owed.problems.map(({ place }) => place)).toEqual([
    "planning.live[0].left",
  ]);
});

test("the course and what people choose to pay count in what one person brings", () => {
  const prices = { ...tuesdays.prices, passes: [], payWhatYouCan: { floor: "4.00", average: "6.00" } };
  const { ladder } = planned(tuesdays.planning, { prices, mix: { single: 0.5, "pay-what-you-can": 0.5 } });
  if (ladder.kind !== "ready") throw new Error(ladder.kind);
  expect(ladder.workings[0]?.lines.map(({ label, amount }) => `${label} ${amount}`)).toEqual([
    "Single 10.00",
    "Concession 8.00",
    "Pay what you can 6.00",
  ]);
  expect(ladder.says).toContain("The least that anybody pays is £6.00 a class: pay what you can.");
});

test("the prices hold together, or each thing that does not is told with what to change", () => {
  // 45.00 ÷ 5 = 9.00 a class, less than a single; P(D ≥ 12) of Poisson 8 is 0.112, so a place is worth 0.20 + 1.12
  expect(sheet().ladder).toMatchObject({ kind: "ready", findings: [] });
  const dear = { ...tuesdays.prices, passes: [{ classes: 5, price: "52.00" }] };
  const { ladder } = planned(tuesdays.planning, { prices: dear });
  expect(ladder.kind === "ready" && ladder.findings.map(({ code, place }) => `${code} at ${place}`)).toEqual([
    "ladder-rises at prices.passes[0]",
  ]);
});

test("a pass runs for its teaching weeks, to a date that a closure moves", () => {
  // published: 5 classes at 75 % with 85 of 100 sure want 8 weeks; the eighth Tuesday from 22 September is
  // 10 November, and half-term on 27 October moves it to 17 November
  const { passes } = sheet();
  expect(passes).toMatchObject({
    kind: "ready",
    passes: [{ classes: 5, teachingWeeks: 8, until: "17 November 2026" }],
    // the attendance was entered, the confidence was not
    guesses: ["planning.confidence"],
  });
  expect(passes.kind === "ready" && passes.says[1]).toBe(
    "Sold for the next evening, a pass of 5 is good until 17 November 2026: 1 closed date moves it from 10 November 2026: half-term 1.",
  );
});

test("a use-by beyond the year that is entered says that closures there are not known", () => {
  const { passes } = sheet({
    document: { ...tuesdays, year: { ...tuesdays.year, until: "2026-10-20" } },
  });
  expect(
    passes.kind === "ready" && passes.says.some((it) => it.startsWith("The year is entered until")),
  ).toBe(true);
});

test("how surely an evening pays is told over every number of people", () => {
  // an evening costs 28.00 + 3.40 = 31.40; a person leaves 0.5 × 10 + 0.4 × 9 + 0.1 × 8 − 0.20 = 9.20;
  // 4 × 9.20 pays for it, so it loses with 0 to 3: e⁻⁸ (1 + 8 + 32 + 85.33) = 0.0424
  const { sure } = sheet();
  const rows = sure.kind === "ready" ? sure.rows : [];
  expect(rows.length).toBe(13);
  expect(rows.filter(({ loses }) => loses).map(({ heads }) => heads)).toEqual([0, 1, 2, 3]);
  expect(rows.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
  expect(sure.kind === "ready" && sure.says[0]).toMatch(
    /^An evening loses money with a chance of 4\.2 %, a term of 12 evenings with /,
  );
});

test("uneven evenings lose more often than people who come by chance alone, and both are told", () => {
  const { sure } = planned({ ...tuesdays.planning, dispersion: 3 });
  expect(sure.kind === "ready" && sure.uneven).toBe(true);
  expect(
    sure.kind === "ready" && sure.says.some((it) => it.includes("by chance alone it would be 4.2 %")),
  ).toBe(true);
  const rows = sure.kind === "ready" ? sure.rows.filter(({ loses }) => loses) : [];
  const uneven = rows.reduce((sum, { chance }) => sum + chance, 0);
  expect(uneven).toBeGreaterThan(rows.reduce((sum, { plainChance }) => sum + plainChance, 0));
});

test("a price curve goes through what she believes, and is asked for until there is something", () => {
  expect(sheet().curve).toMatchObject({ kind: "missing" });
  const beliefs = [
    { price: "8.00", heads: 11 },
    { price: "12.00", heads: 6 },
  ];
  const { curve } = planned({
    ...tuesdays.planning,
    beliefs,
    survey: "Plum Yard; 11.00\nHartsmoor Baths; 7.50",
  });
  const curves = curve.kind === "ready" ? curve.curves : [];
  expect(curves.length).toBe(2);
  for (const { points, best } of curves) {
    const most = Math.max(...points.map(({ leaves }) => leaves));
    expect(points.find(({ price }) => price === best)?.leaves).toBe(most);
  }
  expect(curve.kind === "ready" && curve.says.at(-1)).toBe(
    "2 prices nearby run from £7.50 to £11.00; the middle one is £9.25.",
  );
});

test("beliefs that slope upward and a survey that cannot be read are told at their places", () => {
  const upward = planned({
    beliefs: [
      { price: "8.00", heads: 6 },
      { price: "12.00", heads: 11 },
    ],
  });
  const dollars = planned({ survey: "Plum Yard; $11.00" });
  const told = [upward, dollars].flatMap(({ curve }) => (curve.kind === "unsound" ? curve.problems : []));
  expect(told.map(({ code, place }) => `${code} at ${place}`)).toEqual([
    "curve-slopes-upward at planning.beliefs",
    "currencies-mixed at planning.survey[0].price",
  ]);
  // what they keep back is the curve alone
  expect([upward.ladder.kind, upward.sure.kind, upward.changes.kind]).toEqual(["ready", "ready", "ready"]);
});

test("a studio's offer is held against an hour of her own class", () => {
  // 60.00 for 120 minutes and no travel is 30.00 an hour; hers takes 125 minutes: 31.40 + 62.50 = 93.90,
  // 93.90 ÷ 9.20 = 10.2, so 11 people
  const studio = {
    name: "Plum Yard",
    pay: { form: "flat", pay: "60.00" },
    heads: 10,
    capacity: 100,
    dispersion: 1,
    travelCost: "0",
    minutes: 120,
  } as const;
  const { studio: part, changes } = planned({ ...tuesdays.planning, studio });
  expect(part).toMatchObject({ kind: "ready", equalHeads: 11, studioHour: 30, studio: "Plum Yard" });
  expect(changes.kind === "ready" && changes.studio.length).toBeGreaterThan(5);
  expect(sheet().studio).toMatchObject({ kind: "missing" });
});

test("what would change the answer comes nearest first, guesses marked", () => {
  const { changes } = sheet();
  const rows = changes.kind === "ready" ? changes.evening : [];
  expect(rows.find(({ key }) => key === "heads")).toMatchObject({ guess: true });
  expect(rows.find(({ key }) => key === "capacity")).toMatchObject({ guess: false });
  const near = rows.flatMap((it) => (it.near === "" ? [] : [Number.parseInt(it.near, 10)]));
  expect(near).toEqual(near.toSorted((a, b) => a - b));
});

test("without a hall, a price or a floor the questions say what is missing", () => {
  expect(sheet({ hall: null }).sure).toMatchObject({ kind: "missing", next: "Choose a hall." });
  expect(sheet({ capacity: null }).changes).toMatchObject({ kind: "missing" });
  expect(
    planned(undefined, { prices: { ...tuesdays.prices, passes: [] }, mix: { single: 1 } }).passes,
  ).toMatchObject({
    kind: "missing",
  });
});

test("whatever is entered, no figure on the sheet is not a number", () => {
  for (const heads of [0, 0.5, 12, 1000]) {
    for (const dispersion of [1, 1.5, 20]) {
      for (const perHead of ["0", "9.40", "50.00"]) {
        const costs = { ...tuesdays.costs, perHead };
        const seen = leavesOf(planned({ dispersion }, { heads, costs }));
        expect(seen.length).toBeGreaterThan(100);
        expect(seen.filter((it) => typeof it === "number" && !Number.isFinite(it))).toEqual([]);
        expect(seen.filter((it) => /NaN|Infinity|undefined|null|\de-\d/.test(String(it)))).toEqual([]);
      }
    }
  }
});

/** Every text and number in a value, however deep; chances so small that they have no digits are nought. */
function leavesOf(value: unknown): readonly (string | number)[] {
  if (typeof value === "string") return [value];
  if (typeof value === "number") return [Math.abs(value) < 1e-6 ? 0 : value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(leavesOf) : [];
}
