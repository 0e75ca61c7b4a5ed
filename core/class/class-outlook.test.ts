import { currencyCodes } from "#core/words";
import { expect, test } from "vitest";
import { classDocumentSchema } from "./class-document.ts";
import { emptyClass } from "./empty-class.ts";
import { nextSession } from "./next-session.ts";
import { isOutlookGuess, outlookFigure, outlookFigureAt, withOutlookFigure } from "./outlook-figures.ts";
import { readClass } from "./read-class.ts";

const marlsford = { currency: "GBP", locale: "en-GB" } as const;
const begun = emptyClass({ practice: marlsford, today: "2026-07-20" });

function problemsOf(outlook: object): readonly string[] {
  const read = readClass({ ...begun, outlook });
  return read.ok ? [] : read.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("CLASS-16 a class from before there was an outlook reads as it did, with nothing added", () => {
  expect("outlook" in begun).toBe(false);
  expect(classDocumentSchema.parse(begun)).toEqual(begun);
  const empty = { ...begun, outlook: {} };
  expect(classDocumentSchema.parse(empty)).toEqual(empty);
  expect(outlookFigure(begun, "opening.turnUp")).toBe(0.6);
  expect(outlookFigure(begun, "notice.days")).toBe(28);
});

test("CLASS-16 a figure that nobody entered is a guess until it is written down as known", () => {
  expect(isOutlookGuess(begun, "roll.stays")).toBe(true);
  const known = withOutlookFigure(begun, "roll.stays", 0.5);
  expect(known.outlook).toEqual({ roll: { stays: 0.5 } });
  expect(isOutlookGuess(known, "roll.stays")).toBe(false);
  expect(isOutlookGuess({ ...known, guesses: ["outlook.roll.stays"] }, "roll.stays")).toBe(true);
  expect(outlookFigureAt("outlook.roll.stays")).toBe("roll.stays");
  expect(outlookFigureAt("outlook.season")).toBe(null);
});

test("CLASS-16 what is wrong with an outlook is told at once, at its place", () => {
  expect(
    problemsOf({
      roll: { newcomers: -1, stays: 40, attends: 0.65, leaves: 0 },
      regulars: 2.5,
      season: [1, 1],
      notice: { days: -3, dates: ["soon"], otherUse: "much" },
      full: { extraMats: 1.5, biggerHall: { capacity: 0, extraCost: "1.00" } },
      evening: { expected: -2, cancelling: "-1", fee: "free" },
      opening: { turnUp: 60, risk: 5, happened: { accepted: 10, came: 12 } },
    }).toSorted(),
  ).toEqual([
    "came-more-than-accepted at outlook.opening.happened.came",
    "count-not-whole at outlook.full.extraMats",
    "count-not-whole at outlook.regulars",
    "count-out-of-range at outlook.full.biggerHall.capacity",
    "count-out-of-range at outlook.notice.days",
    "date-unreadable at outlook.notice.dates[0]",
    "mean-out-of-range at outlook.evening.expected",
    "mean-out-of-range at outlook.roll.newcomers",
    "money-negative at outlook.evening.cancelling",
    "money-unreadable at outlook.evening.fee",
    "money-unreadable at outlook.notice.otherUse",
    "risk-out-of-range at outlook.opening.risk",
    "season-not-twelve at outlook.season",
    "share-certain at outlook.roll.leaves",
    "share-certain at outlook.roll.stays",
    "share-out-of-range at outlook.opening.turnUp",
  ]);
});

test("CLASS-16 a sound outlook is sound in every currency we know", () => {
  const outlook = {
    roll: { newcomers: 2 },
    notice: { days: 28, dates: ["2027-01-12"], otherUse: "5", exitCost: "40" },
    evening: { booked: 3, fee: "35", cancelling: "10" },
    opening: { pairs: 3, costs: { turnedAway: "10", emptyMat: "2" } },
  };
  for (const currency of currencyCodes()) {
    const read = readClass(
      { ...emptyClass({ practice: { currency, locale: "en-GB" }, today: "2026-11-25" }), outlook },
      currency,
    );
    expect(read.ok || read.problems).toBe(true);
  }
});

test("CLASS-17 the next session to write down is on the next teaching date; a closed one is never offered", () => {
  // Tuesdays of a year from September 2026 on, 27 October closed
  const year = {
    from: "2026-09-01",
    until: "2027-07-20",
    closures: [{ from: "2026-10-26", until: "2026-10-30", why: "half-term" }],
    fixedPerYear: "much",
  };
  const tuesdays = { weekday: 2, year };
  expect(nextSession(tuesdays, ["2026-10-20", "2026-10-13"], "2026-11-25")).toBe("2026-11-03");
  expect(nextSession(tuesdays, [], "2026-11-25")).toBe("2026-11-24");
  expect(nextSession(tuesdays, [], "2026-08-01")).toBe("2026-09-01");
  expect(nextSession(tuesdays, ["2027-07-20"], "2027-08-01")).toBe("2027-07-27");
  expect(nextSession({ weekday: 9, year }, [], "2026-11-25")).toBe("2026-11-25");
  expect(() => nextSession(tuesdays, [], "soon")).toThrow("not a date");
});
