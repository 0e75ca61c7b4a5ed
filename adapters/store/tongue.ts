import { type RawBuilder, sql } from "kysely";

type Words = RawBuilder<unknown>;

/** What the databases say differently where tables are made. */
export type Tongue = {
  /** the end of a create table statement */
  readonly end: Words;
  /** the type of text that is compared byte by byte, wherever the server stands */
  readonly key: Words;
  /** the type of whole numbers up to 2^53 */
  readonly large: Words;
};

/** SQLite keeps the declared type of a column only in a STRICT table. */
export const SQLITE_TONGUE: Tongue = { end: sql`strict`, key: sql`text`, large: sql`integer` };

export const POSTGRES_TONGUE: Tongue = { end: sql``, key: sql`text collate "C"`, large: sql`bigint` };
