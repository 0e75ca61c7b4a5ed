import type { RecordCommit, StreamName, StreamWrite } from "#app/ports";

/** What several actions do to one stream, one after another. */
export type MergedWrite = Pick<StreamWrite, "stream" | "from" | "belongs" | "sort" | "state"> & {
  /** the number that the last of them leaves */
  readonly upto: number;
};

/**
 * The writes of several actions as one for each stream, in the order of their names; undefined where one of them does
 * not begin at the number that the one before it left.
 */
export function mergedWrites(commits: readonly RecordCommit[]): readonly MergedWrite[] | undefined {
  const merged = new Map<StreamName, MergedWrite>();
  for (const { stream, from, belongs, sort, state, events } of commits.flatMap((it) => it.streams)) {
    if (events.length === 0) throw new RangeError(`a stream without an event: ${stream}`);
    const before = merged.get(stream);
    if (before !== undefined && before.upto !== from) return undefined;
    const upto = from + events.length;
    merged.set(stream, { stream, from: before?.from ?? from, upto, belongs, sort, state });
  }
  return [...merged.values()].sort((one, other) => (one.stream < other.stream ? -1 : 1));
}
