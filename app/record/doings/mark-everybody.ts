import type { SessionState } from "#core/roll";
import { good } from "#core/words";
import { z } from "zod";
import { doing } from "../doing.ts";
import { settlePlaces } from "../settle-places.ts";
import { idSchema } from "./ask-parts.ts";
import { sessionFound } from "./found.ts";

const ask = z
  .object({ kind: z.literal("mark everybody"), session: idSchema })
  .describe("Everybody who is not marked yet is here.");

export const markEverybody = doing({
  ask,
  needs: ({ session }, known) => [
    `session/${session}`,
    ...unmarked(known.session(session)).flatMap(({ pass }) =>
      pass === null ? [] : [`pass/${pass}` as const],
    ),
  ],
  decide: ({ session: id }, desk) => {
    const session = sessionFound(desk, id);
    if (!session.ok) return session;
    const left = unmarked(session.value);
    desk.tellSession(
      id,
      ...left.map(({ id: place }) => ({ kind: "marked", place, as: "attended" }) as const),
    );
    settlePlaces(desk, id, session.value);
    return good({
      says: [left.length === 0 ? "Everybody was marked before." : `${left.length} marked as here.`],
    });
  },
});

function unmarked(session: SessionState | undefined) {
  return (session?.places ?? []).filter(({ state }) => state === "held");
}
