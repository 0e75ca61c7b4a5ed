import type { Result } from "#core/words";

/**
 * The port of the running record: what is done with people, places and passes, told as events.
 *
 * A **stream** is one thing that lives through time: "person/ana-1", "session/tuesday.2026-12-01", "pass/p-7".
 * Its events are only ever added to; its state is what they come to, kept beside them so that nothing has to be
 * added up again to be read. `number` counts the events of the stream from 1, and is what two writers race for.
 */
export const streamKinds = ["person", "session", "pass", "accident"] as const;
export type StreamKind = (typeof streamKinds)[number];
export type StreamName = `${StreamKind}/${string}`;

export const actors = ["teacher", "student", "hallful"] as const;
export type Actor = (typeof actors)[number];

/** A stream as it stands. `state` is the JSON of its kind: see #core/roll and #core/books. */
export type KeptStream = {
  readonly stream: StreamName;
  readonly number: number;
  /** what it is listed under: the class of a session, the holder of a pass; "" where nothing */
  readonly belongs: string;
  /** what its list is in order of, compared as bytes: a session's start, a pass's use-by; "" where nothing */
  readonly sort: string;
  readonly state: unknown;
};

export type KeptEvent = {
  readonly stream: StreamName;
  /** 1, 2, 3 … within its stream */
  readonly number: number;
  readonly action: string;
  /** ISO 8601 instant, UTC: when it was done, also when it arrived later */
  readonly made: string;
  /** ISO 8601 instant, UTC: when it was kept */
  readonly arrived: string;
  readonly by: Actor;
  readonly body: unknown;
};

/** One line of an entry of the books. The lines of an action add up to nothing in each commodity. */
export type KeptPosting = {
  readonly action: string;
  /** 1, 2, 3 … within its action */
  readonly line: number;
  /** ISO date, local to the practice */
  readonly date: string;
  readonly account: string;
  /** a currency, or the classes of one pass */
  readonly commodity: string;
  /** whole minor units of a currency, or whole classes; may be negative */
  readonly amount: number;
  /** the stream it came from, or "books" for what was written into the books by itself */
  readonly about: StreamName | "books";
};

/** A stream as an action leaves it: `from` is the number it was read at, 0 for one that is new. */
export type StreamWrite = {
  readonly stream: StreamName;
  readonly from: number;
  readonly belongs: string;
  readonly sort: string;
  readonly state: unknown;
  /** at least one; they get the numbers from + 1, from + 2 … */
  readonly events: readonly unknown[];
};

/** A short note of health, sealed before it comes here. `text` null removes it. */
export type SealedWrite = { readonly person: string; readonly text: string | null };

/** Everything one action does to the record of one practice: all of it or nothing. */
export type RecordCommit = {
  readonly practice: string;
  /** an id made by whoever asks; doing it twice does it once */
  readonly action: string;
  /** what was asked, as text: the same id for another request is refused with "action-reused" */
  readonly asked: string;
  readonly made: string;
  readonly arrived: string;
  readonly by: Actor;
  /** may be empty: then only the action and its answer are kept */
  readonly streams: readonly StreamWrite[];
  readonly postings: readonly Omit<KeptPosting, "action" | "line">[];
  readonly sealed: readonly SealedWrite[];
  /**
   * people whose events are to go: all events of the stream "person/ID" but those of this commit are removed and
   * the rest numbered on as before, and the sealed note goes too
   */
  readonly erased: readonly string[];
  /** JSON of what is answered, also when the action comes again */
  readonly answer: unknown;
};

/**
 * "done": it is on disk. "done before": this action was done; nothing was changed, and this is what was answered
 * then. "moved": a stream is not at the number it was read at; nothing was changed; read it again and decide again.
 */
export type Appended =
  | { readonly outcome: "done" }
  | { readonly outcome: "done before"; readonly answer: unknown }
  | { readonly outcome: "moved"; readonly stream: StreamName };

export type ListOrder = {
  readonly kind: StreamKind;
  readonly belongs?: string;
  /** sort >= from */
  readonly from?: string;
  /** sort < until */
  readonly until?: string;
  /** go on after this stream, of the order by sort, then stream name as bytes */
  readonly after?: { readonly sort: string; readonly stream: StreamName };
  /** 1 to 1000 */
  readonly most: number;
};

export type PostingsOrder = {
  /** ISO dates, both included */
  readonly from: string;
  readonly until: string;
};

/**
 * Problems of all: "disk-full", "store-read-only", "store-busy", "data-file-damaged", "database-unreachable"; of append also
 * "action-reused" and "not-found" for a practice that is not there.
 */
export type RecordStore = {
  /** those of the asked that are there, in the order asked */
  streams(practice: string, names: readonly StreamName[]): Promise<Result<readonly KeptStream[]>>;
  list(practice: string, order: ListOrder): Promise<Result<readonly KeptStream[]>>;
  /** in the order of their numbers */
  events(practice: string, stream: StreamName): Promise<Result<readonly KeptEvent[]>>;
  /** in the order of date, then action, then line */
  postings(practice: string, order: PostingsOrder): Promise<Result<readonly KeptPosting[]>>;
  /** sums by account and commodity up to and with a date; those that are zero may be left out */
  balances(
    practice: string,
    until: string,
  ): Promise<
    Result<readonly { readonly account: string; readonly commodity: string; readonly amount: number }[]>
  >;
  sealed(practice: string, person: string): Promise<Result<string | null>>;
  /** what was answered to an action that was done, undefined for one that was not; "action-reused" as append */
  answered(
    practice: string,
    action: string,
    asked: string,
  ): Promise<Result<{ readonly answer: unknown } | undefined>>;
  append(commit: RecordCommit): Promise<Result<Appended>>;
  /**
   * Several actions in their order, in one transaction: the numbers that one leaves are those that the next was
   * decided on. "apart": nothing was changed, because one of them was done before or a stream had moved; do them
   * one by one.
   */
  appendAll(commits: readonly RecordCommit[]): Promise<Result<"done" | "apart">>;
};
