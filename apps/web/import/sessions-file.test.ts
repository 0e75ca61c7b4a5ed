import { expect, test } from "vitest";
import { nothingSaid } from "./table-ask.ts";
import { sessionsFile } from "./sessions-file.ts";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const today = "2026-11-25";

test("columns that are not named as one would guess can be said, or said to be none", () => {
  const file = bytes("When,A,B\n2026-09-08,9,14\n2026-09-15,14,14\n");
  const read = sessionsFile(file, { ...nothingSaid, columns: { heads: 1, capacity: 2 } }, null, today);
  expect(read).toMatchObject({ kind: "read", sessions: [{ heads: 9, capacity: 14 }, { heads: 14 }] });
  const without = sessionsFile(file, { ...nothingSaid, columns: { heads: 1, capacity: null } }, null, today);
  expect(without).toMatchObject({ kind: "read", seen: { columns: { heads: 1 } } });
  expect(without.kind === "read" && without.sessions[0]).toEqual({ row: 2, date: "2026-09-08", heads: 9 });
});

test("a file whose dates can be read both ways asks, and takes what it is told", () => {
  const file = bytes("Date;Heads\n03/09/2026;9,0\n10/09/2026;11,0\n");
  const asked = sessionsFile(file, nothingSaid, null, today);
  expect(asked).toMatchObject({ kind: "asks", problems: [{ code: "date-order-unclear" }] });
  const told = sessionsFile(file, { ...nothingSaid, order: "day-first" }, null, today);
  // 9,0 with a decimal comma is nine people
  expect(told).toMatchObject({ sessions: [{ date: "2026-09-03", heads: 9 }, { date: "2026-09-10" }] });
});

test("a session that lies ahead is not taken, and said to be so", () => {
  const file = bytes("Date,Heads\n2026-11-24,9\n2026-12-01,11\n");
  expect(sessionsFile(file, nothingSaid, null, today)).toMatchObject({
    sessions: [{ date: "2026-11-24" }],
    left: [{ row: 3, value: "2026-12-01", says: "It is after 2026-11-25, so that it has not happened yet." }],
  });
});

test("what is no table, and a table of names alone, say what is wrong", () => {
  expect(sessionsFile(bytes(""), nothingSaid, null, today)).toMatchObject({
    kind: "no table",
    problems: [{ code: "table-empty" }],
  });
  expect(sessionsFile(Uint8Array.of(0x50, 0x4b, 3, 4), nothingSaid, null, today)).toMatchObject({
    problems: [{ code: "table-not-text" }],
  });
  expect(sessionsFile(bytes("Date,Heads\n"), nothingSaid, null, today)).toMatchObject({
    kind: "asks",
    seen: { rows: 0 },
    problems: [{ code: "table-empty" }],
  });
});

test("a row with more people than the usual places is left out and listed", () => {
  const file = bytes("Date,Heads\n2026-11-10,15\n2026-11-17,9\n");
  expect(sessionsFile(file, nothingSaid, 14, today)).toMatchObject({
    sessions: [{ heads: 9 }],
    left: [{ row: 2, value: "15", says: "More came than the 14 that it holds." }],
  });
});
