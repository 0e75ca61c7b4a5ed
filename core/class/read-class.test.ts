import { easterSunday } from "#kernels/calendar";
import { currencyCodes, type PracticeDocument } from "#core/words";
import { expect, test } from "vitest";
import { emptyClass } from "./empty-class.ts";
import { guessName } from "./guess-names.ts";
import { guessesBehind, guessesSentence, isGuess, markGuess, markKnown } from "./guesses.ts";
import { headsRange } from "./heads-range.ts";
import { readClass } from "./read-class.ts";

const marlsford = { currency: "GBP", locale: "en-GB" } as const satisfies Partial<PracticeDocument>;
const cedarFork = { currency: "USD", locale: "en-US" } as const satisfies Partial<PracticeDocument>;

const begun = emptyClass({ practice: marlsford, today: "2026-07-20" });

function problemsOf(change: object): readonly string[] {
  const read = readClass({ ...begun, ...change });
  return read.ok ? [] : read.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("CLASS-1 the class that a sheet begins with is sound in every currency we know", () => {
  for (const currency of currencyCodes()) {
    for (const locale of ["en-GB", "en-US"] as const) {
      const read = readClass(emptyClass({ practice: { currency, locale }, today: "2026-11-25" }), currency);
      expect(read.ok || read.problems).toBe(true);
    }
  }
});

test("CLASS-1 every unsound field of a class is told at once, at its place", () => {
  expect(
    problemsOf({
      name: "  ",
      weekday: 0,
      start: "7pm",
      minutes: { ...begun.minutes, class: 0, admin: -1 },
      mats: { mat: { length: 18, width: 0.6 }, gaps: { side: -0.1, end: 0.3, wall: 0.5 } },
      matsOwned: 3.5,
      ownCap: -1,
      insurerCap: 2000,
      costs: { ...begun.costs, music: "-2" },
      mix: { single: 0.5 },
      heads: 1001,
      year: { ...begun.year, fixedPerYear: "much" },
    }),
  ).toEqual([
    "class-name-missing at name",
    "class-weekday at weekday",
    "time-unreadable at start",
    "minutes-out-of-range at minutes.class",
    "minutes-out-of-range at minutes.admin",
    "mat-size-absurd at mats.mat.length",
    "mat-size-absurd at mats.gaps.side",
    "places-out-of-range at matsOwned",
    "places-out-of-range at ownCap",
    "places-out-of-range at insurerCap",
    "money-negative at costs.music",
    "mix-not-one at mix",
    "heads-out-of-range at heads",
    "money-unreadable at year.fixedPerYear",
  ]);
});

const inYear = (change: object): readonly string[] =>
  problemsOf({ year: { ...begun.year, closures: [], ...change } });

test("CLASS-2 a year runs forwards, for two years at most, and each closure says why", () => {
  expect(inYear({ from: "2026-09-08", until: "2026-09-07" })).toEqual(["year-backwards at year.until"]);
  expect(inYear({ from: "2026-09-08", until: "2028-09-08" })).toEqual(["year-too-long at year.until"]);
  expect(inYear({ from: "2026-09-08", until: "2028-09-07" })).toEqual([]);
  expect(inYear({ closures: [{ from: "2027-05-06", until: "2027-05-06", why: "election" }] })).toEqual([]);
  expect(inYear({ from: "2026-09-31" })).toEqual(["date-unreadable at year.from"]);
  expect(
    inYear({
      closures: [
        { from: "2026-12-21", until: "2026-12-20", why: "Christmas" },
        { from: "2027-02-15", until: "2027-02-15", why: " " },
      ],
    }),
  ).toEqual([
    "closure-backwards at year.closures[0].until",
    "closure-without-reason at year.closures[1].why",
  ]);
});

test("CLASS-1 there may be no mats at all, and a thousand, and no limit", () => {
  expect(problemsOf({ matsOwned: 0, ownCap: 1000, insurerCap: null })).toEqual([]);
});

test("CLASS-1 mats may stand without gaps, and be as small as a cushion", () => {
  const mats = { mat: { length: 0.1, width: 5 }, gaps: { side: 0, end: 0, wall: 10 } };
  expect(problemsOf({ mats })).toEqual([]);
});

test("CLASS-1 an ordinary evening may be a mean", () => {
  expect(problemsOf({ heads: 9.5 })).toEqual([]);
});

test("CLASS-1 amounts have the decimals of the practice's currency", () => {
  const yen = { ...begun, costs: { ...begun.costs, travel: "300.50", perHead: "20" } };
  expect(
    readClass(
      yen,
      currencyCodes().find((code) => code === "JPY"),
    ),
  ).toMatchObject({
    ok: false,
    problems: [{ code: "money-too-fine", place: "costs.travel" }],
  });
});

test("CLASS-10 a new class marks as a guess every figure that it brings along", () => {
  const figures = ["weekday", "start", "mix", "heads", "minutes.class", "costs.perHead", "prices.single"];
  for (const path of [...figures, "year.closures[2].from", "mix.free", "prices.passes[0].price"]) {
    expect(isGuess(begun, path)).toBe(true);
  }
  expect(["name", "whoFor", "hall", "ownCap"].filter((path) => isGuess(begun, path))).toEqual([]);
});

const firstDay = (today: string): string => emptyClass({ practice: marlsford, today }).year.from;

test("CLASS-10 a teaching year from June on is the coming one, and before it the running one", () => {
  // first Mondays of September: 1 in 2025, 7 in 2026; a week later she begins
  expect([firstDay("2026-05-31"), firstDay("2026-06-01"), firstDay("2026-11-25")]).toEqual([
    "2025-09-08",
    "2026-09-14",
    "2026-09-14",
  ]);
});

test("CLASS-10 the breaks of 2026/27 fall about Easter on 28 March and Thanksgiving on 26 November", () => {
  expect(begun.year.closures).toContainEqual({ from: "2027-03-22", until: "2027-04-04", why: "Easter" });
  const { closures } = emptyClass({ practice: cedarFork, today: "2026-07-20" }).year;
  expect(closures).toContainEqual({ from: "2026-11-23", until: "2026-11-29", why: "Thanksgiving" });
});

test("CLASS-11 a part that is marked known takes its whole off the list, and a guess is listed once", () => {
  const known = markKnown(markKnown(begun, "mix.free"), "prices.single");
  expect([isGuess(known, "mix"), isGuess(known, "prices.single"), isGuess(known, "prices.passes")]).toEqual([
    false,
    false,
    true,
  ]);
  expect(
    markGuess(markGuess(known, "mix"), "mix.free").guesses.filter((path) => path.startsWith("mix")),
  ).toEqual(["mix"]);
});

test("CLASS-11 an answer rests only on the guesses that go into it", () => {
  const document = {
    guesses: ["heads", "minutes.setUp", "mix", "year.closures", "minutes.admin", "hire.perHour"],
  };
  expect(guessesBehind(document, "evening cost")).toEqual(["minutes.setUp", "hire.perHour"]);
  expect(guessesBehind(document, "break-even")).toEqual(["minutes.setUp", "mix", "hire.perHour"]);
  expect(guessesBehind(document, "ordinary evening")).toEqual([
    "heads",
    "minutes.setUp",
    "mix",
    "hire.perHour",
  ]);
  expect(guessesBehind(document, "year")).toEqual([
    "heads",
    "minutes.setUp",
    "mix",
    "year.closures",
    "hire.perHour",
  ]);
  expect([guessesSentence(0), guessesSentence(1), guessesSentence(4)]).toEqual([
    "",
    "Rests on 1 guess.",
    "Rests on 4 guesses.",
  ]);
});

test("Easter falls on its date", () => {
  // 2026: bank holidays Good Friday 3 April and Easter Monday 6 April; 2027: 26 and 29 March
  expect(easterSunday(2026).toString()).toBe("2026-04-05");
  expect(easterSunday(2027).toString()).toBe("2027-03-28");
});

test("CLASS-11 every guess of a new class has a name of its own, and a part the name of its whole", () => {
  const named = begun.guesses.map((path) => guessName(path, "en-GB"));
  expect(named.filter((name, index) => name === begun.guesses[index])).toEqual([]);
  expect(new Set(named).size).toBe(begun.guesses.length);
  expect(
    ["mix.pass-10", "year.closures[2].from", "prices.passes[0].price"].map((path) =>
      guessName(path, "en-GB"),
    ),
  ).toEqual(["who pays in which way", "the closures", "the prices of passes"]);
  expect([guessName("hire.perHour", "en-US"), guessName("somewhere", "en-GB")]).toEqual([
    "the terms of the rental",
    "somewhere",
  ]);
});

test("CLASS-11 a guessed number of people ranges a quarter either way, no further than there is room", () => {
  // 8 − 2 and 8 + 2; 0.75 × 9.5 = 7.125 down to 7, 1.25 × 9.5 = 11.875 up to 12
  expect([headsRange(begun, null), headsRange(begun, 9), headsRange({ ...begun, heads: 9.5 }, null)]).toEqual(
    [
      [6, 10],
      [6, 9],
      [7, 12],
    ],
  );
  const none = [
    headsRange(markKnown(begun, "heads"), null),
    headsRange(begun, 6),
    headsRange({ ...begun, heads: 0 }, null),
  ];
  expect(none).toEqual([null, null, null]);
});
