import { type ClassDocument, classDocumentSchema } from "#core/class";
import { marlsfordYear } from "./marlsford-year.ts";

export const tuesdayEvening: ClassDocument = classDocumentSchema.parse({
  format: "hallful/class@1",
  name: "Tuesday evening, mixed",
  whoFor: "Anybody who can get down to the floor and up again.",
  hall: "tithe-barn-hall",
  weekday: 2,
  start: "19:00",
  minutes: { setUp: 20, class: 75, packDown: 15, travel: 30, preparation: 30, admin: 20 },
  matsOwned: 18,
  ownCap: 16,
  insurerCap: null,
  costs: { travel: "2.70", music: "0.00", cover: "0.00", other: "1.00", perHead: "0.20" },
  prices: { single: "9.50", passes: [{ classes: 10, price: "82.00" }], concession: "7.50" },
  mix: { single: 0.3, "pass-10": 0.5, concession: 0.15, free: 0.05 },
  heads: 11,
  year: { ...marlsfordYear, fixedPerYear: "190.00" },
  planning: {
    attendance: 0.7,
    beliefs: [
      { price: "8.00", heads: 13 },
      { price: "9.50", heads: 11 },
      { price: "12.00", heads: 7 },
    ],
    survey: "Plum Yard; 11.00; 14\nHartsmoor Baths; 7.50\nMarlsford library room; 9.00",
    studio: {
      name: "Plum Yard",
      pay: { form: "tiered", base: "28.00", perHead: "2.50", above: 6, cap: "50.00" },
      heads: 12,
      minutes: 110,
      travelCost: "3.00",
    },
    halls: {
      "quay-street-mission-room": {
        travelMinutes: 24,
        travelCost: "2.10",
        free: [{ weekday: 2, from: "18:00", until: "22:00" }],
        closures: [{ from: "2027-06-08", until: "2027-06-08", why: "annual meeting" }],
      },
      "st-brannocs-church-hall": { travelMinutes: 20, travelCost: "1.80" },
    },
  },
  outlook: { notice: { days: 28, term: 11, exitCost: "64.00" } },
  guesses: ["mix", "costs.other", "planning.studio"],
});

export const thursdayBeginners: ClassDocument = classDocumentSchema.parse({
  format: "hallful/class@1",
  name: "Thursday beginners",
  whoFor: "First steps, slowly; come on your own or in a pair.",
  hall: "quay-street-mission-room",
  weekday: 4,
  start: "18:30",
  minutes: { setUp: 20, class: 60, packDown: 15, travel: 24, preparation: 35, admin: 25 },
  matsOwned: 18,
  ownCap: 12,
  costs: { travel: "2.10", music: "0.00", cover: "0.00", other: "0.00", perHead: "0.20" },
  prices: {
    single: "9.00",
    passes: [
      { classes: 5, price: "42.00" },
      { classes: 10, price: "78.00" },
    ],
    concession: "7.00",
    courses: [{ sessions: 6, price: "48.00" }],
  },
  mix: { single: 0.4, "pass-5": 0.3, "pass-10": 0.2, concession: 0.05, free: 0.05 },
  heads: 7,
  year: {
    ...marlsfordYear,
    closures: [
      ...marlsfordYear.closures,
      { from: "2027-05-05", until: "2027-05-06", why: "polling station" },
    ],
    fixedPerYear: "190.00",
  },
  // twelve said yes to a free first evening, seven came, four of them again
  outlook: {
    opening: { turnUp: 0.6, happened: { accepted: 12, came: 7, returned: 4 } },
    notice: {
      days: 28,
      dates: ["2026-12-10", "2027-02-11", "2027-03-25"],
      term: 11,
      exitCost: "38.00",
    },
    evening: { booked: 3, hallPastNotice: true, avoidable: "2.10", cancelling: "10.00", fee: "30.00" },
  },
  guesses: ["heads", "mix", "outlook.opening.turnUp"],
});

export const saturdayLong: ClassDocument = classDocumentSchema.parse({
  format: "hallful/class@1",
  name: "Saturday long practice",
  whoFor: "A year of practice or more; ninety minutes.",
  hall: "st-brannocs-church-hall",
  weekday: 6,
  start: "09:30",
  minutes: { setUp: 25, class: 90, packDown: 15, travel: 20, preparation: 40, admin: 20 },
  matsOwned: 18,
  costs: { travel: "1.80", music: "0.00", cover: "0.00", other: "0.00", perHead: "0.35" },
  prices: { single: "12.00", passes: [{ classes: 6, price: "64.00" }] },
  mix: { single: 0.45, "pass-6": 0.5, free: 0.05 },
  heads: 13,
  year: { ...marlsfordYear, fixedPerYear: "190.00" },
  outlook: { roll: { newcomers: 1.5 }, notice: { days: 28, term: 12 } },
  guesses: ["heads", "mix", "costs.perHead", "outlook.roll"],
});

export const wednesdayChairs: ClassDocument = classDocumentSchema.parse({
  format: "hallful/class@1",
  name: "Wednesday morning on chairs",
  whoFor: "Seated and standing; nobody goes to the floor.",
  hall: "quay-street-mission-room",
  weekday: 3,
  start: "10:30",
  minutes: { setUp: 25, class: 50, packDown: 20, travel: 24, preparation: 20, admin: 20 },
  mats: { mat: { length: 1.5, width: 1 }, gaps: { side: 0.5, end: 0.4, wall: 0.4 } },
  matsOwned: null,
  ownCap: 10,
  costs: { travel: "2.10", music: "0.00", cover: "0.00", other: "0.00", perHead: "0.60" },
  prices: { single: "7.00", passes: [{ classes: 10, price: "60.00" }] },
  mix: { single: 0.5, "pass-10": 0.45, free: 0.05 },
  heads: 9,
  year: { ...marlsfordYear, fixedPerYear: "90.00" },
  // people of a seated class stay, and come nearly every week
  outlook: {
    roll: { newcomers: 0.7, stays: 0.5, attends: 0.75, leaves: 0.01 },
    regulars: 4,
    notice: { days: 28, term: 12 },
  },
  guesses: ["prices.single", "outlook.roll"],
});
