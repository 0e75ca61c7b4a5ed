import { type ClassDocument, classDocumentSchema } from "#core/class";
import { type HallDocument, hallDocumentSchema } from "#core/hall";
import type { Capacity } from "#core/hall";
import { expect, test } from "vitest";
import { classSheet } from "./class-sheet.ts";
import type { ClassSheetInput } from "./class-sheet-input.ts";

const tuesdays: ClassDocument = classDocumentSchema.parse({
  name: "Tuesday evening",
  whoFor: "People who sit all day",
  weekday: 2,
  start: "18:30",
  minutes: { setUp: 20, class: 60, packDown: 15, travel: 30, preparation: 15, admin: 10 },
  costs: { travel: "3.40", music: "0", cover: "0", other: "0", perHead: "0.20" },
  prices: { single: "10.00", passes: [{ classes: 10, price: "85.00" }], concession: "8.00" },
  mix: { single: 0.4, "pass-10": 0.4, concession: 0.1, free: 0.1 },
  heads: 8,
  year: {
    from: "2026-09-08",
    until: "2026-10-27",
    closures: [{ from: "2026-10-26", until: "2026-10-30", why: "half-term" }],
    fixedPerYear: "42.00",
  },
  guesses: ["heads", "minutes.setUp", "mix"],
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
  postedCapacity: 60,
  hire: {
    perHour: "14.00",
    incrementMinutes: 30,
    heating: { perHour: "1.50", months: [10, 11, 12, 1, 2, 3] },
  },
});

const sixteen: Capacity = {
  capacity: 16,
  limitedBy: ["floor"],
  sentence: "16 people, as many as the floor takes.",
};

const whole: ClassSheetInput = {
  practice: { currency: "GBP", locale: "en-GB" },
  document: tuesdays,
  hall: quayStreet,
  plan: { count: 16, proven: true },
  capacity: sixteen,
  today: "2026-09-16",
  money: (exact) => `£${(exact.valueOf() / 100).toFixed(2)}`,
};

function sheet(change: Partial<ClassSheetInput> = {}): ReturnType<typeof classSheet> {
  return classSheet({ ...whole, ...change });
}

test("the sheet says in one sentence what fits, what the hall allows and who pays for the room", () => {
  // 28.00 + 3.40 = 31.40; 31.40 ÷ 8.00 → 4
  expect(sheet().heading).toBe("16 mats fit; the hall’s own limit is 60; 4 people pay for the room.");
  expect(sheet().when).toBe("Tuesdays at 18:30, 60 minutes.");
});

test("each part says its answer first, for the next evening of the class", () => {
  const { evening, prices, ordinary, year } = sheet();
  expect(evening).toMatchObject({
    kind: "ready",
    date: "2026-09-22",
    chargedMinutes: 120,
    restsOn: "Rests on 1 guess.",
    says: [
      "An evening costs £31.40, of which £28.00 is for 120 charged minutes of hire.",
      "That is the evening of 22 September 2026; heating, weekends and new rates change it.",
    ],
  });
  expect(prices).toMatchObject({
    kind: "ready",
    breakEven: 4,
    restsOn: "Rests on 2 guesses.",
    says: ["4 people pay for the room.", "One person brings £8.20 on average over all ways of paying."],
  });
  // 8 × 8.00 − 31.40 = 32.60; ÷ 125 min; (32.60 − 42 ÷ 7) ÷ 150 min = 10.64; 16 × 8.00 − 31.40 = 96.60
  expect(ordinary).toMatchObject({
    kind: "ready",
    restsOn: "Rests on 3 guesses.",
    guessNames: ["how many come", "the minutes of set-up", "who pays in which way"],
    says: [
      "An ordinary evening with 8 people leaves £32.60, £15.65 for each hour from door to door.",
      // 6 × 8.00 − 31.40 and 10 × 8.00 − 31.40
      "How many come is a guess: with 6 it would be £16.60, with 10 £48.60.",
      "With preparation, messages and its share of fixed costs counted, an hour of your time brings £10.64 before tax.",
      "With all 16 places taken an evening leaves £96.60.",
    ],
  });
  // 4 × 32.60 + 3 × (32.60 − 3.00 heating) − 42.00 = 177.20
  // with 2 fewer or more on 7 evenings 7 × 2 × 8.00 = 112.00 less or more
  expect(year.kind === "ready" && year.says.slice(0, 4)).toEqual([
    "A year of 7 evenings from 8 September 2026 to 27 October 2026 leaves £177.20 after £42.00 of fixed costs.",
    "How many come is a guess: with 6 it would be £65.20, with 10 £289.20.",
    "Over the year an evening costs from £31.40 to £34.40.",
    "1 date is lost: half-term 1.",
  ]);
});

