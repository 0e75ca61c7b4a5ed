import { expect, test } from "vitest";
import { schoolDays } from "./school-days.ts";

test("of a school's calendar the days without school count, and the others are told (YEAR-8)", () => {
  const found = schoolDays([
    { title: "Autumn half-term", from: "2026-10-26", until: "2026-10-30" },
    { title: "INSET day", from: "2026-09-04", until: "2026-09-04" },
    { title: "Christmas holidays", from: "2026-12-21", until: "2027-01-01" },
    { title: "Term begins after the holiday", from: "2027-01-04", until: "2027-01-04" },
    { title: "Sports day", from: "2027-06-18", until: "2027-06-18" },
    { title: "Half-term disco", from: "2026-10-23T18:00", until: "2026-10-23T20:00" },
    { title: "Sports day", from: "2027-06-25", until: "2027-06-25" },
  ]);
  expect(found).toEqual({
    days: [
      { from: "2026-10-26", until: "2026-10-30", why: "Autumn half-term" },
      { from: "2026-09-04", until: "2026-09-04", why: "INSET day" },
      { from: "2026-12-21", until: "2027-01-01", why: "Christmas holidays" },
    ],
    leftOut: ["Term begins after the holiday", "Sports day", "Half-term disco"],
  });
});
