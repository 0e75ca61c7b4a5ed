import { good, type Result } from "#core/words";
import { eveningAnswer } from "./evening-answer.ts";
import type { EveningAnswer } from "./evening-types.ts";
import { readEvening } from "./read-evening.ts";

/**
 * Reads an evening document and answers it: what the evening costs, how many people pay for the room,
 * what an ordinary evening leaves and what that is an hour. Every problem of the document at once.
 */
export function evening(input: unknown): Result<EveningAnswer> {
  const read = readEvening(input);
  return read.ok ? good(eveningAnswer(read.value.evening)) : read;
}
