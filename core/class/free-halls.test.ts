import { branded, type CurrencyCode } from "#core/words";
import { expect, test } from "vitest";
import { type FreeHall, freeHalls, type HallWindow } from "./free-halls.ts";

const GBP = branded<CurrencyCode>("GBP");
const half = { from: "2027-02-15", until: "2027-02-19", why: "half-term" };
// Ten Tuesdays from 12 January to 16 March 2027, one of them in half-term.
const year = { from: "2027-01-12", until: "2027-03-16", closures: [half], fixedPerYear: "0" };
const evenings = [{ weekday: 2, from: "17:00", until: "22:00" }];

function asked(window: HallWindow, halls: object): readonly FreeHall[] {
  return freeHalls({ planning: { halls: { ...halls } }, year }, Object.keys(halls), window, GBP);
}

const halfPastSix: HallWindow = { weekday: 2, from: 1080, until: 1170 };

test("CLASS-14 a hall is free when one of its free spans holds the whole time, on the dates that are left", () => {
  const halls = {
    barn: { free: evenings },
    // five Tuesdays from 12 January to 9 February
    quay: { free: evenings, terms: [{ from: "2027-01-01", until: "2027-02-12" }] },
    brannoc: { free: evenings, closures: [{ from: "2027-03-16", until: "2027-03-16", why: "funeral" }] },
  };
  expect(asked(halfPastSix, halls)).toEqual([
    { id: "barn", kind: "free", dates: 9, of: 10 },
    { id: "quay", kind: "free", dates: 5, of: 10 },
    { id: "brannoc", kind: "free", dates: 8, of: 10 },
  ]);
});

test("CLASS-14 what is taken says when it is free instead, and what nobody stated is not called free", () => {
  const halls = {
    mornings: { free: [{ weekday: 2, from: "09:00", until: "12:00" }] },
    touching: {
      free: [
        { weekday: 2, from: "19:00", until: "22:00" },
        { weekday: 2, from: "17:00", until: "19:00" },
      ],
    },
    thursdays: { free: [{ weekday: 4, from: "17:00", until: "22:00" }] },
    unknown: {},
    empty: { free: [] },
    unsound: { free: [{ weekday: 2, from: "22:00", until: "five" }] },
  };
  expect(asked(halfPastSix, halls)).toEqual([
    { id: "mornings", kind: "taken", instead: "only 09:00 to 12:00" },
    { id: "touching", kind: "taken", instead: "only 17:00 to 19:00 and 19:00 to 22:00" },
    { id: "thursdays", kind: "taken", instead: "never on that day" },
    { id: "unknown", kind: "not stated" },
    { id: "empty", kind: "not stated" },
    { id: "unsound", kind: "taken", instead: "never on that day" },
  ]);
});

test("CLASS-14 while the year is unsound the dates are left open", () => {
  const planning = { halls: { barn: { free: evenings } } };
  const backwards = { ...year, from: "2028-01-01" };
  expect(freeHalls({ planning, year: backwards }, ["barn"], halfPastSix, GBP)).toEqual([
    { id: "barn", kind: "free", dates: null, of: null },
  ]);
});
