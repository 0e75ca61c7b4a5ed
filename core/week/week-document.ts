import { z } from "zod";

const money = z.string().describe('decimal string, like "12.50"');
const minutes = z.number().describe("whole minutes");
const weekday = z.number().describe("1 is Monday, 7 is Sunday");
const clock = z.string().describe("HH:MM");

export const candidateKinds = ["own", "studio", "gym", "cover", "private", "corporate"] as const;

const placeSchema = z.object({
  id: z.string(),
  name: z.string().optional(),
  at: z
    .object({ latitude: z.number(), longitude: z.number() })
    .optional()
    .describe("degrees; only for a guess of travel that is not stated"),
  zone: z.string().optional().describe("IANA zone, where it is not the zone of the week"),
});

const travelSchema = z
  .object({
    from: z.string(),
    to: z.string(),
    minutes: minutes.describe("whole minutes from door to door"),
    km: z.number().describe("kilometres by the way she takes"),
  })
  .describe("both ways, unless the way back is stated too");

const candidateSchema = z.object({
  id: z.string(),
  name: z.string().optional(),
  kind: z.enum(candidateKinds),
  place: z.string().describe("id of its place"),
  weekday,
  start: clock.describe("HH:MM, when the class begins"),
  minutes: z.object({
    before: minutes.default(0).describe("from having to be there to the start"),
    teach: minutes,
    after: minutes.default(0).describe("from the end to leaving"),
    preparation: minutes.default(0).describe("at home, for each session"),
  }),
  contribution: money.describe("what a session leaves before travel: pay, or takings less hall and the rest"),
  sessions: z.number().describe("sessions a year; for cover, as many as are likely"),
  fixed: z.boolean().default(false).describe("promised already: it is in every week"),
});

const limitsSchema = z.object({
  classesAWeek: z.number().nullable().default(10),
  classesADay: z.number().nullable().default(3),
  backToBack: z.number().nullable().default(2).describe("classes in a row without a break"),
  breakMinutes: minutes.default(30).describe("free minutes between two classes that make a break"),
  evenings: z.number().nullable().default(null).describe("days with a class that ends in the evening"),
  eveningFrom: clock.default("18:00"),
  freeDays: z.number().default(1).describe("days without a class"),
  restHours: z.number().default(11).describe("from being home to leaving the next day"),
  buffer: minutes.default(10).describe("minutes to spare on each way between two places"),
});

const wishSchema = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("day-free"), weekday, perWeek: money }),
  z.object({ kind: z.literal("evening-free"), weekday, perWeek: money }),
  z.object({ kind: z.literal("rather-not"), candidate: z.string(), perWeek: money }),
  z.object({
    kind: z.literal("fewer-classes"),
    than: z.number().describe("each class a week beyond so many costs the price"),
    perWeek: money,
  }),
]);

const commitmentSchema = z.object({
  name: z.string().optional(),
  weekday,
  from: clock,
  until: clock.describe("later the same day"),
});

/** Everything that could be taught in an ordinary week, the ways between, and the limits it has to keep. */
export const weekDocumentSchema = z
  .object({
    format: z.literal("hallful/week@1").optional(),
    currency: z.string().describe("ISO 4217 code of all amounts"),
    zone: z.string().optional().describe("IANA zone of all times"),
    home: z.string().describe("id of the place where each day begins and ends"),
    places: z.array(placeSchema),
    travel: z.array(travelSchema).default([]),
    travelCost: z
      .object({ perKm: money.default("0"), perHour: money.default("0").describe("of travel and waiting") })
      .default({ perKm: "0", perHour: "0" }),
    homeBetween: minutes
      .default(60)
      .describe("she goes home between two classes when she has so many minutes there"),
    estimate: z
      .object({
        detour: z.number().default(1.3).describe("how much longer the road is than the straight line"),
        kmPerHour: z.number().default(40),
      })
      .default({ detour: 1.3, kmPerHour: 40 })
      .describe("for travel guessed from map coordinates"),
    candidates: z.array(candidateSchema),
    commitments: z
      .array(commitmentSchema)
      .default([])
      .describe(
        "when she is not free, ways there and back in it: neither a class nor a way to one falls into it",
      ),
    limits: limitsSchema.default(limitsSchema.parse({})),
    wishes: z.array(wishSchema).default([]).describe("what would be nice, each with its price"),
    weeks: z.number().default(40).describe("teaching weeks a year, for the prices of wishes"),
    target: money.optional().describe("what the year should leave at least, for the lightest week that does"),
    guesses: z.array(z.string()).default([]).describe("paths of the fields that are still guesses"),
  })
  .describe("A week: what could be taught, where and when, the ways between, limits and wishes.");

export type WeekDocument = z.output<typeof weekDocumentSchema>;
export type WeekDocumentInput = z.input<typeof weekDocumentSchema>;
export type WeekCandidateDocument = WeekDocument["candidates"][number];
