import type { PassState } from "#core/books";
import type { PersonState, SessionState } from "#core/roll";
import { bad, good, problem, type Result } from "#core/words";
import type { Desk } from "../desk.ts";

/** Problem: "session-unknown". */
export function sessionFound(desk: Desk, id: string): Result<SessionState> {
  const found = desk.session(id);
  if (found !== undefined) return good(found);
  const says = "There is no such session in the record.";
  return bad(
    problem("session-unknown", "session", says, "Put the dates of the class into the record first."),
  );
}

/** Problem: "person-unknown", also for somebody who was erased. */
export function personFound(desk: Desk, id: string): Result<PersonState> {
  const found = desk.person(id);
  if (found !== undefined && !found.erased) return good(found);
  const says = "There is no such person in the record.";
  return bad(problem("person-unknown", "person", says, "Write the name down first."));
}

/** Problem: "pass-unknown". */
export function passFound(desk: Desk, id: string): Result<PassState> {
  const found = desk.pass(id);
  if (found !== undefined) return good(found);
  const says = "There is no such pass in the record.";
  return bad(problem("pass-unknown", "pass", says, "Sell the pass first, or take the place another way."));
}
