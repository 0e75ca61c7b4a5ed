import { expect, it } from "vitest";
import { readWeek } from "./read-week.ts";
import { weekDocumentSchema } from "./week-document.ts";

function codesAt(weekday: number, start: string, zone: string | undefined) {
  const read = readWeek(
    weekDocumentSchema.parse({
      currency: "GBP",
      ...(zone === undefined ? {} : { zone }),
      home: "home",
      places: [{ id: "home" }],
      candidates: [
        {
          id: "night",
          name: "Night practice",
          kind: "private",
          place: "home",
          weekday,
          start,
          minutes: { teach: 45 },
          contribution: "30.00",
          sessions: 40,
        },
      ],
    }),
  );
  return read.ok ? [] : read.problems.map(({ code, place }) => `${code} ${place}`);
}

const told = ["clock-change-hour candidates[0].start"];

it("WEEK-9: a class in an hour that the clocks skip or show twice is told by its name", () => {
  // London: 01:00 to 02:00 is skipped in March and shown twice in October, both on Sundays
  expect(codesAt(7, "01:30", "Europe/London")).toEqual(told);
  expect(codesAt(7, "00:15", "Europe/London")).toEqual([]);
  expect(codesAt(7, "00:16", "Europe/London")).toEqual(told);
  expect(codesAt(7, "02:00", "Europe/London")).toEqual([]);
  expect(codesAt(6, "01:30", "Europe/London")).toEqual([]);
});

it("WEEK-9: in Chicago it is two hours, in a zone that keeps its clocks none, and without a zone nobody knows", () => {
  // 02:00 to 03:00 is skipped in March, 01:00 to 02:00 shown twice in November
  expect(["01:15", "02:15", "03:00"].map((start) => codesAt(7, start, "America/Chicago").length)).toEqual([
    1, 1, 0,
  ]);
  expect(codesAt(7, "01:30", "Asia/Kolkata")).toEqual([]);
  expect(codesAt(7, "01:30", undefined)).toEqual([]);
});
