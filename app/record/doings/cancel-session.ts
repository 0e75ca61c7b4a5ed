import { costDue } from "#core/books";
import { cancelReasons, type SessionState, takesMat } from "#core/roll";
import { bad, good, problem, type Result } from "#core/words";
import { z } from "zod";
import type { Desk } from "../desk.ts";
import { doing, type Told } from "../doing.ts";
import { everybodyOff, moneyBack } from "../everybody-off.ts";
import { followsSentences } from "../follows-words.ts";
import { settlePlaces, tellPass } from "../settle-places.ts";
import { type Follows, whatFollows } from "../what-follows.ts";
import { idSchema, isoDateSchema } from "./ask-parts.ts";
import { sessionFound } from "./found.ts";

const ask = z
  .object({
    kind: z.literal("cancel session"),
    session: idSchema,
    why: z.enum(cancelReasons),
    teachingDates: z.array(isoDateSchema).describe("later dates of the class: use-bys move along them"),
    passes: z.array(idSchema).default([]).describe("other live passes that are good for the class"),
    singles: z.enum(["give back", "keep"]).default("give back"),
    hire: z
      .object({ hall: idSchema, charged: z.int().min(0) })
      .nullable()
      .default(null)
      .describe("what the hall charges for the date all the same"),
    seen: z.array(idSchema).describe("the places that were listed before it was done"),
  })
  .describe("A session does not take place: everything that follows is done with it, or nothing.");

type Asked = z.output<typeof ask>;

export const cancelSession = doing({
  ask,
  needs: ({ session, passes }, known) => [
    `session/${session}`,
    ...(known.session(session)?.places ?? []).flatMap(({ pass }) =>
      pass === null ? [] : [`pass/${pass}` as const],
    ),
    ...passes.map((id) => `pass/${id}` as const),
  ],
  decide: (asked, desk) => {
    const session = sessionFound(desk, asked.session);
    if (!session.ok) return session;
    if (session.value.cancelled !== null) return bad(cancelledBefore());
    if (session.value.closed) return bad(wasHeld());
    if (!sameAsSeen(session.value, asked)) return bad(changedSince());
    const follows = whatFollows(desk, asked);
    return follows === undefined ? bad(changedSince()) : cancelled(desk, asked, follows);
  },
});

function cancelled(desk: Desk, asked: Asked, follows: Follows): Result<Told> {
  const { session } = follows;
  desk.tellSession(
    asked.session,
    ...everybodyOff(session),
    ...(asked.singles === "keep" ? [] : moneyBack(session)),
    { kind: "cancelled", why: asked.why, movedTo: null },
  );
  settlePlaces(desk, asked.session, session);
  for (const { pass, to } of follows.passes)
    tellPass(desk, pass, {
      kind: "extended",
      on: session.date,
      useBy: to,
      why: "closure",
      session: asked.session,
    });
  postHire(desk, asked, session);
  return good({ says: followsSentences(follows, desk.writer, asked.singles) });
}

function postHire(desk: Desk, { hire, session: id }: Asked, { currency, date: on }: SessionState): void {
  if (hire === null || hire.charged === 0) return;
  const due = { cost: "hall", to: hire.hall, amount: hire.charged, currency, on, session: id } as const;
  desk.post(`session/${id}`, costDue(due));
}

/** What was listed and what is done are the same people. */
function sameAsSeen({ places }: SessionState, { seen }: Asked): boolean {
  const now = places.filter(takesMat).map(({ id }) => id);
  return now.length === seen.length && now.every((id) => seen.includes(id));
}

function cancelledBefore() {
  const says = "This session was cancelled before.";
  return problem("session-cancelled", "session", says, "Nothing more is to be done for it.");
}

function wasHeld() {
  const says = "The register of this session is closed, so it took place.";
  return problem(
    "session-held",
    "session",
    says,
    "Give classes or money back to those it concerns one by one.",
  );
}

function changedSince() {
  const says = "Somebody took or gave up a place since this was listed.";
  return problem(
    "changed-since-listed",
    "session",
    says,
    "Nothing was done. Read the list again, then do it.",
  );
}
