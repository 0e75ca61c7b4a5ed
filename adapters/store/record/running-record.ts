import type { Kysely } from "kysely";
import type { Tongue } from "../tongue.ts";

/** Version 4 of the data: streams of events with their state, postings, sealed notes. Keys begin with the practice. */
export async function runningRecord(database: Kysely<never>, tongue: Tongue): Promise<void> {
  await streams(database, tongue);
  await events(database, tongue);
  await postings(database, tongue);
  await database.schema
    .createTable("sealed")
    .addColumn("practice", tongue.key, (column) => column.notNull().references("practice.practice"))
    .addColumn("person", tongue.key, (column) => column.notNull())
    .addColumn("text", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("sealed_key", ["practice", "person"])
    .modifyEnd(tongue.end)
    .execute();
}

/** Listed by kind, or by kind and what a stream belongs to; both lists come out of an index in their order. */
async function streams(database: Kysely<never>, tongue: Tongue): Promise<void> {
  await database.schema
    .createTable("stream")
    .addColumn("practice", tongue.key, (column) => column.notNull().references("practice.practice"))
    .addColumn("stream", tongue.key, (column) => column.notNull())
    .addColumn("kind", tongue.key, (column) => column.notNull())
    .addColumn("number", "integer", (column) => column.notNull())
    .addColumn("belongs", tongue.key, (column) => column.notNull())
    .addColumn("sort", tongue.key, (column) => column.notNull())
    .addColumn("state", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("stream_key", ["practice", "stream"])
    .modifyEnd(tongue.end)
    .execute();
  await database.schema
    .createIndex("stream_of_kind")
    .on("stream")
    .columns(["practice", "kind", "sort", "stream"])
    .execute();
  await database.schema
    .createIndex("stream_of_owner")
    .on("stream")
    .columns(["practice", "kind", "belongs", "sort", "stream"])
    .execute();
}

async function events(database: Kysely<never>, tongue: Tongue): Promise<void> {
  await database.schema
    .createTable("event")
    .addColumn("practice", tongue.key, (column) => column.notNull())
    .addColumn("stream", tongue.key, (column) => column.notNull())
    .addColumn("number", "integer", (column) => column.notNull())
    .addColumn("action", tongue.key, (column) => column.notNull())
    .addColumn("made", "text", (column) => column.notNull())
    .addColumn("arrived", "text", (column) => column.notNull())
    .addColumn("actor", "text", (column) => column.notNull())
    .addColumn("body", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("event_key", ["practice", "stream", "number"])
    .addForeignKeyConstraint("event_stream", ["practice", "stream"], "stream", ["practice", "stream"])
    .modifyEnd(tongue.end)
    .execute();
}

async function postings(database: Kysely<never>, tongue: Tongue): Promise<void> {
  await database.schema
    .createTable("posting")
    .addColumn("practice", tongue.key, (column) => column.notNull())
    .addColumn("action", tongue.key, (column) => column.notNull())
    .addColumn("line", "integer", (column) => column.notNull())
    .addColumn("date", tongue.key, (column) => column.notNull())
    .addColumn("account", tongue.key, (column) => column.notNull())
    .addColumn("commodity", tongue.key, (column) => column.notNull())
    .addColumn("amount", tongue.large, (column) => column.notNull())
    .addColumn("about", tongue.key, (column) => column.notNull())
    .addPrimaryKeyConstraint("posting_key", ["practice", "action", "line"])
    .addForeignKeyConstraint("posting_action", ["practice", "action"], "action", ["practice", "action"])
    .modifyEnd(tongue.end)
    .execute();
  await database.schema
    .createIndex("posting_by_date")
    .on("posting")
    .columns(["practice", "date", "action", "line"])
    .execute();
}
