import { renameSync, symlinkSync, unlinkSync } from "node:fs";
import { join } from "node:path";
import type { Commit } from "#app/ports";
import type { Result } from "#core/words";
import { marlsford } from "#demo";
import { aCommit, aWrite, openPracticeIn, type RealPostgres, realPostgres } from "#testing";
import { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { newestVersion } from "../migrations.ts";
import type { WholeStore } from "../sql-store.ts";
import { openPostgresStore } from "./open-postgres-store.ts";

let server: RealPostgres;
beforeAll(async () => {
  server = await realPostgres();
}, 60_000);
afterAll(() => server.stop());

const now = () => "2026-09-07T18:00:00Z";

describe("a PostgreSQL database", () => {
  it("is made ready once by ten programs that open it at the same time", async () => {
    const url = await server.emptySchema();
    const stores = await Promise.all(Array.from({ length: 10 }, () => opened(url)));
    expect(await rows(url, "select version from hallful_version")).toEqual([{ version: newestVersion() }]);
    await Promise.all(stores.map((it) => it.close()));
  });

  it("keeps what was saved when it is opened again", async () => {
    const { url, store } = await filled();
    await store.close();
    const again = await opened(url);
    expect(await hallNames(again)).toEqual(["Barn"]);
    await again.close();
  });

  it("clears away what was told of a person who is erased", async () => {
    const { url, store } = await filled();
    const person = aWrite("person/ana-1", 0, { events: [{ name: "Ana Brook" }] });
    await store.record.append(aCommit("action-two", { streams: [person] }));
    const gone = aWrite("person/ana-1", 1, { state: { erased: true }, events: [{ kind: "erased" }] });
    await store.record.append(aCommit("action-three", { streams: [gone], erased: ["ana-1"] }));
    const cleared = `select relname from pg_stat_user_tables where schemaname = current_schema()
      and vacuum_count > 0 order by relname`;
    await until(async () => (await rows(url, cleared)).length === 3);
    expect(await rows(url, cleared)).toEqual(["event", "sealed", "stream"].map((relname) => ({ relname })));
    await store.close();
  });

  it("with tables of another program is left alone", async () => {
    const url = await server.emptySchema();
    await rows(url, "create table recipe (name text)");
    expect(codes(await openPostgresStore({ url, now }))).toEqual(["database-foreign"]);
    const tables = "select relname from pg_class where relnamespace = current_schema()::regnamespace";
    expect(await rows(url, `${tables} and relkind = 'r'`)).toEqual([{ relname: "recipe" }]);
  });

  it("of a newer Hallful is left alone", async () => {
    const { url, store } = await filled();
    await store.close();
    await rows(url, `update hallful_version set version = ${newestVersion() + 1}`);
    expect(codes(await openPostgresStore({ url, now }))).toEqual(["database-newer"]);
  });

  it("that says saved before it is on disk is not used", async () => {
    const url = new URL(await server.emptySchema());
    url.searchParams.set("options", `${url.searchParams.get("options")} -c synchronous_commit=off`);
    const seen = await openPostgresStore({ url: url.href, now });
    expect(codes(seen)).toEqual(["database-forgetful"]);
    expect(seen.ok || seen.problems[0]?.says).toContain("synchronous_commit is off");
  });

  it("that does not exist, or a user it does not know, is told as refused", async () => {
    const url = new URL(server.url);
    url.pathname = "/nowhere";
    const seen = await openPostgresStore({ url: url.href, now });
    expect(codes(seen)).toEqual(["database-refused"]);
    expect(seen.ok || seen.problems[0]?.says).toContain('database "nowhere" does not exist');
    url.pathname = "/postgres";
    url.username = "stranger";
    expect(codes(await openPostgresStore({ url: url.href, now }))).toEqual(["database-refused"]);
  });

  it("where no server listens is told as unreachable", async () => {
    const url = new URL(server.url);
    url.searchParams.set("host", "/nowhere/at/all");
    expect(codes(await openPostgresStore({ url: url.href, now }))).toEqual(["database-unreachable"]);
    const closed = "postgresql://hallful@127.0.0.1:1/hallful";
    expect(codes(await openPostgresStore({ url: closed, now }))).toEqual(["database-unreachable"]);
  });
});

describe("when the world gets in the way of a save in PostgreSQL", () => {
  it("a full disk saves nothing, loses nothing, and saves again when there is room", async () => {
    const { url, store } = await filled();
    await store.close();
    const again = await opened(url);
    const disk = await fillDiskUnder(url, "event");
    const commit = aCommit("action-two", { streams: [aWrite("session/a", 0)] });
    expect(codes(await again.record.append(commit))).toEqual(["disk-full"]);
    expect(await hallNames(again)).toEqual(["Barn"]);
    expect(await again.record.streams("oriel", ["session/a"])).toEqual({ ok: true, value: [] });
    await again.close();
    await disk.makeRoom();
    const later = await opened(url);
    expect(await later.record.append(commit)).toEqual({ ok: true, value: { outcome: "done" } });
    expect(await hallNames(later)).toEqual(["Barn"]);
    await later.close();
  });

  it("a server that takes no writing is told as one and still read", async () => {
    const { url, store } = await filled();
    await store.close();
    const address = new URL(url);
    address.searchParams.set(
      "options",
      `${address.searchParams.get("options")} -c default_transaction_read_only=on`,
    );
    const reading = await opened(address.href);
    expect(codes(await reading.commit(hallSaved("action-two", 1, "Old barn")))).toEqual(["store-read-only"]);
    const commit = aCommit("action-two", { streams: [aWrite("session/a", 0)] });
    expect(codes(await reading.record.append(commit))).toEqual(["store-read-only"]);
    expect(await hallNames(reading)).toEqual(["Barn"]);
    await reading.close();
  });

  it("connections that are cut between two saves are not noticed", async () => {
    const { url, store } = await filled();
    await Promise.all(Array.from({ length: 10 }, () => store.whole("oriel")));
    await rows(url, `select pg_terminate_backend(pid) from pg_stat_activity ${others}`);
    expect(codes(await store.commit(hallSaved("action-two", 1, "Old barn")))).toEqual([]);
    await rows(url, `select pg_terminate_backend(pid) from pg_stat_activity ${others}`);
    expect(await hallNames(store)).toEqual(["Old barn"]);
    await store.close();
  });

  it("a connection that is cut while a save waits is replaced, and the save is done once", async () => {
    const { url, store } = await filled();
    const holder = new Client({ connectionString: url });
    await holder.connect();
    await holder.query("begin; select * from hall for update");
    const saving = store.commit(hallSaved("action-two", 1, "Old barn"));
    const waiting = "select pid from pg_stat_activity where wait_event_type = 'Lock'";
    await until(async () => (await rows(url, waiting)).length > 0);
    await rows(url, `select pg_terminate_backend(pid) from (${waiting}) as it`);
    await holder.query("rollback");
    await holder.end();
    expect(codes(await saving)).toEqual([]);
    const whole = await store.whole("oriel");
    expect(whole.ok && whole.value.halls[0]).toMatchObject({ version: 2, document: { name: "Old barn" } });
    await store.close();
  });

  it("a server that is gone is told as unreachable, for saves and for reads", async () => {
    const another = await realPostgres();
    const store = await opened(await another.emptySchema());
    await openPracticeIn(store, "oriel");
    await another.stop();
    expect(codes(await store.commit(hallSaved("action-one", 0, "Barn")))).toEqual(["database-unreachable"]);
    expect(codes(await store.whole("oriel"))).toEqual(["database-unreachable"]);
    await store.close();
  });

  it("a server that undoes crossed transactions is asked again", async () => {
    const url = new URL(await server.emptySchema());
    url.searchParams.set(
      "options",
      `${url.searchParams.get("options")} -c default_transaction_isolation=serializable`,
    );
    const [one, other] = [await opened(url.href), await opened(url.href)];
    await openPracticeIn(one, "oriel");
    for (let from = 0; from < 20; from += 1) {
      const done = await Promise.all(
        [one, other].map((it, index) =>
          it.record.append(aCommit(`action-${from}-${index}`, { streams: [aWrite("session/a", from)] })),
        ),
      );
      expect(done.map((it) => (it.ok ? it.value.outcome : String(codes(it)))).sort()).toEqual([
        "done",
        "moved",
      ]);
    }
    await Promise.all([one.close(), other.close()]);
  });
});

const others = "where pid <> pg_backend_pid() and backend_type = 'client backend'";

async function opened(url: string): Promise<WholeStore> {
  const store = await openPostgresStore({ url, now });
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  return store.value;
}

async function filled() {
  const url = await server.emptySchema();
  const store = await opened(url);
  await openPracticeIn(store, "oriel");
  expect(codes(await store.commit(hallSaved("action-one", 0, "Barn")))).toEqual([]);
  return { url, store };
}

function hallSaved(action: string, from: number, name: string): Commit {
  const [hall] = marlsford.halls;
  if (hall === undefined) throw new Error("the demo has a hall");
  const document = { ...hall.document, name };
  return { action, practice: "oriel", changes: [{ kind: "hall", id: "barn", from, document }] };
}

async function hallNames(store: WholeStore): Promise<readonly string[]> {
  const whole = await store.whole("oriel");
  return whole.ok ? whole.value.halls.map((it) => it.document.name) : codes(whole);
}

/** Puts the table, which is still empty, on the device of Linux on which there is never any room. */
async function fillDiskUnder(url: string, table: string) {
  const [found] = await rows(url, `select pg_relation_filepath('${table}') as path`);
  const file = join(server.data, String(found?.["path"]));
  renameSync(file, `${file}.kept`);
  symlinkSync("/dev/full", file);
  return {
    makeRoom: async () => {
      unlinkSync(file);
      renameSync(`${file}.kept`, file);
    },
  };
}

async function rows(url: string, statement: string): Promise<readonly Record<string, unknown>[]> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query<Record<string, unknown>>(statement)).rows;
  } finally {
    await client.end();
  }
}

async function until(isSo: () => Promise<boolean>): Promise<void> {
  for (let tries = 0; tries < 500; tries += 1) {
    if (await isSo()) return;
    await new Promise((later) => setTimeout(later, 10));
  }
  throw new Error("it did not come to that");
}

function codes(result: Result<unknown>): readonly string[] {
  return result.ok ? [] : result.problems.map((it) => it.code);
}
