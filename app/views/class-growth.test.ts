import { outlookAnswer } from "#core/outlook";
import { marlsford } from "#demo";
import { expect, test } from "vitest";
import { classGrowth, type ClassGrowthInput } from "./class-growth.ts";

function inputFor(id: string): ClassGrowthInput {
  const document = marlsford.classes.find((it) => it.id === id)?.document;
  const happened = marlsford.happened.find((it) => it.id === id)?.document;
  const hall = marlsford.halls.find((it) => it.id === document?.hall)?.document;
  if (document === undefined || happened === undefined || hall === undefined) throw new Error(id);
  return {
    practice: marlsford.practice,
    document,
    happened,
    hall,
    today: "2027-01-04",
    money: (exact) => String(exact.valueOf()),
  };
}

test("the outlook of a class becomes a band of takings for each month that has sessions", () => {
  const input = inputFor("thursday-beginners");
  const found = classGrowth(input, outlookAnswer);
  if (found.kind !== "ready") throw new Error(JSON.stringify(found));
  const months = found.changes.map(({ from }) => from.slice(0, 7));
  expect(new Set(months).size).toBe(months.length);
  expect([...months].sort()).toEqual(months);
  for (const { perSession } of found.changes) {
    if (typeof perSession === "string") throw new Error("no band");
    const [low, middle, high] = [perSession.low, perSession.middle, perSession.high].map(Number);
    expect(low).toBeLessThanOrEqual(middle ?? 0);
    expect(middle).toBeLessThanOrEqual(high ?? 0);
    expect(high).toBeGreaterThan(low ?? 0);
  }
  expect(found.sessionsHeld).toBe(input.happened.sessions.length);
});

test("without a date ahead, and without places, nothing is made up", () => {
  const input = inputFor("thursday-beginners");
  expect(classGrowth({ ...input, today: "2029-01-01" }, outlookAnswer)).toMatchObject({ kind: "missing" });
  const nowhere = {
    ...input,
    happened: { sessions: [] },
    document: { ...input.document, ownCap: null, matsOwned: null, insurerCap: null },
    hall: null,
  };
  expect(classGrowth(nowhere, outlookAnswer)).toMatchObject({ kind: "missing" });
});
