import { type WeekPlan, weekPlanSchema } from "#core/week";

const studio = { before: 10, teach: 60, after: 5, preparation: 20 };
const baths = { before: 10, teach: 55, after: 5, preparation: 15 };

/** Oriel's week: her own classes come from their sheets; what else she could teach, the ways, limits and wishes. */
export const marlsfordWeek: WeekPlan = weekPlanSchema.parse({
  format: "hallful/week-plan@1",
  home: "home",
  places: [
    { id: "home", name: "Home", at: { latitude: 51.21, longitude: -2.18 } },
    { id: "tithe-barn-hall", at: { latitude: 51.29, longitude: -2.24 } },
    { id: "plum-yard", name: "Plum Yard", at: { latitude: 51.23, longitude: -2.13 } },
    { id: "hartsmoor", name: "Hartsmoor Baths" },
    { id: "mill", name: "Marlsford Mill", at: { latitude: 51.26, longitude: -2.11 } },
  ],
  travel: [
    { from: "home", to: "tithe-barn-hall", minutes: 15, km: 14 },
    { from: "home", to: "quay-street-mission-room", minutes: 12, km: 5 },
    { from: "home", to: "st-brannocs-church-hall", minutes: 10, km: 9.5 },
    { from: "home", to: "plum-yard", minutes: 12, km: 6 },
    { from: "home", to: "hartsmoor", minutes: 25, km: 21 },
    { from: "tithe-barn-hall", to: "plum-yard", minutes: 22, km: 16 },
    { from: "quay-street-mission-room", to: "plum-yard", minutes: 5, km: 2 },
    { from: "quay-street-mission-room", to: "hartsmoor", minutes: 20, km: 17 },
    { from: "plum-yard", to: "hartsmoor", minutes: 18, km: 15 },
  ],
  travelCost: { perKm: "0.30", perHour: "6.00" },
  own: [{ class: "thursday-beginners", fixed: true }],
  candidates: [
    at("plum-monday", "Plum Yard Monday", "studio", "plum-yard", 1, "18:00", studio, "32.00", 46),
    at("plum-wednesday", "Plum Yard Wednesday", "studio", "plum-yard", 3, "12:30", studio, "28.00", 46),
    at("plum-thursday", "Plum Yard Thursday", "studio", "plum-yard", 4, "17:00", studio, "32.00", 46),
    at("baths-monday", "Hartsmoor Baths Monday", "gym", "hartsmoor", 1, "19:45", baths, "30.00", 48),
    at("baths-thursday", "Hartsmoor Baths Thursday", "gym", "hartsmoor", 4, "10:00", baths, "30.00", 48),
    at("baths-friday", "Hartsmoor Baths Friday", "gym", "hartsmoor", 5, "06:45", baths, "34.00", 48),
    at("cover", "Cover, as it comes", "cover", "plum-yard", 2, "09:30", studio, "27.00", 18),
    at("private", "Private hour", "private", "home", 5, "14:00", studio, "42.00", 24),
    at("mill", "Lunch at the mill", "corporate", "mill", 2, "12:15", studio, "70.00", 30),
  ],
  commitments: [{ name: "Choir", weekday: 3, from: "19:15", until: "21:30" }],
  limits: { classesAWeek: 7, evenings: 3 },
  wishes: [
    { kind: "day-free", weekday: 6, perWeek: "12.00" },
    { kind: "fewer-classes", than: 6, perWeek: "5.00" },
  ],
  target: "5000.00",
  guesses: ["candidates.cover.sessions", "candidates.mill.contribution"],
});

function at(
  id: string,
  name: string,
  kind: WeekPlan["candidates"][number]["kind"],
  place: string,
  weekday: number,
  start: string,
  minutes: WeekPlan["candidates"][number]["minutes"],
  contribution: string,
  sessions: number,
) {
  return { id, name, kind, place, weekday, start, minutes, contribution, sessions };
}
