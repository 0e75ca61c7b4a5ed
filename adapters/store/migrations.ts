import { type Kysely, type RawBuilder, sql } from "kysely";

/** What a migration may not know about the database it runs on: the end of a create table statement. */
export type TableEnd = RawBuilder<unknown>;

export type Migration = {
  /** 1, 2, 3 …: the version of the data file after it */
  readonly version: number;
  readonly up: (database: Kysely<never>, end: TableEnd) => Promise<void>;
};

/** SQLite keeps the declared type of a column only in a STRICT table. */
export const SQLITE_TABLE_END: TableEnd = sql`strict`;

/** In order; a published one is never edited: write the next. */
export const migrations: readonly Migration[] = [
  { version: 1, up: practicesHallsAndClasses },
  { version: 2, up: whatHappened },
  { version: 3, up: plans },
];

export function newestVersion(): number {
  return migrations.length;
}

async function practicesHallsAndClasses(database: Kysely<never>, end: TableEnd): Promise<void> {
  await database.schema
    .createTable("practice")
    .addColumn("practice", "text", (column) => column.notNull().primaryKey())
    .addColumn("version", "integer", (column) => column.notNull())
    .addColumn("document", "text", (column) => column.notNull())
    .modifyEnd(end)
    .execute();
  for (const table of ["hall", "class"]) await documentTable(database, table, end);
  await database.schema
    .createTable("action")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("action", "text", (column) => column.notNull())
    .addColumn("what", "text", (column) => column.notNull())
    .addColumn("answer", "text", (column) => column.notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("action_key", ["practice", "action"])
    .modifyEnd(end)
    .execute();
}

async function whatHappened(database: Kysely<never>, end: TableEnd): Promise<void> {
  await database.schema
    .createTable("happened")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("version", "integer", (column) => column.notNull())
    .addColumn("document", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("happened_key", ["practice", "id"])
    .addForeignKeyConstraint("happened_class", ["practice", "id"], "class", ["practice", "id"], (key) =>
      key.onDelete("cascade"),
    )
    .modifyEnd(end)
    .execute();
}

/** What a practice plans as a whole: its week, its year, its money. */
async function plans(database: Kysely<never>, end: TableEnd): Promise<void> {
  await documentTable(database, "plan", end);
}

async function documentTable(database: Kysely<never>, table: string, end: TableEnd): Promise<void> {
  await database.schema
    .createTable(table)
    .addColumn("practice", "text", (column) => column.notNull().references("practice.practice"))
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("version", "integer", (column) => column.notNull())
    .addColumn("document", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint(`${table}_key`, ["practice", "id"])
    .modifyEnd(end)
    .execute();
}
