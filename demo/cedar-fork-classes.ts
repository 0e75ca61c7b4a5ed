import { type ClassDocument, classDocumentSchema } from "#core/class";

export const mondayAfterWork: ClassDocument = classDocumentSchema.parse({
  format: "hallful/class@1",
  name: "Monday after work",
  whoFor: "All levels; bring a blanket in winter.",
  hall: "grange-hall",
  weekday: 1,
  start: "17:45",
  minutes: { setUp: 20, class: 75, packDown: 15, travel: 40, preparation: 30, admin: 20 },
  matsOwned: 20,
  insurerCap: 24,
  costs: { travel: "6.40", music: "0.00", cover: "0.00", other: "0.00", perHead: "0.50" },
  prices: { single: "16.00", passes: [{ classes: 10, price: "135.00" }], concession: "12.00" },
  mix: { single: 0.4, "pass-10": 0.45, concession: 0.1, free: 0.05 },
  heads: 12,
  year: {
    from: "2026-08-31",
    until: "2027-06-28",
    closures: [
      { from: "2026-09-07", until: "2026-09-07", why: "Labor Day" },
      { from: "2026-12-21", until: "2027-01-01", why: "winter holidays" },
      { from: "2027-03-15", until: "2027-03-19", why: "spring break" },
      { from: "2027-05-31", until: "2027-05-31", why: "Memorial Day" },
    ],
    fixedPerYear: "310.00",
  },
  outlook: {
    roll: { newcomers: 1.5 },
    notice: { days: 30, dates: ["2026-12-01", "2027-03-01"], term: 12, exitCost: "81.00" },
  },
  guesses: ["heads", "mix", "outlook.roll"],
});
