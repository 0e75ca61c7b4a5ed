import {
  chmodSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import type { Commit } from "#app/ports";
import type { Result } from "#core/words";
import { marlsford } from "#demo";
import {
  aCommit,
  aWrite,
  oldDataFileVersion1,
  oldDataFileVersion2,
  oldDataFileVersion3,
  temporaryFolder,
} from "#testing";
import Database from "better-sqlite3";
import { sql } from "kysely";
import { describe, expect, it } from "vitest";
import { checkFile, checkWritable } from "./check-file.ts";
import { migrations, newestVersion } from "./migrations.ts";
import { connect, openSqliteStore } from "./open-sqlite-store.ts";
import { upgradeFile } from "./upgrade-file.ts";
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

describe("a data file", () => {
  it("is made with its folders, marked as Hallful's, with nothing left beside it", async () => {
    const file = join(temporaryFolder(), "far", "down", "practice.sqlite");
    const store = await opened(file);
    await store.close();
    expect(readdirSync(join(file, ".."))).toEqual(["practice.sqlite"]);
    const database = new Database(file, { readonly: true });
    expect(database.pragma("application_id", { simple: true })).toBe(0x48414c4c);
    expect(database.pragma("user_version", { simple: true })).toBe(newestVersion());
    database.close();
  });

  it("keeps what was saved when it is opened again", async () => {
    const file = await filledFile();
    const store = await opened(file);
    const whole = await store.whole("oriel");
    expect(whole.ok && whole.value.halls.map((it) => it.document.name)).toEqual([
      "Quay Street Mission Room",
      "St Brannoc’s church hall",
      "Tithe Barn Hall",
    ]);
    await store.close();
  });

  it("is written through to the disk before a save is answered", () => {
    const file = join(temporaryFolder(), "practice.sqlite");
    oldDataFileVersion1(file);
    const connection = connect(file);
    // 2 is FULL: https://www.sqlite.org/pragma.html#pragma_synchronous
    expect(connection.pragma("synchronous", { simple: true })).toBe(2);
    expect(connection.pragma("journal_mode", { simple: true })).toBe("wal");
    expect(connection.pragma("foreign_keys", { simple: true })).toBe(1);
    connection.close();
  });

  it("refuses text in a column of numbers", async () => {
    const file = await filledFile();
    const connection = connect(file);
    expect(() => connection.exec("update hall set version = 'two'")).toThrow(/cannot store TEXT/);
    connection.close();
  });

  it("of version 1 is read by this version, what it left out filled in", async () => {
    const file = join(temporaryFolder(), "practice.sqlite");
    oldDataFileVersion1(file);
    const store = await opened(file);
    const whole = await store.whole("oriel");
    expect(whole.ok && whole.value.practice.version).toBe(3);
    const [hall] = whole.ok ? whole.value.halls : [];
    expect(hall).toMatchObject({ id: "loft", version: 2 });
    expect(hall?.document).toMatchObject({ name: "Loft", fixtures: [], axis: "auto", teacher: null });
    await store.close();
  });

  it("of version 2 is read with all that was in it, and takes plans", async () => {
    const file = join(temporaryFolder(), "practice.sqlite");
    oldDataFileVersion2(file);
    const store = await opened(file);
    const plan = { kind: "plan", id: "week", from: 0, document: { own: [] } } as const;
    expect(codes(await store.commit({ action: "action-plan", practice: "oriel", changes: [plan] }))).toEqual(
      [],
    );
    const whole = await store.whole("oriel");
    expect(whole.ok && whole.value).toMatchObject({
      halls: [{ id: "loft" }],
      classes: [{ id: "tuesday", version: 1 }],
      happened: [{ id: "tuesday", version: 4, document: { sessions: [] } }],
      plans: [{ id: "week", version: 1, document: { own: [] } }],
    });
    await store.close();
  });

  it("of version 3 is read with all that was in it, and takes a running record", async () => {
    const file = join(temporaryFolder(), "practice.sqlite");
    oldDataFileVersion3(file);
    const store = await opened(file);
    const whole = await store.whole("oriel");
    expect(whole.ok && whole.value.plans).toEqual([{ id: "week", version: 2, document: { own: [] } }]);
    const commit = aCommit("action-one", { streams: [aWrite("session/a", 0)] });
    expect(await store.record.append(commit)).toEqual({ ok: true, value: { outcome: "done" } });
    // what was done before the record was there is still done once
    expect(codes(await store.record.append(aCommit("action-old")))).toEqual(["action-reused"]);
    await store.close();
    expect(versionAndColumns(`${file}.version-3`)[0]).toBe(3);
  });

  it("of an older version is brought up, and kept as it was beside it", async () => {
    const file = join(temporaryFolder(), "practice.sqlite");
    oldDataFileVersion1(file);
    const next = {
      version: newestVersion() + 1,
      up: async (database: Parameters<(typeof migrations)[number]["up"]>[0]) => {
        await sql`alter table practice add column colour text`.execute(database);
      },
    };
    const kept = await upgradeFile(file, 1, [...migrations, next]);
    expect(versionAndColumns(file)).toEqual([
      newestVersion() + 1,
      ["practice", "version", "document", "colour"],
    ]);
    expect(versionAndColumns(kept)).toEqual([1, ["practice", "version", "document"]]);
  });

  it("stays as it was when bringing it up fails half way", async () => {
    const file = join(temporaryFolder(), "practice.sqlite");
    oldDataFileVersion1(file);
    const failing = {
      version: 2,
      up: async (database: Parameters<(typeof migrations)[number]["up"]>[0]) => {
        await sql`alter table practice add column colour text`.execute(database);
        await sql`alter table nowhere add column colour text`.execute(database);
      },
    };
    await expect(upgradeFile(file, 1, [failing])).rejects.toThrow(/no such table: nowhere/);
    expect(versionAndColumns(file)).toEqual([1, ["practice", "version", "document"]]);
  });
});

describe("a file that cannot be used is refused and left as it is:", () => {
  it("a file of another program", async () => {
    const file = join(temporaryFolder(), "shopping.txt");
    writeFileSync(file, "6 candles, tea, a new broom for the hall");
    expect(await codesOfOpening(file)).toEqual(["data-file-foreign"]);
    expect(readFileSync(file, "utf8")).toBe("6 candles, tea, a new broom for the hall");
  });

  it("a database of another program", async () => {
    const file = join(temporaryFolder(), "other.sqlite");
    const other = new Database(file);
    other.exec("create table recipe (name text)");
    other.close();
    const before = readFileSync(file);
    expect(await codesOfOpening(file)).toEqual(["data-file-foreign"]);
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it("a folder", async () => {
    const folder = join(temporaryFolder(), "practice.sqlite");
    mkdirSync(folder);
    expect(await codesOfOpening(folder)).toEqual(["data-file-foreign"]);
  });

  it.each([0, 50, 4096, 20_000])("a data file cut off after %i bytes", async (length) => {
    const file = await filledFile();
    expect(statSync(file).size).toBeGreaterThan(20_000);
    truncateSync(file, length);
    expect(await codesOfOpening(file)).toEqual(["data-file-damaged"]);
    expect(statSync(file).size).toBe(length);
  });

  it("a data file with muddled pages", async () => {
    const file = await filledFile();
    const bytes = readFileSync(file);
    // the pages after the first hold the tables; the header stays right
    bytes.fill(0xa5, 4096, 4096 * 6);
    writeFileSync(file, bytes);
    expect(await codesOfOpening(file)).toEqual(["data-file-damaged"]);
    expect(readFileSync(file).equals(bytes)).toBe(true);
  });

  it("a data file of a newer Hallful", async () => {
    const file = await filledFile();
    const newer = new Database(file);
    newer.pragma(`user_version = ${newestVersion() + 1}`);
    newer.close();
    expect(await codesOfOpening(file)).toEqual(["data-file-newer"]);
  });

  it("a data file that may not be written", () => {
    const folder = temporaryFolder();
    const file = join(folder, "practice.sqlite");
    oldDataFileVersion1(file);
    chmodSync(folder, 0o777);
    chmodSync(file, 0o444);
    expect(withoutPrivilege(() => codes(checkWritable(file)))).toEqual(["store-read-only"]);
    chmodSync(file, 0o666);
    expect(withoutPrivilege(() => codes(checkWritable(file)))).toEqual([]);
  });

  it("a data file in a folder that is a file", async () => {
    const letter = join(temporaryFolder(), "letter.txt");
    writeFileSync(letter, "Dear hall committee");
    expect(await codesOfOpening(join(letter, "practice.sqlite"))).toEqual(["store-read-only"]);
    expect(await codesOfOpening(join(letter, "deep", "practice.sqlite"))).toEqual(["store-read-only"]);
  });

  it("a data file that does not exist, where one is expected", () => {
    expect(codes(checkFile(join(temporaryFolder(), "none.sqlite")))).toEqual(["data-file-missing"]);
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

async function codesOfOpening(file: string): Promise<readonly string[]> {
  const store = await openSqliteStore({ file, now });
  if (store.ok) await store.value.close();
  return codes(store);
}

/** The administrator may write everything, so that a test run by one acts as nobody meanwhile. */
function withoutPrivilege<Value>(act: () => Value): Value {
  if (process.getuid?.() !== 0) return act();
  process.seteuid?.(65_534);
  try {
    return act();
  } finally {
    process.seteuid?.(0);
  }
}

function codes(result: Result<unknown>): readonly string[] {
  return result.ok ? [] : result.problems.map((it) => it.code);
}

function versionAndColumns(file: string): readonly [number, readonly string[]] {
  const database = new Database(file, { readonly: true });
  const version = Number(database.pragma("user_version", { simple: true }));
  const columns = database
    .prepare("select name from pragma_table_info('practice')")
    .pluck()
    .all()
    .map(String);
  database.close();
  return [version, columns];
}
