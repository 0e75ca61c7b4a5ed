import { dateOfDay, dayNumberOf } from "#kernels/calendar";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { comingAnswer } from "./coming-answer.ts";
import type { Visit } from "./coming-types.ts";
import { staysAnswer } from "./stays-answer.ts";

const START = dayNumberOf("2026-09-01") ?? 0;

function tuesdays(weeks: Readonly<Record<string, readonly number[]>>): readonly Visit[] {
  return Object.entries(weeks).flatMap(([person, list]) =>
    list.map((week) => ({ person, date: dateOfDay(START + week * 7) })),
  );
}

/** A thousand people who pay once a year, as many each year as the heads say. */
function yearly(heads: readonly number[]): readonly Visit[] {
  return heads.flatMap((count, year) =>
    Array.from({ length: count }, (_, person) => ({
      person: `Person ${person}`,
      date: `${2015 + year}-10-01`,
    })),
  );
}

test("COMING-10: yearly payments by the published heads give the published parameters", () => {
  const visits = yearly([1000, 631, 468, 382, 326, 289, 262, 241]);
  const answer = staysAnswer({ visits, period: "year", goneAfter: 1 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const { fitted, people, stopped, curve, expected } = answer.value.stays;
  expect(fitted.parameters.alpha).toBeCloseTo(0.704, 3);
  expect(fitted.parameters.beta).toBeCloseTo(1.182, 3);
  expect([people, stopped]).toEqual([1000, 759]);
  // nobody unseen before the end: the curve is the heads
  expect(curve.map((it) => Number((it.value * 1000).toFixed(6)))).toEqual([
    631, 468, 382, 326, 289, 262, 241,
  ]);
  expect(expected[0]).toBeCloseTo(0.627, 3);
  // seven years could be watched, twelve are looked ahead
  expect(answer.value.sentences).toContain(
    "Nobody could be watched for longer than 7 years: what the fit says beyond is a guess.",
  );
  // of those there after seven years (1.182 + 7) ÷ (0.704 + 1.182 + 7) stay the next
  const there = answer.value.people.find((it) => it.stillThere);
  expect(there?.stayed).toBe(7);
  const next = staysAnswer({ visits, period: "year", goneAfter: 1, ahead: 1 });
  expect(next.ok && next.value.sentences.some((it) => it.includes("beyond"))).toBe(false);
  expect(next.ok && next.value.people.find((it) => it.stillThere)?.expectedPeriods).toBeCloseTo(
    8.182 / 8.886,
    3,
  );
});

test("COMING-8: who may only be away is looked at as of the last week for which it is known", () => {
  // until week 9 with gone after 3: known as of week 9 − 3 + 1 = 7
  const answer = comingAnswer({
    visits: tuesdays({
      Nell: [0, 4, 9], // seen after week 7: there for 7 weeks
      Owen: [0, 7], // seen in week 7: there for 7
      Iris: [0, 1, 6], // last in week 6, not seen in 7, 8, 9: gone in the 7th week
      Thea: [3], // gone in her first week
      Bram: [8], // began after week 7: tells nothing yet
    }),
    notSeenFor: 3,
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const { people, stopped, curve } = answer.value.newcomers;
  expect([people, stopped]).toEqual([4, 2]);
  // 4 there, 1 gone in week 1: 3/4; then 3 there (all watched for 7), 1 gone in week 7: 3/4 × 2/3
  expect(curve.map((it) => [it.period, it.atRisk, it.stopped, it.value])).toEqual([
    [1, 4, 1, 0.75],
    [7, 3, 1, 0.5],
  ]);
});

test("COMING-8: only who was first seen since a day began then", () => {
  const visits = tuesdays({ Nell: [0, 1, 2], Owen: [4, 5, 9], Iris: [4], Thea: [0, 9] });
  const answer = comingAnswer({ visits, notSeenFor: 2, newSince: dateOfDay(START + 28) });
  expect(answer.ok && answer.value.newcomers.people).toBe(2);
  const bad = comingAnswer({ visits, newSince: "May" });
  expect(bad).toMatchObject({ problems: [{ code: "date-unreadable", place: "newSince" }] });
});

test("COMING-8: people who stop with one chance a week give that curve back", () => {
  // two thousand who each stop with a third a week, seen in every week until then
  const visits: Visit[] = [];
  for (let person = 0; person < 2000; person += 1) {
    const began = person % 10;
    for (let week = began; week < 30; week += 1) {
      visits.push({ person: `Person ${person}`, date: dateOfDay(START + week * 7) });
      if ((person * 7919 + week * 104_729) % 3 === 0) break;
    }
  }
  const answer = comingAnswer({ visits, notSeenFor: 2 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const [first] = answer.value.newcomers.curve;
  expect(Math.abs((first?.value ?? 0) - 2 / 3)).toBeLessThan(0.05);
});

test("COMING-10: months and years are those of the calendar", () => {
  const visits = ["2026-01-31", "2026-02-01", "2026-03-31", "2026-04-01"].map((date) => ({
    person: "Nell",
    date,
  }));
  const owen = ["2026-01-02"].map((date) => ({ person: "Owen", date }));
  const answer = staysAnswer({ visits: [...visits, ...owen], period: "month", goneAfter: 1 });
  expect(answer.ok && answer.value.people).toMatchObject([
    { person: "Nell", stayed: 3, stillThere: true },
    { person: "Owen", stayed: 0, stillThere: false, expectedPeriods: 0 },
  ]);
});

test("COMING-4: nobody gone, or everybody, is a guess and no NaN", () => {
  fc.assert(
    fc.property(fc.array(fc.nat(6), { minLength: 1, maxLength: 12 }), (stays) => {
      const visits = tuesdays(
        Object.fromEntries(
          stays.map((last, at) => [`P${at}`, Array.from({ length: last + 1 }, (_, week) => week)]),
        ),
      );
      const answer = staysAnswer({ visits, until: dateOfDay(START + 70), period: "week", goneAfter: 2 });
      if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
      const figures = [
        ...answer.value.stays.expected,
        ...answer.value.people.map((it) => it.expectedPeriods),
      ];
      expect(figures.every((it) => it >= 0 && it <= 12)).toBe(true);
    }),
    { numRuns: 25 },
  );
});

test("COMING-11: records too short to tell who is gone are told", () => {
  const visits = tuesdays({ Nell: [0, 1], Owen: [1] });
  expect(staysAnswer({ visits, period: "week", goneAfter: 4 })).toMatchObject({
    problems: [{ code: "stays-too-short" }],
  });
  expect(staysAnswer({ visits, period: "week", goneAfter: 0, ahead: 1000 })).toMatchObject({
    problems: [{ code: "gone-after-out-of-range" }, { code: "weeks-ahead-out-of-range" }],
  });
});
