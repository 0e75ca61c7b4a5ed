import Database from "better-sqlite3";
import { Pool } from "pg";

/** The database alone: one row, one transaction, on disk when it is answered. */
export type BareStore = {
  readonly write: (id: string) => Promise<void>;
  readonly close: () => Promise<void>;
};

/** About as long as the text of an event and of a state are together. */
const ROW = "x".repeat(400);

const TABLE = "create table bare (id text not null primary key, text text not null)";

export async function bareFile(file: string): Promise<BareStore> {
  const database = new Database(file);
  database.pragma("journal_mode = wal");
  database.pragma("synchronous = full");
  database.exec(`${TABLE} strict`);
  const insert = database.prepare("insert into bare values (?, ?)");
  return { write: async (id) => void insert.run(id, ROW), close: async () => void database.close() };
}

/** With as many connections as Hallful opens. */
export async function bareDatabase(url: string): Promise<BareStore> {
  const pool = new Pool({ connectionString: url, max: 10 });
  await pool.query(TABLE);
  return {
    write: async (id) => void (await pool.query("insert into bare values ($1, $2)", [id, ROW])),
    close: () => pool.end(),
  };
}
