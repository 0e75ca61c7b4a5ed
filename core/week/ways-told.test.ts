import { expect, it } from "vitest";
import { waysTold } from "./ways-told.ts";
import { type WeekDocumentInput, weekDocumentSchema } from "./week-document.ts";

const at = (place: string, weekday: number) => ({
  id: `${place}-${weekday}`,
  kind: "gym" as const,
  place,
  weekday,
  start: "10:00",
  minutes: { teach: 60 },
  contribution: "30.00",
  sessions: 40,
});
const base: WeekDocumentInput = {
  currency: "GBP",
  home: "home",
  places: [
    { id: "barn", at: { latitude: 51.29, longitude: -2.24 } },
    { id: "home", at: { latitude: 51.21, longitude: -2.18 } },
    { id: "yard" },
    { id: "mill" },
  ],
  candidates: [at("barn", 1), at("yard", 1), at("yard", 2)],
};
const told = (part: Partial<WeekDocumentInput>) =>
  waysTold(weekDocumentSchema.parse({ ...base, ...part })).map(
    ({ from, to, minutes, guess, stated }) => [`${from}-${to}`, minutes, guess, stated] as const,
  );

it("WEEK-19: lists the ways that are needed: home to each place with a class, and places of one day", () => {
  // nothing is at the mill; 9.8 km as the crow flies × 1.3 at 40 km an hour are 19 minutes, rounded up to 20
  expect(told({})).toEqual([
    ["home-barn", 20, true, null],
    ["home-yard", null, false, null],
    ["barn-yard", null, false, null],
  ]);
});

it("WEEK-19: lists stated ways too, and the way back where it is stated besides", () => {
  const travel = [
    { from: "yard", to: "barn", minutes: 22, km: 16 },
    { from: "home", to: "mill", minutes: 9, km: 4 },
    { from: "barn", to: "yard", minutes: 25, km: 18 },
  ];
  expect(told({ travel })).toEqual([
    ["home-barn", 20, true, null],
    ["home-yard", null, false, null],
    ["home-mill", 9, false, 1],
    ["barn-yard", 25, false, 2],
    ["yard-barn", 22, false, 0],
  ]);
});

it("WEEK-19: a place that is none is left out", () => {
  expect(told({ home: "nowhere" }).map(([way]) => way)).toEqual([
    "nowhere-barn",
    "nowhere-yard",
    "barn-yard",
  ]);
});
