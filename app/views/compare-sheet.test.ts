import { type ClassDocument, classDocumentSchema } from "#core/class";
import { type HallDocument, hallDocumentSchema } from "#core/hall";
import { expect, test } from "vitest";
import { type CompareSheetInput, compareSheet } from "./compare-sheet.ts";

const tuesdays: ClassDocument = classDocumentSchema.parse({
  name: "Tuesday evening",
  hall: "barn",
  weekday: 2,
  start: "18:30",
  minutes: { setUp: 20, class: 60, packDown: 10, travel: 30, preparation: 0, admin: 0 },
  costs: { travel: "2.00", music: "0.50", cover: "0", other: "0.50", perHead: "0" },
  prices: { single: "10.00", passes: [] },
  mix: { single: 1 },
  heads: 10,
  // ten Tuesdays
  year: { from: "2027-01-05", until: "2027-03-09", closures: [], fixedPerYear: "0" },
  // always the same number, so that the sums below are plain
  planning: { dispersion: 0 },
  guesses: ["heads"],
});

function hall(name: string, perSession: string): HallDocument {
  return hallDocumentSchema.parse({
    name,
    outline: [
      [0, 0],
      [8, 0],
      [8, 12],
      [0, 12],
    ],
    mat: { length: 1.8, width: 0.61 },
    gaps: { side: 0.5, end: 0.3, wall: 0.5 },
    hire: { perSession },
  });
}

const inLines = (capacity: number) => [{ arrangement: "lines", capacity }] as const;

const barn = { id: "barn", document: hall("Barn", "27.00"), ways: inLines(30) };
const quay = { id: "quay", document: hall("Quay", "37.00"), ways: inLines(40) };

const whole: CompareSheetInput = {
  practice: { currency: "GBP", locale: "en-GB" },
  document: tuesdays,
  halls: [quay, barn],
  by: "year",
  money: (exact) => `£${(exact.valueOf() / 100).toFixed(2)}`,
};

function sheet(change: Partial<CompareSheetInput> = {}) {
  return compareSheet({ ...whole, ...change });
}

function ready(change: Partial<CompareSheetInput> = {}) {
  const seen = sheet(change);
  if (seen.kind !== "ready") throw new Error(JSON.stringify(seen));
  return seen;
}

test("each hall is worked out a session, a year and an hour, from the one that leaves most", () => {
  // 10 × 10.00 − 27.00 − 2.00 travel − 1.00 = 70.00; ten sessions; 70.00 ÷ 120 min × 60 = 35.00
  const { expected } = ready();
  expect(expected.map((row) => [row.hall, ...row.figures.map(({ says }) => says)])).toEqual([
    ["Barn", "£70.00", "£700.00", "£35.00"],
    ["Quay", "£60.00", "£600.00", "£30.00"],
  ]);
  expect(expected[0]?.figures.every(({ most }) => most)).toBe(true);
});

test("when every place is taken the larger hall comes first, and that is told", () => {
  // 30 × 10.00 − 30.00 = 270.00 against 40 × 10.00 − 40.00 = 360.00
  const { full, says } = ready();
  expect(full.map((row) => [row.hall, row.figures[0]?.says])).toEqual([
    ["Quay", "£360.00"],
    ["Barn", "£270.00"],
  ]);
  expect(says.some((it) => it.includes("but when both are full Quay leaves £90.00 more"))).toBe(true);
});

test("every figure opens into a sum that adds up", () => {
  const { expected, full } = ready();
  for (const { figures } of [...expected, ...full]) {
    for (const { by, working } of figures) {
      const [left, cost, session] = working.map(({ amount }) => Number(amount));
      expect(session).toBeCloseTo((left ?? 0) - (cost ?? 0), 9);
      expect(working.length).toBe(by === "session" ? 3 : 4);
    }
  }
});

test("the way to a hall and its closures are those planned for it, and a way that nobody stated is a guess", () => {
  const planning = {
    dispersion: 0,
    halls: {
      quay: {
        travelMinutes: 90,
        closures: [{ from: "2027-02-01", until: "2027-02-14", why: "floor" }],
      },
    },
  };
  const { expected, changes } = ready({ document: { ...tuesdays, planning } });
  // two of ten Tuesdays are closed: 8 × 60.00; 60.00 ÷ 180 min × 60
  expect(expected[1]?.figures.map(({ says }) => says)).toEqual(["£60.00", "£480.00", "£20.00"]);
  expect(changes.filter(({ key }) => key.endsWith("travelMinutes")).map(({ guess }) => guess)).toEqual([
    false,
    false,
  ]);
  const unstated = ready().changes.filter(({ key }) => key === "halls[0].travelMinutes");
  expect(unstated.map(({ guess }) => guess)).toEqual([true]);
});

