import { useByDate } from "#core/price";
import { plainWriter } from "#core/words";
import * as fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { movedByClosure } from "./moved-by-closure.ts";
import { passAfter } from "./pass-after.ts";
import type { PassEvent, PassSold } from "./pass-event.ts";
import { lastOfEachWeek, moveUseBy, useByAfter, useByAfterPause, weekOf } from "./use-by.ts";
import { useByWarning } from "./use-by-warning.ts";

const uk = plainWriter("en-GB");

// Tuesdays of autumn 2026; half-term, 27 October, is closed
const tuesdays = [
  "2026-09-08",
  "2026-09-15",
  "2026-09-22",
  "2026-09-29",
  "2026-10-06",
  "2026-10-13",
  "2026-10-20",
  "2026-11-03",
  "2026-11-10",
  "2026-11-17",
];

const sold: PassSold = {
  kind: "sold",
  on: "2026-09-08",
  pass: "p1",
  form: "pass",
  holder: "person-1",
  name: "Five classes",
  size: 5,
  price: 4500,
  currency: "GBP",
  paid: "card",
  useBy: "2026-11-03",
  valid: ["tuesday"],
  sessions: [],
  terms: { perClassOnRefund: null, transferable: true, pauses: 1 },
};

test("BOOKS-20 eight teaching weeks from 8 September run over half-term until 3 November", () => {
  const found = useByAfter(tuesdays, 8);
  expect(found).toEqual({ ok: true, value: { date: "2026-11-03", guessed: 0 } });
});

test("BOOKS-20 beyond the dates that are planned it goes on weekly, and says for how many", () => {
  // ten are known; the twelfth is 1 December
  expect(useByAfter(tuesdays, 12)).toEqual({ ok: true, value: { date: "2026-12-01", guessed: 2 } });
  const none = useByAfter([], 8);
  expect(none.ok ? [] : none.problems.map(({ code }) => code)).toEqual(["use-by-no-dates"]);
});

test("BOOKS-20 for a pass that is good twice a week the weeks are counted, not the dates", () => {
  const both = [...tuesdays, "2026-09-10", "2026-09-17", "2026-09-24"];
  // the week of 8 September ends with Thursday the 10th
  expect(useByAfter(lastOfEachWeek(both), 2)).toEqual({
    ok: true,
    value: { date: "2026-09-17", guessed: 0 },
  });
  expect(weekOf("2026-09-14") - weekOf("2026-09-13")).toBe(1);
});

test("BOOKS-21 a closed session moves the use-by one teaching date; between two dates the next is one", () => {
  expect(moveUseBy("2026-10-20", tuesdays, 1).date).toBe("2026-11-03");
  expect(moveUseBy("2026-10-22", tuesdays, 2).date).toBe("2026-11-10");
  expect(moveUseBy("2026-11-17", tuesdays, 1)).toEqual({ date: "2026-11-24", guessed: 1 });
  expect(moveUseBy("2026-10-20", tuesdays, 0).date).toBe("2026-10-20");
});

test("BOOKS-21 a closure moves a pass that was good that day, and neither a paused nor a used-up one nor a block", () => {
  const state = passAfter([sold]);
  const closed = { session: "s3", class: "tuesday", date: "2026-09-22" };
  const paused = { kind: "paused", on: "2026-09-15", from: "2026-09-20" } as const;
  const used = { kind: "used", on: "2026-09-22", session: "s3", class: "tuesday", why: "attended" } as const;
  expect(movedByClosure(state, closed)).toBe(true);
  expect(movedByClosure(state, { ...closed, class: "saturday" })).toBe(false);
  expect(movedByClosure(state, { ...closed, date: "2026-11-10" })).toBe(false);
  // the last day of the pass still counts, and the first of a pause is in it
  expect(movedByClosure(state, { ...closed, date: "2026-11-03" })).toBe(true);
  expect(movedByClosure(passAfter([sold, paused]), closed)).toBe(false);
  expect(movedByClosure(passAfter([sold, paused]), { ...closed, date: "2026-09-20" })).toBe(false);
  expect(movedByClosure(passAfter([sold, paused]), { ...closed, date: "2026-09-19" })).toBe(true);
  expect(movedByClosure(passAfter([sold, used]), closed)).toBe(false);
  expect(
    movedByClosure(
      passAfter([
        { ...sold, size: 1 },
        { ...used, session: "s1" },
      ]),
      closed,
    ),
  ).toBe(false);
  const block: PassSold = { ...sold, form: "block", sessions: ["s1", "s2", "s3", "s4", "s5"] };
  expect(movedByClosure(passAfter([block]), closed)).toBe(false);
});

