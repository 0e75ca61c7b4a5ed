import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xorshift128plus } from "pure-rand/generator/xorshift128plus";
import { type WeekDocument, type WeekDocumentInput, weekDocumentSchema } from "#core/week";

/** Sizes of a random week; `draw(n)` answers a whole number from 0 to n − 1. */
export type RandomWeek = {
  readonly candidates: number;
  readonly places: number;
  readonly days: number;
  /** all begin from 16:00 to 20:15, as most who work would have it; else from 7:00 to 19:45 */
  readonly crowded?: boolean;
  readonly draw: (below: number) => number;
};

/** A week that could be: places on a square of 24 km, ways of 2 minutes a kilometre, hours from 7 to 20. */
export function randomWeek({ candidates, places, days, draw, crowded = false }: RandomWeek): WeekDocument {
  const points = Array.from({ length: places }, () => [draw(24), draw(24)] as const);
  const travel = points.flatMap(([x, y], from) =>
    points.slice(0, from).map(([u, v], to) => {
      const km = Math.abs(x - u) + Math.abs(y - v);
      return { from: `place-${from}`, to: `place-${to}`, km, minutes: 2 * km + 3 };
    }),
  );
  const input: WeekDocumentInput = {
    currency: "GBP",
    home: "place-0",
    places: points.map((_, at) => ({ id: `place-${at}` })),
    travel,
    travelCost: { perKm: "0.30", perHour: draw(2) === 0 ? "0" : "6.00" },
    candidates: Array.from({ length: candidates }, (_, at) =>
      randomCandidate(at, places, days, draw, crowded),
    ),
  };
  return weekDocumentSchema.parse(input);
}

function randomCandidate(
  at: number,
  places: number,
  days: number,
  draw: RandomWeek["draw"],
  crowded: boolean,
) {
  const quarter = crowded ? 64 + draw(18) : 28 + draw(52);
  const start = `${String(Math.floor(quarter / 4)).padStart(2, "0")}:${String((quarter % 4) * 15).padStart(2, "0")}`;
  const kinds = ["own", "studio", "gym", "cover", "private", "corporate"] as const;
  return {
    id: `class-${at}`,
    kind: kinds[draw(6)] ?? "own",
    place: `place-${draw(places)}`,
    weekday: 1 + draw(days),
    start,
    minutes: {
      before: draw(3) * 10,
      teach: 45 + draw(4) * 15,
      after: draw(3) * 5,
      preparation: draw(2) * 20,
    },
    contribution: `${10 + draw(60)}.${String(draw(100)).padStart(2, "0")}`,
    sessions: 20 + draw(29),
  };
}

export function drawing(seed: number): (below: number) => number {
  const generator = xorshift128plus(seed);
  return (below) => uniformInt(generator, 0, below - 1);
}

/** Limits tight enough to bite on seven candidates of two or three days. */
export function tightened(document: WeekDocument, draw: (below: number) => number): WeekDocument {
  const wish = { perWeek: `${draw(20)}.50` };
  const wishes: WeekDocument["wishes"] = [
    { kind: "day-free", weekday: 1 + draw(3), ...wish },
    { kind: "evening-free", weekday: 1 + draw(3), ...wish },
    { kind: "rather-not", candidate: `class-${draw(7)}`, ...wish },
    { kind: "fewer-classes", than: draw(4), ...wish },
  ];
  return {
    ...document,
    homeBetween: 30 + draw(3) * 30,
    limits: {
      ...document.limits,
      classesAWeek: 2 + draw(4),
      classesADay: 1 + draw(3),
      backToBack: [1, 2, 3, null][draw(4)] ?? null,
      breakMinutes: draw(5) * 15,
      evenings: [0, 1, 2, null][draw(4)] ?? null,
      freeDays: draw(7),
      restHours: 6 + draw(12),
      buffer: draw(3) * 5,
    },
    wishes: wishes.slice(draw(5)),
    candidates: document.candidates.map((one) => ({ ...one, fixed: draw(9) === 0 })),
  };
}
