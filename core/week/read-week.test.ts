import { describe, expect, it } from "vitest";
import { guessedWay } from "./guessed-way.ts";
import { readWeek } from "./read-week.ts";
import { anHour, smallWeek } from "./small-week.ts";
import { type WeekDocumentInput, weekDocumentSchema } from "./week-document.ts";

function read(input: WeekDocumentInput) {
  return readWeek(weekDocumentSchema.parse(input));
}

function codes(input: WeekDocumentInput): readonly string[] {
  const week = read(input);
  return week.ok ? [] : week.problems.map(({ code, place }) => `${code} at ${place}`);
}

const one = anHour("one", "barn", 2, "18:30");
const two = anHour("two", "yard", 2, "12:00");

describe("a week document", () => {
  it("WEEK-1: has its ways both ways, unless the way back is stated too", () => {
    const base = smallWeek([one, two]);
    const week = read({
      ...base,
      travel: [...(base.travel ?? []), { from: "yard", to: "home", minutes: 18, km: 7 }],
    });
    if (!week.ok) throw new Error(JSON.stringify(week.problems));
    const minutes = week.value.ways.map((row) => row.map((way) => way?.minutes));
    expect(minutes).toEqual([
      [0, 20, 12],
      [20, 0, 22],
      [18, 22, 0],
    ]);
  });

  it("WEEK-1: tells of a way that is needed and missing, by both names, and of none that is not", () => {
    const base = smallWeek([one, two]);
    const travel = (base.travel ?? []).slice(0, 2);
    const missing = read({ ...base, travel });
    expect(missing.ok ? [] : missing.problems.map(({ says }) => says)).toEqual([
      "Nobody says how long it takes between Barn and yard.",
    ]);
    // on two days nobody drives from the barn to the yard
    expect(codes({ ...base, travel, candidates: [one, { ...two, weekday: 3 }] })).toEqual([]);
  });

  it("WEEK-2: guesses a way from the map, and marks it", () => {
    // one degree of longitude on the equator: 6371.0088 × π ÷ 180 = 111.195 km, × 1.3 = 144.6 km; at 40 km/h
    // 216.8 minutes, rounded up to 220
    const way = guessedWay(
      { latitude: 0, longitude: 10 },
      { latitude: 0, longitude: 11 },
      { detour: 1.3, kmPerHour: 40 },
    );
    expect(way).toEqual({ minutes: 220, km: 144.6, guess: true });
    // across the date line and back is not around the world: 2 × 111.195 km
    const line = guessedWay(
      { latitude: 0, longitude: 179 },
      { latitude: 0, longitude: -179 },
      { detour: 1, kmPerHour: 60 },
    );
    expect(line.km).toBe(222.4);
  });

  it("WEEK-2: never guesses where a way is stated", () => {
    const base = smallWeek([one, two]);
    const at = { latitude: 51, longitude: -2 };
    const week = read({ ...base, places: base.places.map((place) => ({ ...place, at })) });
    if (!week.ok) throw new Error(JSON.stringify(week.problems));
    expect(week.value.ways.flat().filter((way) => way?.guess === true)).toEqual([]);
    const guessed = read({
      ...base,
      places: base.places.map((place) => ({ ...place, at })),
      travel: base.travel?.slice(0, 2) ?? [],
    });
    if (!guessed.ok) throw new Error(JSON.stringify(guessed.problems));
    expect(guessed.value.ways[1]?.[2]).toEqual({ minutes: 0, km: 0, guess: true });
  });

  it("WEEK-3: tells of what cannot be, each at its place", () => {
    const late = anHour("late", "barn", 2, "22:58", { fixed: true });
    const early = anHour("early", "barn", 3, "00:05");
    // 22:58 + 60 + 5 minutes is 00:03; 00:05 − 10 is 23:55
    expect(codes(smallWeek([late, early]))).toEqual([
      "across-midnight at candidates[0].start",
      "across-midnight at candidates[1].start",
    ]);
    const promised = [one, two].map((it) => ({ ...it, weekday: 2, start: "18:00", fixed: true }));
    expect(codes(smallWeek(promised))).toEqual(["fixed-overlap at candidates[1]"]);
    const base = smallWeek([one]);
    const abroad = base.places.map((it) => (it.id === "barn" ? { ...it, zone: "America/Chicago" } : it));
    expect(codes({ ...base, zone: "Europe/London", places: abroad })).toEqual([
      "two-zones at places[1].zone",
    ]);
    expect(codes({ ...base, places: abroad })).toEqual(["two-zones at places[1].zone"]);
    for (const cap of ["classesAWeek", "classesADay", "backToBack"] as const)
      expect(codes({ ...base, limits: { [cap]: 0 } })).toEqual([`cap-nought at limits.${cap}`]);
  });

  it("WEEK-3: a class that ends at midnight and one that follows at once are none of these", () => {
    const until = anHour("until", "barn", 2, "22:55", { fixed: true });
    const before = anHour("before", "barn", 2, "21:40", { fixed: true });
    // 22:55 + 65 minutes is 24:00; 21:40 + 65 is 22:45, when the other begins
    expect(codes(smallWeek([until, before]))).toEqual([]);
  });
});
