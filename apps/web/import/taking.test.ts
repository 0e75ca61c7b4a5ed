import type { HappenedDocument } from "#core/outlook";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { taken, takenBack, takingOf } from "./taking.ts";

const record: HappenedDocument = {
  capacity: 14,
  sessions: [
    { date: "2026-09-08", heads: 9, newcomers: 9 },
    { date: "2026-09-15", heads: 10, newcomers: 2 },
  ],
};
const rows = [
  { row: 2, date: "2026-09-08", heads: 9 },
  { row: 3, date: "2026-09-15", heads: 12, turnedAway: 1 },
  { row: 4, date: "2026-09-22", heads: 11 },
];

test("a date that is new is taken, one that says the same is not asked about, one that differs is", () => {
  const taking = takingOf(record, rows);
  expect(taking.fresh).toEqual([{ date: "2026-09-22", heads: 11 }]);
  expect(taking.same).toBe(1);
  expect(taking.clashes).toEqual([
    {
      date: "2026-09-15",
      there: { date: "2026-09-15", heads: 10, newcomers: 2 },
      // the file does not say who was new: that stays
      file: { date: "2026-09-15", heads: 12, newcomers: 2, turnedAway: 1 },
    },
  ]);
});

test("the usual places, which the record has once for all, are no other figure of a date", () => {
  const asUsual = takingOf(record, [{ row: 2, date: "2026-09-08", heads: 9, capacity: 14 }]);
  expect(asUsual).toEqual({ fresh: [], clashes: [], same: 1 });
  const fewer = takingOf(record, [{ row: 2, date: "2026-09-08", heads: 9, capacity: 12 }]);
  expect(fewer.clashes[0]?.file).toEqual({ date: "2026-09-08", heads: 9, newcomers: 9, capacity: 12 });
});

test("nothing is replaced unless it was chosen", () => {
  const taking = takingOf(record, rows);
  const kept = taken(record, taking, new Set());
  expect(kept.sessions.map(({ heads }) => heads)).toEqual([9, 10, 11]);
  const replaced = taken(record, taking, new Set(["2026-09-15"]));
  expect(replaced.sessions.map(({ heads }) => heads)).toEqual([9, 12, 11]);
  expect(replaced.capacity).toBe(14);
});

test("a session that the file calls cancelled loses its heads, and one that took place after all is not cancelled", () => {
  const cancelled = takingOf(record, [{ row: 2, date: "2026-09-15", heads: 0, cancelled: true }]);
  expect(cancelled.clashes[0]?.file).toMatchObject({ heads: 0, cancelled: true });
  const before = { sessions: [{ date: "2026-09-15", heads: 0, cancelled: true }] };
  const held = takingOf(before, [{ row: 2, date: "2026-09-15", heads: 7 }]);
  expect(held.clashes[0]?.file).toEqual({ date: "2026-09-15", heads: 7 });
});

test("taking back leaves what she changed or added since", () => {
  const after = taken(record, takingOf(record, rows), new Set(["2026-09-15"]));
  const since: HappenedDocument = {
    ...after,
    sessions: [
      ...after.sessions.map((it) => (it.date === "2026-09-22" ? { ...it, heads: 13 } : it)),
      { date: "2026-09-29", heads: 8 },
    ],
  };
  expect(takenBack(since, record, after).sessions).toEqual([
    { date: "2026-09-08", heads: 9, newcomers: 9 },
    { date: "2026-09-15", heads: 10, newcomers: 2 },
    { date: "2026-09-22", heads: 13 },
    { date: "2026-09-29", heads: 8 },
  ]);
});

const day = fc.integer({ min: 1, max: 28 }).map((it) => `2026-02-${String(it).padStart(2, "0")}`);
const session = fc.record({ date: day, heads: fc.nat(20) });
const sessions = fc.uniqueArray(session, { selector: ({ date }) => date, maxLength: 12 });

test("whatever is taken in, taking it back at once leaves the record as it was", () => {
  fc.assert(
    fc.property(sessions, sessions, fc.array(day), (there, file, chosen) => {
      const before = { sessions: there.toSorted((one, other) => (one.date < other.date ? -1 : 1)) };
      const withRows = file.map((it, at) => ({ row: at + 1, ...it }));
      const after = taken(before, takingOf(before, withRows), new Set(chosen));
      expect(new Set(after.sessions.map(({ date }) => date)).size).toBe(after.sessions.length);
      expect(takenBack(after, before, after)).toEqual(before);
    }),
  );
});
