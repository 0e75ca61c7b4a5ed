import { passProblem } from "#core/books";
import type { PlaceAsked, SessionState } from "#core/roll";
import { bad, good, problem, type Result, together } from "#core/words";
import type { Desk } from "../desk.ts";
import type { HowAsked } from "./ask-parts.ts";
import { passFound, personFound } from "./found.ts";

export type PersonAsked = HowAsked & { readonly place: string; readonly person: string };

/**
 * A place as it is asked for, with its price from the session. Problems: "person-unknown", "pass-unknown",
 * "pass-missing", "pass-not-hers" and those of a pass that cannot be used for this session.
 */
export function placeAsked(
  desk: Desk,
  session: SessionState,
  id: string,
  asked: PersonAsked,
): Result<PlaceAsked> {
  const read = together({
    person: personFound(desk, asked.person),
    pass: passUsed(desk, session, id, asked),
  });
  if (!read.ok) return read;
  const { place, person, how, paid } = asked;
  return good({ place, person, how, pass: read.value.pass, price: priceOf(session, asked), paid });
}

function priceOf({ single, concession }: SessionState, { how }: HowAsked): number {
  if (how === "single") return single;
  return how === "concession" ? concession : 0;
}

function passUsed(desk: Desk, session: SessionState, id: string, asked: PersonAsked): Result<string | null> {
  if (asked.how !== "pass" && asked.how !== "block") return good(null);
  if (asked.pass === null) return bad(passMissing());
  const pass = passFound(desk, asked.pass);
  if (!pass.ok) return pass;
  const meeting = { kind: "promised", session: id, class: session.class, on: session.date } as const;
  const found = passProblem(pass.value, meeting, desk.writer);
  return found === null ? good(asked.pass) : bad(found);
}

function passMissing() {
  const says = "A place out of a pass needs to be told which pass.";
  return problem("pass-missing", "pass", says, "Choose the pass, or take the place as a single.");
}
