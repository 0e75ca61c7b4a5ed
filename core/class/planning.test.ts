import { expect, test } from "vitest";
import { classDocumentSchema } from "./class-document.ts";
import { emptyClass } from "./empty-class.ts";
import { isPlanningGuess, planningOf, withFigure } from "./planning-of.ts";
import { readClass } from "./read-class.ts";

const marlsford = { currency: "GBP", locale: "en-GB" } as const;
const begun = emptyClass({ practice: marlsford, today: "2026-07-20" });

function problemsOf(planning: object): readonly string[] {
  const read = readClass({ ...begun, planning });
  return read.ok ? [] : read.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("CLASS-13 a class from before there was a planning reads as it did, with nothing added", () => {
  expect("planning" in begun).toBe(false);
  expect(classDocumentSchema.parse(begun)).toEqual(begun);
  expect(planningOf(begun)).toEqual({ attendance: 0.6, confidence: 0.85, dispersion: 1.5, termEvenings: 12 });
});

test("CLASS-13 a figure that nobody entered is a guess until it is written down as known", () => {
  expect(isPlanningGuess(begun, "attendance")).toBe(true);
  const known = withFigure(begun, "attendance");
  expect(known.planning).toEqual({ attendance: 0.6 });
  expect(isPlanningGuess(known, "attendance")).toBe(false);
  expect(isPlanningGuess({ ...known, guesses: ["planning.attendance"] }, "attendance")).toBe(true);
});

test("CLASS-13 every unsound figure of a planning is told at once, at its place", () => {
  expect(
    problemsOf({
      attendance: 60,
      confidence: 1,
      dispersion: 0.5,
      termEvenings: 0,
      beliefs: [
        { price: "eight", heads: 12 },
        { price: "12.00", heads: -1 },
      ],
      live: [{ price: "82.00", classes: 10, passes: 2, left: 21 }],
      slots: [{ weekday: 0, start: "late" }],
      rise: "a bit",
      target: { perHour: "-1.00", taxShare: 1 },
      survey: "x".repeat(20_001),
      studio: { pay: { form: "flat", pay: "thirty" }, heads: 12, minutes: 0 },
    }),
  ).toEqual([
    "attendance-out-of-range at planning.attendance",
    "confidence-out-of-range at planning.confidence",
    "dispersion-out-of-range at planning.dispersion",
    "sessions-out-of-range at planning.termEvenings",
    "money-unreadable at planning.beliefs[0].price",
    "heads-out-of-range at planning.beliefs[1].heads",
    "money-unreadable at planning.rise",
    "money-negative at planning.target.perHour",
    "share-out-of-range at planning.target.taxShare",
    "survey-too-long at planning.survey",
    "pass-left-out-of-range at planning.live[0].left",
    "class-weekday at planning.slots[0].weekday",
    "time-unreadable at planning.slots[0].start",
    "money-unreadable at planning.studio.pay.pay",
    "minutes-out-of-range at planning.studio.minutes",
  ]);
});

test("CLASS-13 a planning that is left out in part is sound", () => {
  expect(problemsOf({})).toEqual([]);
  expect(problemsOf({ attendance: 0.7 })).toEqual([]);
  expect(problemsOf({ beliefs: [{ price: "8.00", heads: 14 }] })).toEqual([]);
});

test("CLASS-13 what is planned of a hall is looked at in every part", () => {
  const quay = {
    travelMinutes: -5,
    travelCost: "two",
    free: [
      { weekday: 8, from: "18:00", until: "22:00" },
      { weekday: 2, from: "half six", until: "22:00" },
      { weekday: 2, from: "22:00", until: "18:00" },
    ],
    terms: [
      { from: "2027-09-31", until: "2027-12-18" },
      { from: "2027-12-18", until: "2027-09-01" },
    ],
    closures: [
      { from: "2027-02-30", until: "2027-03-02", why: "floor" },
      { from: "2027-03-02", until: "2027-03-01", why: "floor" },
    ],
  };
  expect(problemsOf({ halls: { "quay-street": quay } })).toEqual([
    "minutes-out-of-range at planning.halls.quay-street.travelMinutes",
    "money-unreadable at planning.halls.quay-street.travelCost",
    "class-weekday at planning.halls.quay-street.free[0].weekday",
    "time-unreadable at planning.halls.quay-street.free[1].from",
    "free-hours-backwards at planning.halls.quay-street.free[2]",
    "date-unreadable at planning.halls.quay-street.terms[0].from",
    "span-backwards at planning.halls.quay-street.terms[1]",
    "date-unreadable at planning.halls.quay-street.closures[0].from",
    "closure-backwards at planning.halls.quay-street.closures[1]",
  ]);
  expect(problemsOf({ halls: { "quay-street": {} } })).toEqual([]);
});