test("the table over heads runs to the places there are and marks its three heads", () => {
  const { ordinary } = sheet();
  const rows = ordinary.kind === "ready" ? ordinary.rows : [];
  expect(rows.length).toBe(17);
  expect(rows.filter(({ marks }) => marks.length > 0)).toEqual([
    { heads: 4, takings: "£32.80", leaves: "£0.60", amount: 0.6, marks: ["pays for the room"] },
    { heads: 8, takings: "£65.60", leaves: "£32.60", amount: 32.6, marks: ["ordinary evening"] },
    { heads: 16, takings: "£131.20", leaves: "£96.60", amount: 96.6, marks: ["full"] },
  ]);
});

test("while nobody knows the room the table runs to 20, or as far as the ordinary evening, 60 at most", () => {
  const lengths = [8, 30.4, 500].map((heads) => {
    const { ordinary } = sheet({ plan: null, capacity: null, document: { ...tuesdays, heads } });
    return ordinary.kind === "ready" ? ordinary.rows.length : 0;
  });
  expect(lengths).toEqual([21, 31, 61]);
});

test("an hour that brings nothing is said without a loss, one that costs her as a cost", () => {
  // perHead 8.20 leaves nothing a head: −31.40 and the share of 42 ÷ 7 for 150 min: −14.96 an hour
  const costs = { ...tuesdays.costs, perHead: "8.20" };
  const hours = [quayStreet.hire, { ...quayStreet.hire, perHour: "0", heating: undefined }].map((hire) => {
    const hall = hallDocumentSchema.parse({ ...quayStreet, hire });
    const free = { ...costs, travel: hire?.perHour === "0" ? "0" : "3.40" };
    const year = { ...tuesdays.year, fixedPerYear: hire?.perHour === "0" ? "0" : "42.00" };
    const { ordinary } = sheet({ hall, document: { ...tuesdays, costs: free, year } });
    return ordinary.kind === "ready" ? ordinary.says.at(-2) : undefined;
  });
  expect(hours).toEqual([
    "With preparation, messages and its share of fixed costs counted, each hour of your time costs you £14.96.",
    "With preparation, messages and its share of fixed costs counted, an hour of your time brings £0.00 before tax.",
  ]);
});

test("the months of the year and its lost dates are there to be laid out", () => {
  const { year } = sheet();
  expect(year).toMatchObject({
    sessions: 7,
    months: [
      { month: "September 2026", sessions: 4, hire: "£112.00", leaves: "£130.40" },
      { month: "October 2026", sessions: 3, hire: "£93.00", leaves: "£88.80" },
    ],
    lost: [{ date: "2026-10-27", says: "27 October 2026: half-term" }],
  });
});

test("without a hall every part of the money says what is missing and what to do", () => {
  const { heading, mats, evening, prices, ordinary, year } = sheet({
    hall: null,
    plan: null,
    capacity: null,
  });
  expect(heading).toBe("Choose a hall and enter what it charges to see how many people pay for the room.");
  expect(mats.kind).toBe("missing");
  for (const part of [evening, prices, ordinary, year]) {
    expect(part).toEqual({
      kind: "missing",
      says: "No hall is chosen yet, so what an evening costs is not known.",
      next: "Choose a hall.",
    });
  }
});

test("a class in the United States begins by a clock of twelve hours", () => {
  expect(sheet({ practice: { currency: "USD", locale: "en-US" } }).when).toBe(
    "Tuesdays at 6:30 pm, 60 minutes.",
  );
});

test("a hall without terms still says how many mats fit", () => {
  const { hire: _, ...bare } = quayStreet;
  const { heading, mats, evening } = sheet({ hall: bare });
  expect(heading).toBe("16 mats fit; the hall’s own limit is 60.");
  expect(mats).toMatchObject({ kind: "ready", capacity: sixteen });
  expect(evening).toMatchObject({
    kind: "missing",
    says: "What Quay Street Mission Room charges is not known yet.",
  });
});

test("a half-typed mix hides what rests on it and nothing else", () => {
  const { evening, prices, ordinary, year } = sheet({ document: { ...tuesdays, mix: { single: 0.4 } } });
  expect(evening).toMatchObject({ kind: "ready", chargedMinutes: 120 });
  for (const part of [prices, ordinary, year]) {
    expect(part).toMatchObject({ kind: "unsound", problems: [{ code: "mix-not-one", place: "mix" }] });
  }
});

test("a half-typed closure hides the year and nothing else", () => {
  const closures = [{ from: "2026-10-2", until: "2026-10-30", why: "half-term" }];
  const { evening, prices, year } = sheet({
    document: { ...tuesdays, year: { ...tuesdays.year, closures } },
  });
  expect([evening.kind, prices.kind]).toEqual(["ready", "ready"]);
  expect(year).toMatchObject({
    kind: "unsound",
    problems: [{ code: "date-unreadable", place: "year.closures[0].from" }],
  });
});

