import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Commit, Store } from "#app/ports";
import type { Result } from "#core/words";
import { marlsford } from "#demo";
import { aCommit, aSale, aWrite, temporaryFolder } from "#testing";
import Database from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { connect, openSqliteStore, storeOver } from "./open-sqlite-store.ts";
import type { WholeStore } from "./sql-store.ts";

const now = () => "2026-09-07T18:00:00Z";

const openOriel: Commit = {
  action: "action-open",
  practice: "oriel",
  changes: [
    { kind: "practice", from: 0, document: marlsford.practice },
    ...marlsford.halls.map((it) => ({ kind: "hall", from: 0, ...it }) as const),
  ],
};

describe("when the world gets in the way of a save", () => {
  it("a full disk saves nothing, loses nothing, and saves again when there is room", async () => {
    const file = await filledFile();
    const connection = connect(file);
    const pages = Number(connection.pragma("page_count", { simple: true }));
    connection.pragma(`max_page_count = ${pages + 2}`);
    const store = storeOver(connection, { file, now });
    const large = hallWithNotes("action-large", "x".repeat(100_000));
    expect(codes(await store.commit(large))).toEqual(["disk-full"]);
    expect(await names(store)).toEqual([
      "Quay Street Mission Room",
      "St Brannoc’s church hall",
      "Tithe Barn Hall",
    ]);
    connection.pragma("max_page_count = 1000000");
    expect(codes(await store.commit(large))).toEqual([]);
    expect(await names(store)).toHaveLength(4);
    await store.close();
  });

  it("a full disk keeps nothing of an action, loses nothing, and keeps it when there is room", async () => {
    const file = await filledFile();
    const connection = connect(file);
    const pages = Number(connection.pragma("page_count", { simple: true }));
    connection.pragma(`max_page_count = ${pages + 2}`);
    const store = storeOver(connection, { file, now });
    const write = aWrite("session/a", 0, { state: { text: "x".repeat(100_000) } });
    const large = aCommit("action-large", {
      streams: [write],
      postings: aSale(1000, "2026-12-01", "session/a"),
    });
    expect(codes(await store.record.append(large))).toEqual(["disk-full"]);
    expect(codes(await store.record.appendAll([large]))).toEqual(["disk-full"]);
    expect(await store.record.streams("oriel", ["session/a"])).toEqual({ ok: true, value: [] });
    expect(await store.record.balances("oriel", "2027-01-01")).toEqual({ ok: true, value: [] });
    expect(await names(store)).toHaveLength(3);
    connection.pragma("max_page_count = 1000000");
    expect(await store.record.append(large)).toEqual({ ok: true, value: { outcome: "done" } });
    await store.close();
  });

  it("a disk that cannot be written keeps nothing of an action, and what is there is read", async () => {
    const file = await filledFile();
    const before = readFileSync(file);
    const store = storeOver(new Database(file, { readonly: true }), { file, now });
    const commit = aCommit("action-one", { streams: [aWrite("session/a", 0)] });
    expect(codes(await store.record.append(commit))).toEqual(["store-read-only"]);
    expect(codes(await store.record.appendAll([commit]))).toEqual(["store-read-only"]);
    expect(await store.record.streams("oriel", ["session/a"])).toEqual({ ok: true, value: [] });
    expect(await names(store)).toHaveLength(3);
    await store.close();
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it("a connection that cannot write is told as one", async () => {
    const file = await filledFile();
    const store = storeOver(new Database(file, { readonly: true }), { file, now });
    expect(codes(await store.commit(hallWithNotes("action-one", "")))).toEqual(["store-read-only"]);
    expect(await names(store)).toHaveLength(3);
    await store.close();
  });

  it("another program that holds the file is told as one, and the save can be done after it", async () => {
    const file = await filledFile();
    const other = new Database(file);
    const connection = connect(file);
    const store = storeOver(connection, { file, now }, 2);
    other.exec("begin immediate");
    expect(codes(await store.commit(hallWithNotes("action-one", "")))).toEqual(["store-busy"]);
    other.exec("rollback");
    expect(codes(await store.commit(hallWithNotes("action-one", "")))).toEqual([]);
    other.close();
    await store.close();
  });

  it("a record that was put out of order by hand is named", async () => {
    const file = await filledFile();
    const connection = connect(file);
    connection.exec(`update hall set document = '{"name":' where id = 'tithe-barn-hall'`);
    const store = storeOver(connection, { file, now });
    const whole = await store.whole("oriel");
    expect(whole).toMatchObject({
      ok: false,
      problems: [{ code: "stored-document-unreadable", place: "hall/tithe-barn-hall" }],
    });
    await store.close();
  });

  it("two programs that save at the same time both keep what the other saved", async () => {
    const file = await filledFile();
    const [one, other] = [await opened(file), await opened(file)];
    expect(codes(await one.commit(hallWithNotes("action-one", "a", "one")))).toEqual([]);
    expect(codes(await other.commit(hallWithNotes("action-two", "b", "two")))).toEqual([]);
    expect(await names(one)).toHaveLength(5);
    await one.close();
    await other.close();
  });
});

async function opened(file: string): Promise<WholeStore> {
  const store = await openSqliteStore({ file, now });
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  return store.value;
}

async function filledFile(): Promise<string> {
  const file = join(temporaryFolder(), "practice.sqlite");
  const store = await opened(file);
  await store.commit(openOriel);
  await store.close();
  return file;
}

function hallWithNotes(action: string, notes: string, id = "new-hall"): Commit {
  const [first] = marlsford.halls;
  if (first === undefined) throw new Error("the demo has a hall");
  return {
    action,
    practice: "oriel",
    changes: [{ kind: "hall", id, from: 0, document: { ...first.document, notes } }],
  };
}

async function names(store: Store): Promise<readonly string[]> {
  const whole = await store.whole("oriel");
  return whole.ok ? whole.value.halls.map((it) => it.document.name).sort() : [];
}

function codes(result: Result<unknown>): readonly string[] {
  return result.ok ? [] : result.problems.map((it) => it.code);
}
