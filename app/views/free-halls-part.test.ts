import { expect, test } from "vitest";
import { type FreeHallsInput, freeHallsPart } from "./free-halls-part.ts";

const asked: FreeHallsInput = {
  practice: { currency: "GBP" },
  document: {
    // ten Tuesdays from 12 January to 16 March 2027
    year: { from: "2027-01-12", until: "2027-03-16", closures: [], fixedPerYear: "0" },
    planning: {
      halls: {
        barn: { free: [{ weekday: 2, from: "17:00", until: "22:00" }] },
        quay: { free: [{ weekday: 2, from: "09:00", until: "12:00" }] },
        brannoc: {
          free: [{ weekday: 2, from: "17:00", until: "22:00" }],
          terms: [{ from: "2027-09-01", until: "2027-12-18" }],
        },
      },
    },
  },
  halls: [
    { id: "barn", name: "Tithe Barn Hall" },
    { id: "quay", name: "Quay Street Mission Room" },
    { id: "brannoc", name: "St Brannoc’s" },
    { id: "grange", name: "Grange Hall" },
  ],
  window: { weekday: 2, from: 1080, until: 1170 },
};

test("which halls are free on Tuesdays from 18:00 to 19:30 is answered first, then why the others are not", () => {
  const part = freeHallsPart(asked);
  expect(part.says).toBe(
    "On Tuesdays from 18:00 to 19:30 Tithe Barn Hall is free. Of 1 hall nobody has written down when it is free.",
  );
  expect(part.rows.map(({ name, free, says }) => `${name}: ${free}, ${says}`)).toEqual([
    "Tithe Barn Hall: yes, 10 of 10 dates of the year",
    "Quay Street Mission Room: no, only 09:00 to 12:00",
    "St Brannoc’s: no, no date of the year is left",
    "Grange Hall: not stated, ask the hall",
  ]);
});

test("a time that ends before it begins is told, and nothing free is never called free", () => {
  expect(freeHallsPart({ ...asked, window: { weekday: 2, from: 1170, until: 1080 } }).says).toBe(
    "That time ends before it begins.",
  );
  expect(freeHallsPart({ ...asked, window: { weekday: 3, from: 1080, until: 1170 } }).says).toMatch(
    /^On Wednesdays from 18:00 to 19:30 no hall is known to be free\./,
  );
});
