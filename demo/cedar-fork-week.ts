import { type WeekPlan, weekPlanSchema } from "#core/week";

/** Ines's week: one class of her own, two for others, and a wish. */
export const cedarForkWeek: WeekPlan = weekPlanSchema.parse({
  format: "hallful/week-plan@1",
  home: "home",
  places: [
    { id: "home", name: "Home", at: { latitude: 41.62, longitude: -91.71 } },
    { id: "grange-hall", at: { latitude: 41.69, longitude: -91.64 } },
    { id: "elm-street", name: "Elm Street Studio", at: { latitude: 41.66, longitude: -91.53 } },
  ],
  travel: [{ from: "home", to: "grange-hall", minutes: 20, km: 16 }],
  travelCost: { perKm: "0.43", perHour: "0.00" },
  own: [],
  candidates: [
    {
      id: "elm-wednesday",
      name: "Elm Street Wednesday",
      kind: "studio",
      place: "elm-street",
      weekday: 3,
      start: "17:30",
      minutes: { before: 10, teach: 60, after: 10, preparation: 20 },
      contribution: "38.00",
      sessions: 44,
    },
    {
      id: "elm-monday",
      name: "Elm Street Monday noon",
      kind: "studio",
      place: "elm-street",
      weekday: 1,
      start: "12:00",
      minutes: { before: 10, teach: 45, after: 10, preparation: 15 },
      contribution: "34.00",
      sessions: 44,
    },
    {
      id: "library",
      name: "Staff hour at the library",
      kind: "corporate",
      place: "elm-street",
      weekday: 1,
      start: "13:00",
      minutes: { before: 5, teach: 40, after: 5, preparation: 15 },
      contribution: "55.00",
      sessions: 20,
    },
  ],
  limits: { classesAWeek: 4, evenings: 2 },
  wishes: [{ kind: "evening-free", weekday: 3, perWeek: "15.00" }],
  guesses: ["candidates.library.sessions"],
});
