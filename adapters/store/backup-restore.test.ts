import {
  copyFileSync,
  existsSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import type { Store } from "#app/ports";
import type { Result } from "#core/words";
import { marlsford } from "#demo";
import { temporaryFolder } from "#testing";
import { describe, expect, it } from "vitest";
import { backupData } from "./backup-data.ts";
import { openSqliteStore } from "./open-sqlite-store.ts";
import { restoreData } from "./restore-data.ts";

const now = "2026-11-25T09:45:00.123Z";

describe("a backup", () => {
  it("is one file with everything that was saved, taken while Hallful runs", async () => {
    const { data, folder, store } = await running("Oriel");
    const to = join(folder, "copies", "monday.sqlite");
    expect(codes(backupData({ data, to, replace: false }))).toEqual([]);
    expect(readdirSync(join(folder, "copies"))).toEqual(["monday.sqlite"]);
    expect(await practiceNames(to)).toEqual(["Oriel"]);
    await renamePractice(store, "Oriel Tamsett", 1);
    expect(await practiceNames(to)).toEqual(["Oriel"]);
    await store.close();
  });

  it("replaces no file unless it is told to", async () => {
    const { data, folder, store } = await running("Oriel");
    const to = join(folder, "letter.txt");
    writeFileSync(to, "Dear hall committee");
    expect(codes(backupData({ data, to, replace: false }))).toEqual(["backup-exists"]);
    expect(readFileSync(to, "utf8")).toBe("Dear hall committee");
    expect(codes(backupData({ data, to, replace: true }))).toEqual([]);
    expect(await practiceNames(to)).toEqual(["Oriel"]);
    await store.close();
  });

  it("is never written over the data file, under whatever name", async () => {
    const { data, folder, store } = await running("Oriel");
    const link = join(folder, "link.sqlite");
    symlinkSync(data, link);
    expect(codes(backupData({ data, to: data, replace: true }))).toEqual(["backup-onto-data"]);
    expect(codes(backupData({ data, to: link, replace: true }))).toEqual(["backup-onto-data"]);
    await store.close();
  });

  it("of a file that is not there or not ours is refused and makes nothing", async () => {
    const folder = temporaryFolder();
    const to = join(folder, "copy.sqlite");
    expect(codes(backupData({ data: join(folder, "none.sqlite"), to, replace: false }))).toEqual([
      "data-file-missing",
    ]);
    writeFileSync(join(folder, "notes.txt"), "not a database at all");
    expect(codes(backupData({ data: join(folder, "notes.txt"), to, replace: false }))).toEqual([
      "data-file-foreign",
    ]);
    expect(existsSync(to)).toBe(false);
  });
});

describe("restoring", () => {
  it("puts the backup in place and keeps what was there under a dated name", async () => {
    const { data, folder, store } = await running("Oriel");
    const from = join(folder, "backup.sqlite");
    backupData({ data, to: from, replace: false });
    await renamePractice(store, "Changed after the backup", 1);
    await store.close();
    const kept = join(folder, "practice-replaced-2026-11-25-094500.sqlite");
    expect(restoreData({ from, data, now })).toEqual({ ok: true, value: kept });
    expect(await practiceNames(data)).toEqual(["Oriel"]);
    expect(await practiceNames(kept)).toEqual(["Changed after the backup"]);
    expect(await practiceNames(from)).toEqual(["Oriel"]);
  });

  it("makes the data file where there is none", async () => {
    const { data, folder, store } = await running("Oriel");
    await store.close();
    const fresh = join(folder, "new", "place.sqlite");
    expect(restoreData({ from: data, data: fresh, now })).toEqual({ ok: true, value: null });
    expect(await practiceNames(fresh)).toEqual(["Oriel"]);
  });

  it("waits until Hallful no longer runs on the file", async () => {
    const { data, folder, store } = await running("Oriel");
    const from = join(folder, "backup.sqlite");
    backupData({ data, to: from, replace: false });
    await renamePractice(store, "Still at work", 1);
    expect(codes(restoreData({ from, data, now }))).toEqual(["data-in-use"]);
    await store.close();
    expect(await practiceNames(data)).toEqual(["Still at work"]);
  });

  it("takes the place of a damaged file, which is kept too", async () => {
    const { data, folder, store } = await running("Oriel");
    const from = join(folder, "backup.sqlite");
    backupData({ data, to: from, replace: false });
    await store.close();
    truncateSync(data, 5000);
    expect(codes(restoreData({ from, data, now }))).toEqual([]);
    expect(await practiceNames(data)).toEqual(["Oriel"]);
    const kept = readFileSync(join(folder, "practice-replaced-2026-11-25-094500.sqlite"));
    expect(kept.length).toBe(5000);
  });

  it("does not play the journal of a crash into the restored file", async () => {
    const { data, folder, store } = await running("Oriel");
    const from = join(folder, "backup.sqlite");
    backupData({ data, to: from, replace: false });
    await renamePractice(store, "In the journal only", 1);
    const crashed = join(folder, "crashed.sqlite");
    copyFileSync(data, crashed);
    copyFileSync(`${data}-wal`, `${crashed}-wal`);
    await store.close();
    expect(codes(restoreData({ from, data: crashed, now }))).toEqual([]);
    expect(await practiceNames(crashed)).toEqual(["Oriel"]);
    expect(await practiceNames(join(folder, "crashed-replaced-2026-11-25-094500.sqlite"))).toEqual([
      "In the journal only",
    ]);
  });

  it("puts the journal of a file that cannot be opened away with it", async () => {
    const { data, folder, store: first } = await running("Oriel");
    const from = join(folder, "backup.sqlite");
    backupData({ data, to: from, replace: false });
    await first.close();
    // opened anew, so that the journal does not hold the first page, and cannot mend the file by it
    const store = await opened(data);
    await renamePractice(store, "In the journal only", 1);
    const crashed = join(folder, "crashed.sqlite");
    writeFileSync(crashed, "not a database any more ".repeat(2000));
    copyFileSync(`${data}-wal`, `${crashed}-wal`);
    await store.close();
    expect(codes(restoreData({ from, data: crashed, now }))).toEqual([]);
    expect(await practiceNames(crashed)).toEqual(["Oriel"]);
    const kept = join(folder, "crashed-replaced-2026-11-25-094500.sqlite");
    expect([existsSync(kept), existsSync(`${kept}-wal`)]).toEqual([true, true]);
  });

  it("from a damaged or foreign file is refused and leaves the data as it is", async () => {
    const { data, folder, store } = await running("Oriel");
    await store.close();
    const before = readFileSync(data);
    const damaged = join(folder, "damaged.sqlite");
    copyFileSync(data, damaged);
    truncateSync(damaged, 9000);
    const foreign = join(folder, "foreign.txt");
    writeFileSync(foreign, "hello");
    expect(codes(restoreData({ from: damaged, data, now }))).toEqual(["data-file-damaged"]);
    expect(codes(restoreData({ from: foreign, data, now }))).toEqual(["data-file-foreign"]);
    expect(codes(restoreData({ from: join(folder, "none"), data, now }))).toEqual(["data-file-missing"]);
    expect(codes(restoreData({ from: data, data, now }))).toEqual(["restore-onto-itself"]);
    expect(readFileSync(data).equals(before)).toBe(true);
    expect(readdirSync(folder).filter((name) => name.includes("replaced"))).toEqual([]);
  });

  it("twice in one second keeps both of the files it replaced", async () => {
    const { data, folder, store } = await running("Oriel");
    const from = join(folder, "backup.sqlite");
    backupData({ data, to: from, replace: false });
    await store.close();
    expect(codes(restoreData({ from, data, now }))).toEqual([]);
    expect(codes(restoreData({ from, data, now }))).toEqual([]);
    expect(readdirSync(folder).filter((name) => name.includes("replaced"))).toHaveLength(2);
  });
});

async function running(name: string) {
  const folder = temporaryFolder();
  const data = join(folder, "practice.sqlite");
  const store = await opened(data);
  await store.commit({
    action: "action-open",
    practice: "oriel",
    changes: [{ kind: "practice", from: 0, document: { ...marlsford.practice, name } }],
  });
  return { folder, data, store };
}

async function opened(file: string): Promise<Store> {
  const store = await openSqliteStore({ file, now: () => now });
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  return store.value;
}

async function renamePractice(store: Store, name: string, from: number): Promise<void> {
  const document = { ...marlsford.practice, name };
  const done = await store.commit({
    action: `action-rename-${from}`,
    practice: "oriel",
    changes: [{ kind: "practice", from, document }],
  });
  expect(codes(done)).toEqual([]);
}

/** Looks by way of a fresh store, and so also at what the journal beside the file holds. */
async function practiceNames(file: string): Promise<readonly string[]> {
  const store = await opened(file);
  const found = await store.practices();
  await store.close();
  return found.ok ? found.value.map((it) => it.document.name) : codes(found);
}

function codes(result: Result<unknown>): readonly string[] {
  return result.ok ? [] : result.problems.map((it) => it.code);
}
