import { type HappenedDocument, happenedSchema, readSessions } from "#core/outlook";
import { good, type ReadDocument, readDocument, type Result } from "#core/words";

/** A record of what really happened whose every session is sound. Problems: those of readDocument and readSessions. */
export function checkHappened(input: unknown): Result<ReadDocument<HappenedDocument>> {
  const read = readDocument(happenedSchema, input);
  if (!read.ok) return read;
  const sound = readSessions(read.value.value);
  return sound.ok ? good(read.value) : sound;
}