test("free hours that do not hold the evening leave a hall out and say why", () => {
  const free = [{ weekday: 2, from: "18:30", until: "22:00" }];
  const { expected, says } = ready({
    document: { ...tuesdays, planning: { dispersion: 0, halls: { quay: { free } } } },
  });
  expect(expected.map((row) => row.hall)).toEqual(["Barn"]);
  // set-up of 20 minutes begins at 18:10
  expect(
    says.some((it) => it.startsWith("Quay is left out: it is not free on") && it.includes("18:10")),
  ).toBe(true);
});

test("a hall without a price, in another currency, too small or badly drawn is left out alone", () => {
  const { hire: _, ...unpriced } = quay.document;
  const others = [
    barn,
    { id: "a", document: { ...unpriced, name: "A" }, ways: inLines(20) },
    { id: "b", document: { ...quay.document, name: "B", currency: "USD" }, ways: inLines(20) },
    { id: "c", document: { ...quay.document, name: "C" }, ways: inLines(0) },
    { id: "d", document: { ...quay.document, name: "D" }, ways: null },
    { id: "e", document: hall("E", "much"), ways: inLines(20) },
  ];
  const { expected, says } = ready({ halls: others });
  expect(expected.map((row) => row.hall)).toEqual(["Barn"]);
  expect(says.flatMap((it) => /^(\w) is left out: .{12}/.exec(it)?.[0] ?? [])).toEqual([
    "A is left out: what it char",
    "B is left out: it charges i",
    "C is left out: nobody on a ",
    "D is left out: its floor is",
    "E is left out: “much” is no",
  ]);
});

test("other times and other ways for the mats are compared beside the class’s own, each once", () => {
  const planning = {
    dispersion: 0,
    slots: [
      { weekday: 4, start: "18:30" },
      { weekday: 2, start: "18:30" },
    ],
    halls: { quay: { terms: [{ from: "2027-01-05", until: "2027-01-31" }] } },
  };
  const ways = [
    { arrangement: "lines", capacity: 30 },
    { arrangement: "round", capacity: 8 },
    { arrangement: "facing", capacity: 0 },
  ] as const;
  const { expected, says } = ready({
    document: { ...tuesdays, planning },
    halls: [{ ...barn, ways }, quay],
  });
  // Tuesdays 5 January to 9 March are 10, Thursdays 7 January to 4 March 9; four of each lie in January
  expect(expected.map(({ hall, about }) => `${hall}: ${about}`)).toEqual([
    "Barn (in lines, Tuesday 18:30): 10 people of 30 places, 10 evenings",
    "Barn (in lines, Thursday 18:30): 10 people of 30 places, 9 evenings",
    "Barn (in rings, Tuesday 18:30): 8 people of 8 places, 10 evenings",
    "Barn (in rings, Thursday 18:30): 8 people of 8 places, 9 evenings",
    "Quay (Tuesday 18:30): 10 people of 40 places, 4 evenings",
    "Quay (Thursday 18:30): 10 people of 40 places, 4 evenings",
  ]);
  expect(says).toContain("Barn (in two banks) is left out: nobody on a mat fits in it so.");
  const year = expected.at(-1)?.figures.find(({ by }) => by === "year");
  expect(year?.working.at(-1)?.sum).toBe("4 of 9 dates; lost: 5 to days outside its terms");
});

test("two halls of one name are told apart", () => {
  const { expected } = ready({ halls: [barn, { ...barn, id: "other" }] });
  expect(expected.map((row) => row.hall)).toEqual(["Barn (1)", "Barn (2)"]);
});

test("nothing to compare and a class that cannot be used are told in words", () => {
  expect(sheet({ halls: [] })).toMatchObject({ kind: "missing" });
  expect(sheet({ halls: [{ ...barn, ways: null }] })).toMatchObject({ kind: "missing" });
  const unsound = sheet({ document: { ...tuesdays, mix: { single: 0.4 } } });
  expect(unsound.kind === "unsound" && unsound.problems.map(({ code }) => code)).toEqual(["mix-not-one"]);
});
