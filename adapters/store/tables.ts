/** The columns every document table has. The key begins with the practice, so that practices can be sharded. */
type DocumentTable = {
  practice: string;
  id: string;
  version: number;
  /** JSON text */
  document: string;
};

/** The SQL tables, the same on every database; STRICT on SQLite. Names of columns are quoted by Kysely. */
export type Tables = {
  practice: Omit<DocumentTable, "id">;
  hall: DocumentTable;
  class: DocumentTable;
  /** what really happened; its id is that of the class, with which it goes */
  happened: DocumentTable;
  /** what the practice plans as a whole: "week", "year", "money" */
  plan: DocumentTable;
  /** one row for each action that was done, so that doing it twice does it once */
  action: {
    practice: string;
    action: string;
    /** a digest of what was asked: the same action id with another request is refused */
    what: string;
    /** JSON text of what was answered */
    answer: string;
    /** ISO 8601 instant, UTC */
    at: string;
  };
  /** the running record: a stream is one person, session, pass or accident, as it stands */
  stream: {
    practice: string;
    /** "session/tuesday.2026-12-01" */
    stream: string;
    kind: string;
    /** of its last event */
    number: number;
    belongs: string;
    sort: string;
    /** JSON text */
    state: string;
  };
  event: {
    practice: string;
    stream: string;
    number: number;
    action: string;
    made: string;
    arrived: string;
    actor: string;
    /** JSON text */
    body: string;
  };
  posting: {
    practice: string;
    action: string;
    line: number;
    date: string;
    account: string;
    commodity: string;
    amount: number;
    /** the stream it came from */
    about: string;
  };
  /** short notes of health, sealed before they come here */
  sealed: { practice: string; person: string; text: string };
};
