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
};
