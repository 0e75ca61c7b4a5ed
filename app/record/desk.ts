import {
  type Actor,
  type KeptStream,
  type RecordCommit,
  type SealedWrite,
  type StreamKind,
  streamKinds,
  type StreamName,
  type StreamWrite,
} from "#app/ports";
import { applyPassEvent, type Entry, type PassEvent, type PassState } from "#core/books";
import {
  type AccidentEvent,
  type AccidentState,
  applyAccident,
  applyPerson,
  applySession,
  type PersonEvent,
  type PersonState,
  type SessionEvent,
  type SessionState,
} from "#core/roll";
import type { Writer } from "#core/words";

/** When an action was made and when it came here, who did it and whose words it is answered in. Instants in UTC. */
export type Setting = {
  readonly made: string;
  readonly arrived: string;
  readonly by: Actor;
  readonly writer: Writer;
};

/**
 * Where one action is worked out: it holds the streams that were read, takes events, and shows every stream as they
 * leave it, so that the second step of an action sees the first. Nothing is kept until all of it is committed.
 */
export type Desk = Setting & {
  readonly person: (id: string) => PersonState | undefined;
  readonly session: (id: string) => SessionState | undefined;
  readonly pass: (id: string) => PassState | undefined;
  readonly accident: (id: string) => AccidentState | undefined;
  readonly tellPerson: (id: string, ...events: readonly PersonEvent[]) => void;
  readonly tellSession: (id: string, ...events: readonly SessionEvent[]) => void;
  readonly tellPass: (id: string, ...events: readonly PassEvent[]) => void;
  readonly tellAccident: (id: string, ...events: readonly AccidentEvent[]) => void;
  readonly post: (about: StreamName | "books", ...entries: readonly Entry[]) => void;
  readonly seal: (note: SealedWrite) => void;
  readonly erase: (person: string) => void;
};

type Open = { readonly from: number; state: unknown; readonly events: unknown[] };
type Written = Pick<RecordCommit, "streams" | "postings" | "sealed" | "erased">;

/** A desk with the streams that were read laid out on it, and what was written on it so far. */
export function deskWith(
  read: readonly KeptStream[],
  /** the streams that were asked for, there or not: no other may be written */
  asked: ReadonlySet<StreamName>,
  setting: Setting,
): { readonly desk: Desk; readonly written: () => Written } {
  const open = new Map<StreamName, Open>(
    read.map(({ stream, number, state }) => [stream, { from: number, state, events: [] }]),
  );
  const postings: RecordCommit["postings"][number][] = [];
  const sealed: SealedWrite[] = [];
  const erased: string[] = [];
  const see = (stream: StreamName) => open.get(stream)?.state;
  const tell = (stream: StreamName, event: unknown) => {
    if (!asked.has(stream)) throw new Error(`told of a stream that was not read: ${stream}`);
    const before = open.get(stream) ?? { from: 0, state: null, events: [] };
    before.state = stateAfter(stream, before.state, event, setting.made);
    before.events.push(event);
    open.set(stream, before);
  };
  const desk: Desk = {
    ...setting,
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the stream's name holds its kind
    person: (id) => see(`person/${id}`) as PersonState | undefined,
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- as above
    session: (id) => see(`session/${id}`) as SessionState | undefined,
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- as above
    pass: (id) => see(`pass/${id}`) as PassState | undefined,
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- as above
    accident: (id) => see(`accident/${id}`) as AccidentState | undefined,
    tellPerson: (id, ...events) => events.forEach((event) => tell(`person/${id}`, event)),
    tellSession: (id, ...events) => events.forEach((event) => tell(`session/${id}`, event)),
    tellPass: (id, ...events) => events.forEach((event) => tell(`pass/${id}`, event)),
    tellAccident: (id, ...events) => events.forEach((event) => tell(`accident/${id}`, event)),
    post: (about, ...entries) => postings.push(...entries.flatMap((entry) => linesOf(entry, about))),
    seal: (note) => sealed.push(note),
    erase: (person) => erased.push(person),
  };
  const written = () => ({ streams: writesOf(open), postings, sealed, erased });
  return { desk, written };
}

/** A stream's state after an event; the name of the stream says which events it has. */
export function stateAfter(stream: StreamName, before: unknown, event: unknown, made: string): unknown {
  const kind = kindOf(stream);
  /* oxlint-disable typescript/no-unsafe-type-assertion -- the stream's name holds the kind of both */
  switch (kind) {
    case "person":
      return applyPerson(before as PersonState | null, event as PersonEvent, made);
    case "session":
      return applySession(before as SessionState | null, event as SessionEvent);
    case "pass":
      return applyPassEvent(before as PassState | null, event as PassEvent);
    case "accident":
      return applyAccident(before as AccidentState | null, event as AccidentEvent, made);
  }
  /* oxlint-enable typescript/no-unsafe-type-assertion */
}

/** What a stream is listed under, and in what order. */
export function listedAs(stream: StreamName, state: unknown): Pick<StreamWrite, "belongs" | "sort"> {
  const kind = kindOf(stream);
  /* oxlint-disable typescript/no-unsafe-type-assertion -- the stream's name holds the kind */
  if (kind === "session") {
    const { class: belongs, starts } = state as SessionState;
    return { belongs, sort: starts };
  }
  if (kind === "pass") {
    const { holder, useBy } = state as PassState;
    return { belongs: holder, sort: useBy };
  }
  /* oxlint-enable typescript/no-unsafe-type-assertion */
  return { belongs: "", sort: "" };
}

function kindOf(stream: StreamName): StreamKind {
  const found = streamKinds.find((kind) => stream.startsWith(`${kind}/`));
  if (found === undefined) throw new Error(`no such kind of stream: ${stream}`);
  return found;
}

function writesOf(open: ReadonlyMap<StreamName, Open>): readonly StreamWrite[] {
  return [...open]
    .filter(([, { events }]) => events.length > 0)
    .map(([stream, { from, state, events }]) => ({
      stream,
      from,
      state,
      events,
      ...listedAs(stream, state),
    }));
}

function linesOf({ date, lines }: Entry, about: StreamName | "books") {
  return lines.map(({ account, commodity, amount }) => ({ date, account, commodity, amount, about }));
}
