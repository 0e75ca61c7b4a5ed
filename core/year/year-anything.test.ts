import * as fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { smallYear } from "./small-year.ts";
import { yearAnswer } from "./year-answer.ts";
import type { YearDocumentInput } from "./year-document.ts";

const someDay = fc
  .integer({ min: -40, max: 420 })
  .map((days) => Temporal.PlainDate.from(smallYear.from).add({ days }).toString());
const someTime = fc
  .tuple(fc.integer({ min: 0, max: 23 }), fc.integer({ min: 0, max: 59 }))
  .map((parts) => parts.map((it) => String(it).padStart(2, "0")).join(":"));
const someSpan = fc.tuple(someDay, fc.integer({ min: 0, max: 20 })).map(([from, days]) => ({
  from,
  until: Temporal.PlainDate.from(from).add({ days }).toString(),
  why: "off",
}));
const someList = fc.record({ days: fc.array(someSpan, { maxLength: 4 }), text: fc.constant("") });
const zones = fc.constantFrom(
  "Europe/London",
  "America/Chicago",
  "Australia/Lord_Howe",
  "Asia/Kathmandu",
  "UTC",
);
const classIds = fc.constantFrom("a", "b");

const someClass = (id: string): fc.Arbitrary<YearDocumentInput["classes"][number]> =>
  fc.record({
    id: fc.constant(id),
    hall: fc.constantFrom("one", "two"),
    start: someTime,
    minutes: fc.record({
      before: fc.integer({ min: 0, max: 60 }),
      teach: fc.integer({ min: 1, max: 300 }),
      after: fc.integer({ min: 0, max: 60 }),
    }),
    weekday: fc.integer({ min: 1, max: 7 }),
    closed: someList,
  });

const someChange: fc.Arbitrary<NonNullable<YearDocumentInput["changes"]>[number]> = fc.oneof(
  fc.record({
    kind: fc.constant("move" as const),
    class: classIds,
    date: someDay,
    to: someDay,
    start: someTime,
  }),
  fc.record({ kind: fc.constant("cancel" as const), class: classIds, date: someDay }),
  fc.record({ kind: fc.constant("extra" as const), class: classIds, date: someDay }),
);

const someYear: fc.Arbitrary<YearDocumentInput> = fc.record({
  from: fc.constant(smallYear.from),
  until: fc.constant(smallYear.until),
  zone: zones,
  locale: fc.constantFrom("en-GB" as const, "en-US" as const),
  holidays: fc.record({ region: fc.constantFrom("GB-ENG", "GB-SCT", "GB-NIR", "US", "US-IL", "none") }),
  school: someList,
  timeOff: someList,
  elections: fc.array(someDay, { maxLength: 2 }),
  halls: fc.tuple(zones, someList, fc.boolean()).map(([zone, closed, polling]) => [
    { id: "one", closed, polling },
    { id: "two", zone },
  ]),
  classes: fc.tuple(someClass("a"), someClass("b")).map((it) => [...it]),
  runs: fc.array(fc.record({ class: classIds, publicHolidays: fc.boolean(), schoolHolidays: fc.boolean() }), {
    maxLength: 1,
  }),
  changes: fc.uniqueArray(someChange, { maxLength: 5, selector: (it) => `${it.class} ${it.date}` }),
});

test("in any year each date is either a session or lost with a reason, and no two entries have one id", () => {
  fc.assert(
    fc.property(someYear, (year) => {
      const read = yearAnswer(year);
      if (!read.ok) throw new Error(JSON.stringify(read.problems));
      const { json, entries, picture } = read.value;
      for (const one of json.classes) {
        const weekday = year.classes.find(({ id }) => id === one.id)?.weekday;
        // 365 days from a Tuesday to a Tuesday: 53 of them, 52 of every other day
        const days = weekday === 2 ? 53 : 52;
        const extra = (year.changes ?? []).filter(
          (it) =>
            it.kind === "extra" &&
            it.class === one.id &&
            (Temporal.PlainDate.from(it.date).dayOfWeek !== weekday ||
              it.date < json.from ||
              it.date > json.until),
        );
        expect(one.dates.length + one.lost.length).toBe(days + extra.length);
        expect(one.lost.every(({ reasons }) => reasons.length > 0)).toBe(true);
      }
      const uids = entries.map(({ uid }) => uid);
      expect(new Set(uids).size).toBe(uids.length);
      expect(entries.every(({ begins, ends }) => Temporal.Instant.compare(begins, ends) < 0)).toBe(true);
      const drawn = picture.months.flatMap(({ days }) => days.flatMap(({ held }) => held)).length;
      const inYear = json.classes.flatMap(({ dates }) => [
        ...new Set(
          dates.map(({ date }) => date).filter((date) => date.slice(0, 7) >= "2026-09" && date < "2027-09"),
        ),
      ]).length;
      expect(drawn).toBe(inYear);
    }),
    { numRuns: 25 },
  );
}, 60_000);
