import { hallDocumentSchema } from "#core/hall";
import { isCurrency } from "#core/words";
import { expect, test } from "vitest";
import { classAnswer } from "./class-answer.ts";
import { classDates } from "./class-dates.ts";
import { classDocumentSchema } from "./class-document.ts";
import { nextDate } from "./next-date.ts";
import { readClassParts } from "./read-class-parts.ts";

const tuesdays = classDocumentSchema.parse({
  name: "Tuesday evening",
  weekday: 2,
  start: "18:30",
  minutes: { setUp: 20, class: 60, packDown: 15, travel: 30, preparation: 15, admin: 10 },
  costs: { travel: "3.40", music: "1.00", cover: "0", other: "0.60", perHead: "0.20" },
  prices: { single: "8.20" },
  mix: { single: 1 },
  heads: 8,
  year: {
    from: "2026-09-08",
    until: "2026-10-27",
    closures: [{ from: "2026-10-26", until: "2026-10-30", why: "half-term" }],
    fixedPerYear: "42.00",
  },
});

const hall = hallDocumentSchema.parse({
  name: "Quay Street Mission Room",
  outline: [
    [0, 0],
    [8, 0],
    [8, 12],
  ],
  mat: { length: 1.8, width: 0.61 },
  gaps: { side: 0.5, end: 0.3, wall: 0.5 },
  hire: { perHour: "14.00", incrementMinutes: 30, rates: [{ from: "2026-10-01", perHour: "15.00" }] },
});

function next(today: string, change: object = {}): string {
  const code = "GBP";
  if (!isCurrency(code)) throw new Error(code);
  const parts = readClassParts({ ...tuesdays, ...change }, code);
  if (!parts.ok) throw new Error("a sound class was refused");
  return nextDate(classDates(parts.value), today);
}

test("CLASS-12 the next evening is the first from today, and the last one when the year is over", () => {
  // 27 October is in half-term, so 20 October is the last
  expect(
    ["2026-08-01", "2026-09-08", "2026-09-09", "2026-10-21", "2027-03-01"].map((today) => next(today)),
  ).toEqual(["2026-09-08", "2026-09-08", "2026-09-15", "2026-10-20", "2026-10-20"]);
});

test("CLASS-12 a class that runs on no date is worked out for today", () => {
  const closures = [{ from: "2026-01-01", until: "2026-12-31", why: "floor resealed" }];
  expect(next("2026-09-16", { year: { ...tuesdays.year, closures } })).toBe("2026-09-16");
  expect(() => next("today")).toThrow("today");
});

function costFrom(today: string): number {
  const answer = classAnswer(tuesdays, hall, "GBP", today, "evening cost");
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value.cost;
}

test("CLASS-12 the answer is for that evening, at its rate", () => {
  // 28.00 + 3.40 + 1.00 + 0.60 = 33.00 in September; 30.00 + 5.00 from October
  expect([costFrom("2026-09-16"), costFrom("2026-10-01")]).toEqual([3300, 3500]);
});

test.each([
  ["a price", { prices: { single: "x", passes: [] } }, ["ready", "prices.single", "prices.single"]],
  ["the mix", { mix: { single: 0.5 } }, ["ready", "mix", "mix"]],
  ["the number of people", { heads: -1 }, ["ready", "ready", "heads"]],
  ["the name", { name: "" }, ["ready", "ready", "ready"]],
  ["the year", { year: { ...tuesdays.year, until: "2026-" } }, ["ready", "ready", "ready"]],
  ["the set-up", { minutes: { ...tuesdays.minutes, setUp: -1 } }, Array<string>(3).fill("minutes.setUp")],
])("CLASS-12 %s half typed hides only what rests on it", (_, change, expected) => {
  const found = (["evening cost", "break-even", "ordinary evening"] as const).map((answer) => {
    const read = classAnswer({ ...tuesdays, ...change }, hall, "GBP", "2026-09-16", answer);
    return read.ok ? "ready" : read.problems.map(({ place }) => place).join();
  });
  expect(found).toEqual(expected);
});
