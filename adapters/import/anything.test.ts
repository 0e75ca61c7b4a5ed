import { chooseColumns, readHeads, headsShape, readVisits, visitsShape } from "#core/table";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { readTable } from "./read-table.ts";

const cell = fc.oneof(
  fc.constantFrom(
    "",
    "Name",
    "Date",
    "Nell Arkwright",
    "nell arkwright",
    "06/04/2027",
    "25/04/2027",
    "2027-04-06",
    "46293",
  ),
  fc.constantFrom(
    "Total",
    "12,50",
    "-4",
    "1.234",
    "£8",
    "31/02/2027",
    "cancelled",
    "=1+1",
    "NaN",
    "1e400",
    "__proto__",
  ),
  fc.string({ unit: "grapheme", maxLength: 12 }),
);

const text = fc
  .tuple(
    fc.array(fc.array(cell, { minLength: 1, maxLength: 5 }), { minLength: 1, maxLength: 12 }),
    fc.constantFrom(",", ";", "\t", "|", " "),
    fc.constantFrom("\n", "\r\n", "\r"),
  )
  .map(([rows, separator, end]) => rows.map((row) => row.join(separator)).join(end));

test("no bytes, however odd, make reading throw", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      const file = readTable(bytes);
      if (!file.ok) expect(file.problems[0]?.next).toMatch(/\.$/);
      else {
        const { rows, columns } = file.value.table;
        expect(rows.every(({ cells }) => cells.length <= columns && cells.some((cell) => cell !== ""))).toBe(
          true,
        );
      }
    }),
    { numRuns: 500 },
  );
});

test("whatever a file holds, each of its rows is used, listed, blank, or the names", () => {
  fc.assert(
    fc.property(text, fc.constantFrom("day-first" as const, "month-first" as const), (written, order) => {
      const file = readTable(new TextEncoder().encode(written));
      if (!file.ok) return;
      const { table } = file.value;
      const lines = table.rows.length + table.above.length;
      const visits = chooseColumns(table, visitsShape);
      const read = visits.ok ? readVisits(table, visits.value, order) : visits;
      if (read.ok) expect(read.value.visits.length + read.value.notUsed.length).toBe(lines);
      const heads = chooseColumns(table, headsShape);
      const counted = heads.ok ? readHeads(table, heads.value, order) : heads;
      if (counted.ok) expect(counted.value.sessions.length + counted.value.notUsed.length).toBe(lines);
    }),
    { numRuns: 500 },
  );
});
