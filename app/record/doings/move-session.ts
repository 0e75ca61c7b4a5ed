import { bad, good, problem } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { idSchema, instantSchema, isoDateSchema } from "./ask-parts.ts";
import { sessionFound } from "./found.ts";

const ask = z
  .object({
    kind: z.literal("move session"),
    session: idSchema,
    date: isoDateSchema,
    starts: instantSchema,
    hall: idSchema.nullable(),
    capacity: z.int().min(0).max(10_000),
    why: z.string().max(200),
  })
  .describe("A session moves to another time or hall, with everybody who has a place in it.");

export const moveSession = doing({
  ask,
  needs: ({ session }) => [`session/${session}`],
  decide: ({ session: id, date, starts, hall, capacity, why }, desk) => {
    const session = sessionFound(desk, id);
    if (!session.ok) return session;
    const { places, cancelled, closed, name } = session.value;
    if (cancelled !== null || closed) return bad(isOver());
    const taken = places.filter(({ state }) => state === "held" || state === "attended").length;
    if (capacity < taken) return bad(tooSmall(taken, capacity));
    desk.tellSession(id, { kind: "moved", date, starts, hall, why }, { kind: "resized", capacity });
    const told = taken === 0 ? "Nobody had a place." : `${taken} had a place and keep it; tell them.`;
    return good({ says: [`${name} is moved to ${desk.writer.day(date)}. ${told}`] });
  },
});

function isOver() {
  const says = "This session is over or was cancelled.";
  return problem("session-over", "session", says, "Move one that is still to come.");
}

function tooSmall(taken: number, capacity: number) {
  const says = `${taken} have a place, and the other room takes ${capacity}.`;
  return problem(
    "moved-too-small",
    "capacity",
    says,
    "Choose a larger room, or cancel and offer other dates.",
  );
}
