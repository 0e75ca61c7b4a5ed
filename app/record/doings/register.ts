import { closeRegister, markPlace, type SessionState } from "#core/roll";
import { good } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { settlePlaces } from "../settle-places.ts";
import { idSchema } from "./ask-parts.ts";
import { sessionFound } from "./found.ts";

const mark = z
  .object({
    kind: z.literal("mark"),
    session: idSchema,
    place: idSchema,
    as: z.enum(["held", "attended", "not come"]).describe("held: the mark is taken back"),
  })
  .describe("A name on the register is marked.");

export const markRegister = doing({
  ask: mark,
  needs: ({ session, place }, known) => [
    `session/${session}`,
    ...passesOf(known.session(session), (id) => id === place),
  ],
  decide: (asked, desk) => {
    const session = sessionFound(desk, asked.session);
    if (!session.ok) return session;
    const events = markPlace(session.value, asked.place, asked.as);
    if (!events.ok) return events;
    desk.tellSession(asked.session, ...events.value);
    settlePlaces(desk, asked.session, session.value);
    return good({ says: [`Marked as ${asked.as === "held" ? "not marked yet" : asked.as}.`] });
  },
});

function passesOf(session: SessionState | undefined, which: (place: string) => boolean) {
  return (session?.places ?? []).flatMap(({ id, pass }) =>
    pass !== null && which(id) ? [`pass/${pass}` as const] : [],
  );
}

const count = z
  .object({ kind: z.literal("count heads"), session: idSchema, heads: z.int().min(0).max(10_000) })
  .describe("Everybody in the room is counted, with the teacher and helpers, as after an evacuation.");

export const countHeads = doing({
  ask: count,
  needs: ({ session }) => [`session/${session}`],
  decide: (asked, desk) => {
    const session = sessionFound(desk, asked.session);
    if (!session.ok) return session;
    desk.tellSession(asked.session, { kind: "counted", heads: asked.heads });
    return good({ says: [`${asked.heads} heads counted.`] });
  },
});

const close = z
  .object({ kind: z.literal("close register"), session: idSchema })
  .describe("The register is closed: whoever is not marked did not come.");

export const closeTheRegister = doing({
  ask: close,
  needs: ({ session }, known) => [`session/${session}`, ...passesOf(known.session(session), () => true)],
  decide: (asked, desk) => {
    const session = sessionFound(desk, asked.session);
    if (!session.ok) return session;
    const events = closeRegister(session.value);
    desk.tellSession(asked.session, ...events);
    settlePlaces(desk, asked.session, session.value);
    const away = events.filter(({ kind }) => kind === "marked").length;
    return good({
      says: [away === 0 ? "The register is closed." : `The register is closed; ${away} did not come.`],
    });
  },
});