test("more people than places, at the break-even and on an ordinary evening, is said", () => {
  const three = { capacity: 3, limitedBy: ["own cap"], sentence: "3 people, your own limit." } as const;
  const { prices, ordinary } = sheet({ capacity: three });
  expect(prices.kind === "ready" && prices.says[1]).toBe("That is more than there is room for: 3.");
  expect(ordinary.kind === "ready" && ordinary.says.at(-1)).toBe(
    "8 people are more than there is room for: 3.",
  );
});

test("an ordinary evening that fills the room is not more than there is room for", () => {
  const eight = { capacity: 8, limitedBy: ["own cap"], sentence: "8 people, your own limit." } as const;
  const { ordinary } = sheet({ capacity: eight });
  expect(ordinary.kind === "ready" && ordinary.says.at(-1)).toBe(
    "With all 8 places taken an evening leaves £32.60.",
  );
  const rows = ordinary.kind === "ready" ? ordinary.rows : [];
  expect(rows.at(-1)?.marks).toEqual(["ordinary evening", "full"]);
});

test("a full room that just pays leaves nothing, and one coin dearer is short", () => {
  // 8 × 8.00 = 64.00 = 28.00 hall + 36.00 travel
  const eight = { capacity: 8, limitedBy: ["own cap"], sentence: "8 people, your own limit." } as const;
  const last = ["36.00", "36.01"].map((travel) => {
    const document = { ...tuesdays, costs: { ...tuesdays.costs, travel } };
    const { ordinary } = sheet({ capacity: eight, document });
    return ordinary.kind === "ready" ? ordinary.says.at(-1) : undefined;
  });
  expect(last).toEqual([
    "With all 8 places taken an evening leaves £0.00.",
    "Even with all 8 places taken an evening is £0.01 short.",
  ]);
});

test("a price below the cost per head says never in the heading and why in its part", () => {
  const { heading, prices } = sheet({
    document: { ...tuesdays, costs: { ...tuesdays.costs, perHead: "9.00" } },
  });
  expect(heading).toContain("at these prices nobody ever pays for the room");
  // 8.20 − 9.00 is below nought
  expect(prices.kind === "ready" && prices.says[0]).toContain(
    "one person brings £8.20 on average and costs £9.00",
  );
});

test("in dollars the sheet speaks of rental and writes dates the other way", () => {
  const { evening } = sheet({
    practice: { currency: "USD", locale: "en-US" },
    money: (exact) => `$${(exact.valueOf() / 100).toFixed(2)}`,
  });
  expect(evening.kind === "ready" && evening.says).toEqual([
    "An evening costs $31.40, of which $28.00 is for 120 charged minutes of rental.",
    "That is the evening of September 22, 2026; heating, weekends and new rates change it.",
  ]);
});

test("a hall in another currency than the practice is a problem in every part of the money", () => {
  const { evening, year } = sheet({ hall: { ...quayStreet, currency: "EUR" } });
  for (const part of [evening, year]) {
    expect(part).toMatchObject({ kind: "unsound", problems: [{ code: "currency-differs" }] });
  }
});

test("a year that comes out level leaves nothing, and one below it is short", () => {
  // the evenings leave 4 × 32.60 + 3 × 29.60 = 219.20
  const [level, short] = ["219.20", "219.21"].map(
    (fixedPerYear) => sheet({ document: { ...tuesdays, year: { ...tuesdays.year, fixedPerYear } } }).year,
  );
  expect(level?.kind === "ready" && level.says[0]).toContain("leaves £0.00 after £219.20 of fixed costs.");
  expect(short?.kind === "ready" && short.says[0]).toContain("is £0.01 short after £219.21 of fixed costs.");
});

test("a known number of people has no range", () => {
  const { ordinary } = sheet({ document: { ...tuesdays, guesses: [] } });
  expect(ordinary).toMatchObject({ restsOn: "", guessNames: [] });
  expect(ordinary.kind === "ready" && ordinary.says.join(" ")).not.toContain("guess");
});

test("hours a year that nobody stated are said where a volume band goes by them", () => {
  const bands = [{ fromHoursPerYear: 10, factor: 0.5 }];
  const banded = hallDocumentSchema.parse({ ...quayStreet, hire: { ...quayStreet.hire, bands } });
  const { evening } = sheet({ hall: banded });
  // 7 evenings × 2 h = 14 h, over 10: half of 28.00
  expect(evening.kind === "ready" && [evening.says[0], evening.says[2]]).toEqual([
    "An evening costs £17.40, of which £14.00 is for 120 charged minutes of hire.",
    "The hall’s volume bands go by 14 hours a year, which are the 7 evenings of this class; " +
      "enter your hours in the hall’s terms if you hire it for more.",
  ]);
});
