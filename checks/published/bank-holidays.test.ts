// Bank holidays in England and Wales, 2026 and 2027: the government's own published file (gov.uk, bank
// holidays, read there). The breaks that a new class begins with are guesses, but they must hold the
// holidays that they are named for. Further Easter Sundays: from memory of printed calendars.
import { emptyClass } from "#core/class";
import { spanCovering } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";

function breakOn(date: string): string | undefined {
  const today = `${date.slice(0, 4)}-${date.slice(5, 7)}-01`;
  const { closures } = emptyClass({ practice: { currency: "GBP", locale: "en-GB" }, today }).year;
  const spans = closures.map(({ from, until, why }) => ({
    from: Temporal.PlainDate.from(from),
    until: Temporal.PlainDate.from(until),
    why,
  }));
  return spanCovering(spans, Temporal.PlainDate.from(date))?.why;
}

test.each([
  ["2026-01-01", "Christmas"],
  ["2026-04-03", "Easter"],
  ["2026-04-06", "Easter"],
  ["2026-05-25", "May half-term"],
  ["2026-12-25", "Christmas"],
  ["2026-12-28", "Christmas"],
  ["2027-01-01", "Christmas"],
  ["2027-03-26", "Easter"],
  ["2027-03-29", "Easter"],
  ["2027-05-31", "May half-term"],
  ["2027-12-27", "Christmas"],
  ["2027-12-28", "Christmas"],
])("the holiday of %s lies in the break for %s", (date, why) => {
  expect(breakOn(date)).toBe(why);
});

test.each(["2026-05-04", "2027-05-03"])("the early May holiday of %s is one Monday and no break", (date) => {
  expect(breakOn(date)).toBeUndefined();
});

test.each([
  ["2024-03-31"],
  ["2025-04-20"],
  ["2028-04-16"],
  ["2035-03-25"],
  ["2038-04-25"],
  ["2049-04-18"],
  ["2076-04-19"],
])("Easter Sunday is %s: its week before and its week after are the break", (sunday) => {
  const easter = Temporal.PlainDate.from(sunday);
  const at = (days: number): string | undefined => breakOn(easter.add({ days }).toString());
  expect([at(-7), at(-6), at(7), at(8)]).toEqual([undefined, "Easter", "Easter", undefined]);
});
