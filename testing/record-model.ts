import type { KeptPosting, KeptStream, ListOrder, RecordCommit, StreamName } from "#app/ports";

type Events = readonly { readonly number: number; readonly action: string; readonly body: unknown }[];

/** A running record in memory that is nothing but what its port says, to hold real ones against. */
export type RecordModel = {
  /** "done", "done before", "action-reused", or "moved" with the names of which the store may tell any */
  readonly append: (commit: RecordCommit) => {
    readonly outcome: string;
    readonly moved: readonly StreamName[];
  };
  readonly streams: () => readonly KeptStream[];
  readonly list: (order: ListOrder) => readonly StreamName[];
  readonly events: (stream: StreamName) => Events;
  readonly postings: () => readonly KeptPosting[];
};

export function recordModel(): RecordModel {
  const asked = new Map<string, string>();
  const streams = new Map<StreamName, KeptStream>();
  const events = new Map<StreamName, Events>();
  const postings: KeptPosting[] = [];
  const keep = ({ action, streams: writes, postings: lines }: RecordCommit): void => {
    for (const { stream, from, belongs, sort, state, events: bodies } of writes) {
      const told = bodies.map((body, at) => ({ number: from + at + 1, action, body }));
      streams.set(stream, { stream, number: from + bodies.length, belongs, sort, state });
      events.set(stream, [...(events.get(stream) ?? []), ...told]);
    }
    postings.push(...lines.map((line, at) => ({ ...line, action, line: at + 1 })));
  };
  const append = (commit: RecordCommit) => {
    const before = asked.get(commit.action);
    if (before !== undefined) {
      return { outcome: before === commit.asked ? "done before" : "action-reused", moved: [] };
    }
    const moved = commit.streams.filter((it) => it.from !== (streams.get(it.stream)?.number ?? 0));
    if (moved.length > 0) return { outcome: "moved", moved: moved.map((it) => it.stream) };
    asked.set(commit.action, commit.asked);
    keep(commit);
    return { outcome: "done", moved: [] };
  };
  return {
    append,
    streams: () => [...streams.values()].sort((one, other) => inBytes(one.stream, other.stream)),
    list: (order) => listed([...streams.values()], order),
    events: (stream) => events.get(stream) ?? [],
    postings: () => postings.toSorted(byDateActionLine),
  };
}

function listed(all: readonly KeptStream[], order: ListOrder): readonly StreamName[] {
  const { kind, belongs, from, until, after, most } = order;
  return all
    .filter((it) => it.stream.startsWith(`${kind}/`))
    .filter((it) => belongs === undefined || it.belongs === belongs)
    .filter((it) => from === undefined || inBytes(it.sort, from) >= 0)
    .filter((it) => until === undefined || inBytes(it.sort, until) < 0)
    .filter((it) => after === undefined || bySortAndName(it, after) > 0)
    .sort(bySortAndName)
    .slice(0, most)
    .map((it) => it.stream);
}

type Listed = Pick<KeptStream, "sort" | "stream">;

function bySortAndName(one: Listed, other: Listed): number {
  return inBytes(one.sort, other.sort) || inBytes(one.stream, other.stream);
}

function byDateActionLine(one: KeptPosting, other: KeptPosting): number {
  return inBytes(one.date, other.date) || inBytes(one.action, other.action) || one.line - other.line;
}

function inBytes(one: string, other: string): number {
  return Buffer.compare(Buffer.from(one), Buffer.from(other));
}
