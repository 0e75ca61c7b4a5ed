// Example: the record has 8 and 15 September; a file has 15 September with other heads and 22 September. The 22nd
// is new, the 15th is asked about, and taking back leaves what was there before.
// Invariant: nothing that is in the record is replaced unless she chose it, and what she changed since stays.
import type { HappenedDocument } from "#core/outlook";
import type { HeadsRow } from "#core/table";

export type Session = HappenedDocument["sessions"][number];

/** A date of which the record and the file say different things. */
export type Clash = { readonly date: string; readonly there: Session; readonly file: Session };

export type Taking = {
  readonly fresh: readonly Session[];
  readonly clashes: readonly Clash[];
  /** how many dates are in the record with the same figures already */
  readonly same: number;
};

/** What a file would bring into a record. What it does not say of a session stays as it is in the record. */
export function takingOf({ sessions, capacity }: HappenedDocument, rows: readonly HeadsRow[]): Taking {
  const there = new Map(sessions.map((it) => [it.date, it]));
  const known = rows.flatMap((row) => {
    const before = there.get(row.date);
    return before === undefined
      ? []
      : [{ date: row.date, there: before, file: laidOver(before, row, capacity) }];
  });
  const clashes = known.filter((it) => !sameSession(it.there, it.file));
  return {
    fresh: rows.filter(({ date }) => !there.has(date)).map(sessionOf),
    clashes,
    same: known.length - clashes.length,
  };
}

/** The record with what is new, and the file's figures for the dates chosen; by date. */
export function taken(
  document: HappenedDocument,
  { fresh, clashes }: Taking,
  theFiles: ReadonlySet<string>,
): HappenedDocument {
  const over = new Map(
    clashes.filter(({ date }) => theFiles.has(date)).map(({ date, file }) => [date, file]),
  );
  const sessions = [...document.sessions.map((it) => over.get(it.date) ?? it), ...fresh];
  return { ...document, sessions: sessions.toSorted((one, other) => (one.date < other.date ? -1 : 1)) };
}

/** The record as it stands `now` without what was taken in, which made `after` of `before`. */
export function takenBack(
  now: HappenedDocument,
  before: HappenedDocument,
  after: HappenedDocument,
): HappenedDocument {
  const were = new Map(before.sessions.map((it) => [it.date, it]));
  const came = new Map(after.sessions.map((it) => [it.date, it]));
  const sessions = now.sessions.flatMap((it) => {
    const brought = came.get(it.date);
    const was = were.get(it.date);
    if (brought === undefined || brought === was || !sameSession(brought, it)) return [it];
    return was === undefined ? [] : [was];
  });
  const { capacity, ...rest } = now;
  const places = capacity === after.capacity ? before.capacity : capacity;
  return { ...rest, ...(places === undefined ? {} : { capacity: places }), sessions };
}

function sessionOf({ row: _row, ...session }: HeadsRow): Session {
  return session;
}

function laidOver({ cancelled: _was, ...there }: Session, row: HeadsRow, usual: number | undefined): Session {
  const { capacity, ...told } = sessionOf(row);
  // the usual places, said again, are nothing new
  const asUsual = capacity === undefined || (there.capacity === undefined && capacity === usual);
  return { ...there, ...told, ...(asUsual ? {} : { capacity }) };
}

function sameSession(one: Session, other: Session): boolean {
  return (
    one.heads === other.heads &&
    one.capacity === other.capacity &&
    one.turnedAway === other.turnedAway &&
    one.waiting === other.waiting &&
    one.newcomers === other.newcomers &&
    (one.cancelled ?? false) === (other.cancelled ?? false)
  );
}
