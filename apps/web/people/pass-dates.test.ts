import { type ClassDocument, emptyClass } from "#core/class";
import { expect, test } from "vitest";
import { passDates, useByFound } from "./pass-dates.ts";

const tuesday = running(2);
const thursday = running(4);
const classes = [
  { id: "tuesday", document: tuesday },
  { id: "thursday", document: thursday },
];

test("a pass for one class counts its dates, without the closed ones and those that are over", () => {
  // Tuesdays of December 2026 from the 8th: 8, 15, 22, 29; the 22nd is closed
  expect(passDates(["tuesday"], classes, "2026-12-02")).toEqual(["2026-12-08", "2026-12-15", "2026-12-29"]);
});

test("a pass for several classes counts weeks, by the last date in each", () => {
  // weeks of 30 November, 7, 14, 21 and 28 December: the Thursday of each, and of the closed week the 24th
  expect(passDates("all", classes)).toEqual([
    "2026-12-03",
    "2026-12-10",
    "2026-12-17",
    "2026-12-24",
    "2026-12-31",
  ]);
});

test("the use-by is the date so many teaching weeks on, and dates that are not planned are called a guess", () => {
  const dates = passDates(["tuesday"], classes, "2026-12-02");
  const ask = { dates, weeks: 3, sold: "2026-12-02" };
  const found = useByFound(ask, (day) => day);
  expect(found.ok && found.value.date).toBe("2026-12-29");
  expect(found.ok && found.value.working.at(-1)).toEqual({
    label: "Teaching date 3",
    sum: "the last day of the pass",
    amount: "2026-12-29",
    total: true,
  });
  // two weeks beyond 29 December
  const later = useByFound({ ...ask, weeks: 5 }, (day) => day);
  expect(later.ok && later.value.date).toBe("2027-01-12");
  expect(later.ok && later.value.working.some(({ sum, amount }) => sum === "a guess" && amount === "2")).toBe(
    true,
  );
});

test("where no class runs at all it is a problem, in words", () => {
  const found = useByFound({ dates: passDates([], classes), weeks: 3, sold: "2026-12-02" }, (day) => day);
  expect(found.ok ? [] : found.problems.map(({ code }) => code)).toEqual(["use-by-no-dates"]);
});

/** A class on one weekday of December 2026, closed on Tuesday the 22nd. */
function running(weekday: number): ClassDocument {
  const practice = { currency: "GBP", locale: "en-GB" } as const;
  const closures = [{ from: "2026-12-22", until: "2026-12-22", why: "panto" }];
  return {
    ...emptyClass({ practice, today: "2026-11-25" }),
    weekday,
    year: { from: "2026-12-01", until: "2026-12-31", closures, fixedPerYear: "0.00" },
  };
}
