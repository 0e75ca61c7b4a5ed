import type { Kysely } from "kysely";
import { runningRecord } from "./record/running-record.ts";
import type { Tongue } from "./tongue.ts";

export type Migration = {
  /** 1, 2, 3 …: the version of the data file after it */
  readonly version: number;
  readonly up: (database: Kysely<never>, tongue: Tongue) => Promise<void>;
};

/** In order; a published one is never edited: write the next. */
export const migrations: readonly Migration[] = [
  { version: 1, up: practicesHallsAndClasses },
  { version: 2, up: whatHappened },
  { version: 3, up: plans },
  { version: 4, up: runningRecord },
];

export function newestVersion(): number {
  return migrations.length;
}

async function practicesHallsAndClasses(database: Kysely<never>, tongue: Tongue): Promise<void> {
  await database.schema
    .createTable("practice")
    .addColumn("practice", tongue.key, (column) => column.notNull().primaryKey())
    .addColumn("version", "integer", (column) => column.notNull())
    .addColumn("document", "text", (column) => column.notNull())
    .modifyEnd(tongue.end)
    .execute();
  for (const table of ["hall", "class"]) await documentTable(database, table, tongue);
  await database.schema
    .createTable("action")
    .addColumn("practice", tongue.key, (column) => column.notNull())
    .addColumn("action", tongue.key, (column) => column.notNull())
    .addColumn("what", "text", (column) => column.notNull())
    .addColumn("answer", "text", (column) => column.notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("action_key", ["practice", "action"])
    .modifyEnd(tongue.end)
    .execute();
}

async function whatHappened(database: Kysely<never>, tongue: Tongue): Promise<void> {
  await database.schema
    .createTable("happened")
    .addColumn("practice", tongue.key, (column) => column.notNull())
    .addColumn("id", tongue.key, (column) => column.notNull())
    .addColumn("version", "integer", (column) => column.notNull())
    .addColumn("document", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("happened_key", ["practice", "id"])
    .addForeignKeyConstraint("happened_class", ["practice", "id"], "class", ["practice", "id"], (key) =>
      key.onDelete("cascade"),
    )
    .modifyEnd(tongue.end)
    .execute();
}

/** What a practice plans as a whole: its week, its year, its money. */
async function plans(database: Kysely<never>, tongue: Tongue): Promise<void> {
  await documentTable(database, "plan", tongue);
}

async function documentTable(database: Kysely<never>, table: string, tongue: Tongue): Promise<void> {
  await database.schema
    .createTable(table)
    .addColumn("practice", tongue.key, (column) => column.notNull().references("practice.practice"))
    .addColumn("id", tongue.key, (column) => column.notNull())
    .addColumn("version", "integer", (column) => column.notNull())
    .addColumn("document", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint(`${table}_key`, ["practice", "id"])
    .modifyEnd(tongue.end)
    .execute();
}
