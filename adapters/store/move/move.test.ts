import { mkdtempSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { marlsford } from "#demo";
import type { Result } from "#core/words";
import {
  aCommit,
  aSale,
  aWrite,
  openPracticeIn,
  type RealPostgres,
  realPostgres,
  temporaryFolder,
} from "#testing";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openStore } from "../open-store.ts";
import type { WholeStore } from "../sql-store.ts";
import { moveIn, moveOut } from "./move-files.ts";

let server: RealPostgres;
beforeAll(async () => {
  server = await realPostgres();
}, 60_000);
afterAll(() => server.stop());

type Kind = "file" | "database";
const both: readonly (readonly [Kind, Kind])[] = [
  ["file", "database"],
  ["database", "file"],
];

describe("everything of all practices", () => {
  it.each(both)("moved from a %s to a %s is the same there, to the last sign", async (one, other) => {
    const folder = temporaryFolder();
    const from = await filled(one);
    const written = join(folder, "everything.jsonl");
    const out = await moveOut({ store: from, to: written, replace: false });
    const to = await empty(other);
    expect(await moveIn({ store: to, from: written })).toEqual(out);
    const again = join(folder, "again.jsonl");
    expect(await moveOut({ store: to, to: again, replace: false })).toEqual(out);
    expect(readFileSync(again, "utf8")).toBe(readFileSync(written, "utf8"));
    expect(await to.whole("oriel")).toEqual(await from.whole("oriel"));
    expect(await to.record.balances("oriel", "2027-01-01")).toEqual(
      await from.record.balances("oriel", "2027-01-01"),
    );
    expect(await to.record.events("oriel", tonight)).toEqual(await from.record.events("oriel", tonight));
    await Promise.all([from.close(), to.close()]);
  });

  it("keeps what was done as done: an action sent again after the move changes nothing", async () => {
    const folder = temporaryFolder();
    const from = await filled("file");
    await moveOut({ store: from, to: join(folder, "everything.jsonl"), replace: false });
    const to = await empty("database");
    await moveIn({ store: to, from: join(folder, "everything.jsonl") });
    expect(await to.record.append(first)).toEqual({
      ok: true,
      value: { outcome: "done before", answer: { says: ["action-first"] } },
    });
    await Promise.all([from.close(), to.close()]);
  });

  it("is written with its format first, a row a line, and a last line that tells whether all of it is there", async () => {
    const { file } = await writtenFile();
    const lines = readFileSync(file, "utf8").split("\n");
    expect(JSON.parse(lines[0] ?? "")).toEqual({ format: "hallful/everything@1", version: 4 });
    expect(JSON.parse(lines[1] ?? "")).toMatchObject({ practice: { practice: "ines", version: 1 } });
    expect(JSON.parse(lines.at(-2) ?? "")).toMatchObject({ end: { lines: lines.length - 2 } });
    expect(lines.at(-1)).toBe("");
    expect(readdirSync(join(file, ".."))).toEqual(["everything.jsonl"]);
    // names and contacts are for nobody else on the computer
    expect(statSync(file).mode & 0o077).toBe(0);
  });

  it("replaces no file unless it is told to", async () => {
    const { file, store } = await writtenFile();
    expect(codesOf(await moveOut({ store, to: file, replace: false }))).toEqual(["backup-exists"]);
    expect(codesOf(await moveOut({ store, to: file, replace: true }))).toEqual([]);
  });
});

describe("a file of everything that cannot be taken in changes nothing:", () => {
  const spoilt: readonly (readonly [string, (text: string) => string, string])[] = [
    ["one that was cut off", (text) => text.slice(0, text.length / 2), "move-file-unreadable"],
    ["one whose last line is missing", (text) => text.replace(/\{"end".*\n/, ""), "move-file-unreadable"],
    ["one with a line less", (text) => text.replace(/\{"hall".*\n/, ""), "move-file-unreadable"],
    [
      "one with an amount changed",
      (text) => text.replace('"amount":1000', '"amount":9000'),
      "move-file-unreadable",
    ],
    ["one of a newer Hallful", (text) => text.replace('"version":4}', '"version":5}'), "move-file-newer"],
    ["an empty one", () => "", "move-file-unreadable"],
    ["a letter", () => "Dear hall committee\n", "move-file-unreadable"],
  ];
  it.each(spoilt)("%s", async (_, spoil, code) => {
    const { file } = await writtenFile();
    writeFileSync(file, spoil(readFileSync(file, "utf8")));
    for (const kind of ["file", "database"] as const) {
      const to = await empty(kind);
      expect(codesOf(await moveIn({ store: to, from: file }))).toEqual([code]);
      expect(await to.practices()).toEqual({ ok: true, value: [] });
      await to.close();
    }
  });

  it("one that is not there", async () => {
    const to = await empty("file");
    expect(codesOf(await moveIn({ store: to, from: "nowhere.jsonl" }))).toEqual(["move-file-missing"]);
    await to.close();
  });

  it.each(["file", "database"] as const)("one with a practice that is in the %s already", async (kind) => {
    const { file } = await writtenFile();
    const to = await empty(kind);
    await openPracticeIn(to, "ines");
    expect(codesOf(await moveIn({ store: to, from: file }))).toEqual(["move-practice-there"]);
    const there = await to.practices();
    expect(there.ok && there.value.map((it) => it.id)).toEqual(["ines"]);
    await to.close();
  });
});

const tonight = "session/tuesday.2026-12-01";
const strange = "“Ana’s” \u2028 'x' ゆか \u{1f9d8} \u0000 \ud800";
const first = aCommit("action-first", {
  streams: [aWrite(tonight, 0, { events: [{ 2: "b", 1: "a", strange }] }), aWrite("person/ana-1", 0)],
  postings: aSale(1000, "2026-12-01", tonight),
  sealed: [{ person: "ana-1", text: "v1:9f3a" }],
});

async function filled(kind: Kind): Promise<WholeStore> {
  const store = await empty(kind);
  const changes = [
    { kind: "practice", from: 0, document: marlsford.practice } as const,
    ...marlsford.halls.map((it) => ({ kind: "hall", from: 0, ...it }) as const),
    ...marlsford.classes.map((it) => ({ kind: "class", from: 0, ...it }) as const),
    ...marlsford.happened.map((it) => ({ kind: "happened", from: 0, ...it }) as const),
    { kind: "plan", id: "week", from: 0, document: { own: [], strange } } as const,
  ];
  expect(codesOf(await store.commit({ action: "action-open", practice: "oriel", changes }))).toEqual([]);
  await openPracticeIn(store, "ines");
  expect(codesOf(await store.record.append(first))).toEqual([]);
  // more than one page of a table
  const events = Array.from({ length: 2500 }, (_, index) => ({ index }));
  const many = aCommit("action-many", { practice: "ines", streams: [aWrite("session/a", 0, { events })] });
  expect(codesOf(await store.record.append(many))).toEqual([]);
  return store;
}

async function writtenFile() {
  const store = await filled("file");
  const file = join(temporaryFolder(), "everything.jsonl");
  expect(codesOf(await moveOut({ store, to: file, replace: false }))).toEqual([]);
  return { file, store };
}

async function empty(kind: Kind): Promise<WholeStore> {
  const place =
    kind === "file"
      ? { kind, file: join(mkdtempSync(join(tmpdir(), "hallful-")), "practice.sqlite") }
      : { kind, url: await server.emptySchema() };
  const store = await openStore(place, () => "2026-12-01T21:10:00Z");
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  return store.value;
}

function codesOf(result: Result<unknown>): readonly string[] {
  return result.ok ? [] : result.problems.map((it) => it.code);
}
