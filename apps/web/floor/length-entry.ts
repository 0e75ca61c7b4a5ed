// Example: the field shows "7.25 m"; typing "7,5" and Enter sets 7500 mm; typing "wide" keeps "wide" and says why.
// Invariant: what was typed is never thrown away but by Escape, and an untouched field sets nothing.
import {
  formatLength,
  good,
  type LengthUnits,
  type Millimetres,
  millimetresFromMetres,
  parseLength,
  type Problem,
  type Result,
} from "#core/words";

export type LengthEntry = {
  /** what was typed and not yet taken; null while the field shows the length itself */
  readonly typed: string | null;
  readonly problem: Problem | null;
};

export const untouched: LengthEntry = { typed: null, problem: null };

/** What the field shows. */
export function entryText(entry: LengthEntry, length: number, units: LengthUnits): string {
  return entry.typed ?? formatLength(length, units);
}

export function typing(typed: string): LengthEntry {
  return { typed, problem: null };
}

/** The entry after Enter or on leaving: a new length to set, or the entry with its problem, or nothing to do. */
export function takeEntry(
  entry: LengthEntry,
  length: number,
  units: LengthUnits,
  signed = false,
): { readonly entry: LengthEntry; readonly length: Millimetres | null } {
  if (entry.typed === null || entry.typed === formatLength(length, units)) {
    return { entry: untouched, length: null };
  }
  const read = signed ? parsePlace(entry.typed, units) : parseLength(entry.typed, units);
  if (read.ok) return { entry: untouched, length: read.value };
  return { entry: { typed: entry.typed, problem: read.problems[0] ?? null }, length: null };
}

/** The entry kept with a problem that the floor itself has with a readable length. */
export function refused(typed: string, problem: Problem): LengthEntry {
  return { typed, problem };
}

/** A place on the floor may lie left of or below where the drawing began: "-0.50 m". */
function parsePlace(text: string, units: LengthUnits): Result<Millimetres> {
  const minus = /^\s*[-−–]/.exec(text);
  if (minus === null) return parseLength(text, units);
  const read = parseLength(text.slice(minus[0].length), units);
  return read.ok ? good(millimetresFromMetres((0 - read.value) / 1000)) : read;
}
