import { z } from "zod";

const id = z.string();
const instant = z.string().describe("ISO 8601 instant, UTC");
const minorUnits = z.int().min(0).describe("whole minor units of the session's currency");

/** How somebody has her place: bought alone, out of a pass or a block, at less, for nothing, or brought along. */
export const placeKinds = ["single", "pass", "block", "concession", "free", "guest"] as const;
export const meansOfPaying = ["cash", "card", "bank"] as const;
export const cancelReasons = ["hall shut", "teacher", "too few", "weather", "other"] as const;

/** What was paid at once; null while it is owed or there is nothing to pay. */
const paid = z.object({ amount: minorUnits, by: z.enum(meansOfPaying) }).nullable();

/** As #core/notice reads it: so many hours gone by, the same clock so many days before, or a clock of a day. */
export const noticeSchema = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("elapsed"), hours: z.int().min(0) }),
  z.object({ kind: z.literal("days"), days: z.int().min(0) }),
  z.object({ kind: z.literal("clock"), daysBefore: z.int().min(0), at: z.string() }),
]);

const opened = z.object({
  kind: z.literal("opened"),
  class: id,
  name: z.string().describe("of the class, as it was called then"),
  date: z.string().describe("ISO date, local to the hall"),
  starts: instant,
  zone: z.string(),
  minutes: z.int(),
  hall: id.nullable(),
  capacity: z.int().min(0).describe("mats that may be taken"),
  posted: z.int().nullable().describe("the hall's own number of people, with the teacher"),
  currency: z.string(),
  single: minorUnits.describe("price of a single"),
  concession: minorUnits.describe("price at less"),
  notice: noticeSchema.describe("by when a place can be given up"),
  firstLateWaived: z.boolean().describe("whether somebody's first lateness is let go"),
});

const held = z.object({
  kind: z.literal("held"),
  place: id,
  person: id,
  how: z.enum(placeKinds),
  pass: id.nullable().describe("the pass or block it is taken out of"),
  price: minorUnits.describe("0 for what is out of a pass, free or a guest"),
  paid,
  with: id.nullable().describe("the place of who comes along: both or neither"),
  entry: id.nullable().describe("the entry of the waiting list it came from"),
  walkedIn: z.boolean(),
});

/** Everything that can happen to one dated meeting of a class. */
export const sessionEventSchema = z.discriminatedUnion("kind", [
  opened,
  z.object({
    kind: z.literal("moved"),
    date: z.string(),
    starts: instant,
    hall: id.nullable(),
    why: z.string(),
  }),
  z.object({ kind: z.literal("resized"), capacity: z.int().min(0) }),
  z.object({ kind: z.literal("cancelled"), why: z.enum(cancelReasons), movedTo: id.nullable() }),
  z.object({ kind: z.literal("covered"), by: id.describe("the person who teaches it"), fee: minorUnits }),
  held,
  z.object({ kind: z.literal("given up"), place: id, late: z.boolean(), waived: z.boolean() }),
  z.object({ kind: z.literal("marked"), place: id, as: z.enum(["held", "attended", "not come"]) }),
  z
    .object({ kind: z.literal("let go"), place: id, why: z.enum(["filled", "kindness"]) })
    .describe("a lateness is not charged after all"),
  z.object({ kind: z.literal("paid"), place: id, paid: paid.unwrap() }),
  z.object({ kind: z.literal("paid back"), place: id, paid: paid.unwrap() }),
  z.object({
    kind: z.literal("waiting"),
    entry: id,
    person: id,
    with: id.nullable().describe("the entry of who comes along"),
  }),
  z.object({
    kind: z.literal("stopped waiting"),
    entry: id,
    why: z.enum(["declined", "no answer", "withdrawn", "session cancelled"]),
  }),
  z.object({
    kind: z.literal("offered"),
    entry: id,
    until: instant.nullable().describe("null: the first to reply has it"),
  }),
  z
    .object({ kind: z.literal("came over"), person: id, paid, why: z.string() })
    .describe("somebody was let in whom no mat was left for by the time this was told"),
  z.object({ kind: z.literal("counted"), heads: z.int().min(0) }),
  z.object({ kind: z.literal("register closed") }),
]);

export type SessionNotice = z.output<typeof noticeSchema>;
export type SessionEvent = z.output<typeof sessionEventSchema>;
export type SessionOpened = z.output<typeof opened>;
export type PlaceHeld = z.output<typeof held>;
export type PlaceKind = (typeof placeKinds)[number];
export type CancelReason = (typeof cancelReasons)[number];
export type Paid = NonNullable<z.output<typeof paid>>;
export type MeansOfPaying = (typeof meansOfPaying)[number];
