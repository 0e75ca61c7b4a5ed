import { costDue } from "#core/books";
import { type PersonState, sessionCancelled, type SessionState } from "#core/roll";
import { bad, good, type Problem, problem, type Result, type Writer } from "#core/words";
import { z } from "zod";
import type { Desk } from "../desk.ts";
import { doing, type Told } from "../doing.ts";
import { idSchema } from "./ask-parts.ts";
import { personFound, sessionFound } from "./found.ts";
import { sessionWords } from "./place-words.ts";

const ask = z
  .object({
    kind: z.literal("cover session"),
    session: idSchema,
    person: idSchema,
    fee: z.int().min(0).describe("whole minor units, agreed in writing"),
    hallAgrees: z.boolean().describe("the hall was asked whether somebody else may teach under her hire"),
  })
  .describe("Somebody else teaches a session. Only who is on the cover list and insured that day may.");

export const coverSession = doing({
  ask,
  needs: ({ session, person }) => [`session/${session}`, `person/${person}`],
  decide: (asked, desk) => {
    const session = sessionFound(desk, asked.session);
    if (!session.ok) return session;
    const person = personFound(desk, asked.person);
    if (!person.ok) return person;
    const found = coverProblem(session.value, person.value, asked.hallAgrees, desk.writer);
    return found === null ? covered(desk, asked, session.value) : bad(found);
  },
});

/** Why this person may not take this session, or null. A screen asks it for everybody on the cover list. */
export function coverProblem(
  session: SessionState,
  { mayCover, contact }: PersonState,
  hallAgrees: boolean,
  writer: Writer,
): Problem | null {
  if (session.cancelled !== null) return sessionCancelled(session);
  if (mayCover === null) return notOnList(contact.name, writer);
  if (mayCover.insuredUntil === null || mayCover.insuredUntil < session.date)
    return notInsured(contact.name, mayCover.insuredUntil, writer);
  return hallAgrees ? null : hallNotAsked();
}

function covered(
  desk: Desk,
  { session: id, person: by, fee }: z.output<typeof ask>,
  session: SessionState,
): Result<Told> {
  desk.tellSession(id, { kind: "covered", by, fee });
  if (fee > 0) {
    const { currency, date: on } = session;
    desk.post(`session/${id}`, costDue({ cost: "cover", to: by, amount: fee, currency, on, session: id }));
  }
  const what = sessionWords(session, desk.writer);
  return good({
    // without her name, because answers are kept
    says: [`Somebody else takes ${what}, for ${desk.writer.money(fee, session.currency)}.`],
  });
}

function notOnList(name: string, { word }: Writer) {
  const says = `${name} is not on your ${word("cover")} list.`;
  return problem(
    "not-on-cover-list",
    "person",
    says,
    "Write down styles, fee and insurance with the person first.",
  );
}

function notInsured(name: string, until: string | null, { day }: Writer) {
  const says =
    until === null
      ? `No insurance certificate of ${name} was seen.`
      : `The insurance of ${name} that was seen runs out on ${day(until)}, before this session.`;
  return problem(
    "cover-uninsured",
    "person",
    says,
    "Ask for a certificate that covers the date, or ask somebody else.",
  );
}

function hallNotAsked() {
  const says = "The hall was not asked whether somebody else may teach in your time.";
  return problem("hall-not-asked", "hallAgrees", says, "Ask the hall, then tick that it agrees.");
}
