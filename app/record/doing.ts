import type { StreamName } from "#app/ports";
import type { Result } from "#core/words";
import type { z } from "zod";
import type { Desk } from "./desk.ts";

/**
 * What every action answers: what was done, in sentences for whoever did it. They are kept with the action and so
 * never say somebody's name: it would be there still when she is erased.
 */
export type Told = {
  readonly says: readonly string[];
  /** "held" or "waiting", where a place was asked for */
  readonly outcome?: string;
};

/**
 * One thing that somebody does with the record. Both halves are pure: `needs` names the streams it must see, and is
 * asked again with what was read until it wants nothing more; `decide` tells events to the desk or answers with a
 * problem, and then nothing is kept.
 */
export type Doing<Schema extends z.ZodType> = {
  readonly ask: Schema;
  readonly needs: (
    ask: z.output<Schema>,
    known: Pick<Desk, "session" | "pass" | "person">,
  ) => readonly StreamName[];
  readonly decide: (ask: z.output<Schema>, desk: Desk) => Result<Told>;
};

/** Holds a doing to its own schema; the registry joins them under their names. */
export function doing<Schema extends z.ZodType>(it: Doing<Schema>): Doing<Schema> {
  return it;
}
