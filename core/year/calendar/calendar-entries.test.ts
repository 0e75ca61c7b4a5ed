import { expect, test } from "vitest";
import { evening, smallAnswer as answer } from "../small-year.ts";
import type { YearDocumentInput } from "../year-document.ts";

const entry = (change: Partial<YearDocumentInput>) =>
  answer(change).entries.find(({ uid }) => uid === "20260908-tuesday@hallful");

test("an entry is called by its class and its own day, wherever it moves, and counts its moves up (YEAR-10)", () => {
  const move = { kind: "move", class: "tuesday", date: "2026-09-08", to: "2026-09-09" } as const;
  const seen = [
    {},
    { changes: [move] },
    { changes: [{ ...move, to: "2026-09-10", times: 2 }] },
    { edition: 1 },
  ]
    .map((change) => entry(change))
    .map((it) => [it?.begins.toString(), it?.sequence]);
  // 18:30 in summer is 17:30 UTC
  expect(seen).toEqual([
    ["2026-09-08T17:30:00Z", 0],
    ["2026-09-09T17:30:00Z", 1],
    ["2026-09-10T17:30:00Z", 2],
    ["2026-09-08T17:30:00Z", 1000],
  ]);
  const cancelled = entry({
    changes: [{ kind: "cancel", class: "tuesday", date: "2026-09-08", why: "knee" }],
  });
  expect([cancelled?.cancelled, cancelled?.sequence]).toEqual([true, 1]);
});

test("no two entries have one id, and none tells why she is away (YEAR-10)", () => {
  const { entries } = answer({
    timeOff: { days: [{ from: "2026-12-01", until: "2026-12-31", why: "operation on the knee" }] },
    changes: [{ kind: "cancel", class: "tuesday", date: "2026-09-08", why: "migraine" }],
    classes: [evening, { ...evening, id: "tue sday", hall: "barn", start: "10:00" }],
  });
  expect(new Set(entries.map(({ uid }) => uid)).size).toBe(entries.length);
  expect(JSON.stringify(entries)).not.toMatch(/knee|migraine|operation/);
  expect(entries.every(({ uid }) => /^[A-Za-z0-9.@-]+$/.test(uid))).toBe(true);
});