test("BOOKS-22 after a pause as many teaching dates are left as when it began", () => {
  // paused on 22 September with five dates until 20 October left, taken up on 13 October after three missed
  const pause = { useBy: "2026-10-20", from: "2026-09-22", on: "2026-10-13" };
  const { date } = useByAfterPause(pause, tuesdays);
  // 13 and 20 October, 3, 10 and 17 November are five
  expect(date).toBe("2026-11-17");
});

test("BOOKS-22 any pause, also one longer than the pass, leaves the dates that it found", () => {
  const index = fc.nat(tuesdays.length - 1);
  fc.assert(
    fc.property(index, index, index, (a, b, c) => {
      const [start = 0, end = 0] = [a, b].sort((x, y) => x - y);
      const [from = "", useBy = ""] = [tuesdays[start], tuesdays[end]];
      const on = tuesdays[Math.max(start, c)] ?? "";
      const { date, guessed } = useByAfterPause({ useBy, from, on }, tuesdays);
      const count = (first: string, last: string) =>
        tuesdays.filter((it) => it >= first && it <= last).length;
      expect(count(on, date) + guessed).toBe(count(from, useBy));
    }),
  );
});

test("BOOKS-23 warned at four teaching weeks and at one, in weeks that are taught and not in days", () => {
  const state = passAfter([{ ...sold, useBy: "2026-11-10" }]);
  const at = (today: string) => useByWarning(state, tuesdays, today, uk);
  // from 6 October: 6, 13, 20 October, 3 and 10 November are five weeks
  expect(at("2026-10-06")).toBe(null);
  expect(at("2026-10-07")).toEqual({
    weeks: 4,
    weeksLeft: 4,
    sentence:
      "5 classes are left on your pass, to use by Tuesday 10 November 2026: 4 teaching weeks from now. That is more classes than weeks; ask if you need longer.",
  });
  expect(at("2026-10-28")).toMatchObject({ weeks: 4, weeksLeft: 2 });
  expect(at("2026-11-04")).toMatchObject({ weeks: 1, weeksLeft: 1 });
  expect(at("2026-11-11")).toBe(null);
});

test("BOOKS-23 nobody is warned about a pass that is paused or used up", () => {
  const paused: PassEvent = { kind: "paused", on: "2026-10-13", from: "2026-10-20" };
  expect(useByWarning(passAfter([sold, paused]), tuesdays, "2026-10-28", uk)).toBe(null);
  const one: PassEvent = {
    kind: "used",
    on: "2026-09-15",
    session: "s2",
    class: "tuesday",
    why: "attended",
  };
  expect(useByWarning(passAfter([{ ...sold, size: 1 }, one]), tuesdays, "2026-10-28", uk)).toBe(null);
  expect(useByWarning(passAfter([{ ...sold, size: 2 }, one]), tuesdays, "2026-10-28", uk)?.sentence).toBe(
    "1 class is left on your pass, to use by Tuesday 3 November 2026: 1 teaching week from now. If you cannot come, ask for a pause.",
  );
});

test("BOOKS-20 the use-by of the books is the one that prices are worked out with", () => {
  const monday = fc.integer({ min: 0, max: 60 });
  const closures = fc.uniqueArray(fc.nat(30), { maxLength: 8 });
  fc.assert(
    fc.property(monday, closures, fc.integer({ min: 1, max: 20 }), (week, closedWeeks, teachingWeeks) => {
      const from = Temporal.PlainDate.from("2026-01-05").add({ weeks: week });
      const dates = Array.from({ length: 31 }, (_, index) => from.add({ weeks: index }));
      const closed = closedWeeks.map((index) => {
        const date = from.add({ weeks: index });
        return { from: date, until: date, why: "closed" };
      });
      const open = dates.filter((_, index) => !closedWeeks.includes(index)).map(String);
      const price = useByDate({ from, weekday: 1, closed }, teachingWeeks);
      const books = useByAfter(open, teachingWeeks);
      if (!price.ok || !books.ok) throw new Error("a sound pass was refused");
      expect(books.value.date).toBe(price.value.date.toString());
    }),
  );
});
