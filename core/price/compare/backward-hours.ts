import { type Problem, problem } from "#core/words";

/** Free hours that end before they begin, as they were written: "22:00" until "17:00". */
export function backwardHours(from: string, until: string, place: string): Problem {
  const says = `It is free until ${until}, before it is free from ${from}.`;
  return problem("free-hours-backwards", place, says, "Change one of the two times.");
}
