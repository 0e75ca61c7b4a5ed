import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { openPractice } from "#app/actions";
import { openSqliteStore } from "#adapters/store";
import { cedarFork, type DemoPractice, marlsford } from "#demo";
import { temporaryFolder } from "#testing";
import { describe, expect, it } from "vitest";
import { inTerminal } from "./pretend-terminal.ts";

describe("hallful export and hallful import", () => {
  it("give back the very document that was kept, hall and class alike", async () => {
    const folder = await practiceFolder({ oriel: marlsford });
    for (const { document } of marlsford.halls) {
      const seen = await inTerminal(["export", "hall", document.name], at(folder));
      expect(JSON.parse(seen.out)).toEqual(document);
    }
    for (const { document } of marlsford.classes) {
      const seen = await inTerminal(["export", "class", document.name.toUpperCase()], at(folder));
      expect(JSON.parse(seen.out)).toEqual(document);
    }
  });

  it("carry a hall from one data file to another without a change", async () => {
    const from = await practiceFolder({ oriel: marlsford });
    const to = await practiceFolder({ ines: cedarFork });
    const barn = (await inTerminal(["export", "hall", "tithe-barn-hall"], at(from))).out;
    const taken = await inTerminal(["import", "hall", "-"], { ...at(to), input: barn });
    expect(taken).toEqual({
      code: 0,
      out: "Kept the hall “Tithe Barn Hall” as tithe-barn-hall, version 1.\n",
      err: "",
    });
    expect((await inTerminal(["export", "hall", "tithe-barn-hall"], at(to))).out).toBe(barn);
  });

  it("keep under another id, and replace only when told to", async () => {
    const folder = await practiceFolder({ oriel: marlsford });
    const input = JSON.stringify({ ...marlsford.halls[0]?.document, notes: "New key." });
    const again = await inTerminal(["import", "hall", "-"], { ...at(folder), input });
    expect(again).toMatchObject({ code: 2, out: "" });
    expect(again.err).toContain("[already-there]");
    const other = await inTerminal(["import", "hall", "-", "--id", "barn-2"], { ...at(folder), input });
    expect(other.out).toBe("Kept the hall “Tithe Barn Hall” as barn-2, version 1.\n");
    const replaced = await inTerminal(["import", "hall", "-", "--replace", "--json"], {
      ...at(folder),
      input,
    });
    expect(JSON.parse(replaced.out)).toEqual({ kind: "hall", id: "tithe-barn-hall", version: 2 });
  });

  it("keep no hall that could not be measured out, and tell of keys that nothing reads", async () => {
    const folder = await practiceFolder({ oriel: marlsford });
    const barn = marlsford.halls[0]?.document;
    const crossed = { ...barn, outline: (barn?.outline ?? []).toSorted(([x], [other]) => x - other) };
    const refused = await inTerminal(["import", "hall", "-", "--id", "crossed"], {
      ...at(folder),
      input: JSON.stringify(crossed),
    });
    expect(refused).toMatchObject({ code: 2, out: "" });
    expect(refused.err).toContain("[outline-crosses-itself]");
    const missing = await inTerminal(["export", "hall", "crossed"], at(folder));
    expect(missing.err).toContain("[record-missing]");
    const typo = await inTerminal(["import", "hall", "-", "--id", "typo"], {
      ...at(folder),
      input: JSON.stringify({ ...barn, adress: "Barn Lane" }),
    });
    expect(typo).toMatchObject({
      code: 0,
      err: "Note: nothing reads “adress”; look whether it is misspelt.\n",
    });
  });

  it("ask which practice is meant when there are several", async () => {
    const folder = await practiceFolder({ oriel: marlsford, ines: cedarFork });
    const unclear = await inTerminal(["export", "hall", "grange-hall"], at(folder));
    expect(unclear.err).toContain("There are 2 practices");
    expect(unclear.err).toContain("[practice-unclear]");
    const meant = await inTerminal(["export", "hall", "grange-hall", "--practice", "ines"], at(folder));
    expect(JSON.parse(meant.out)).toEqual(cedarFork.halls[0]?.document);
    const unknown = await inTerminal(["export", "hall", "grange-hall", "--practice", "inez"], at(folder));
    expect(unknown.err).toContain("Did you mean ines? [practice-unknown]");
  });

  it("say what to do when there is no practice or no data file yet", async () => {
    const empty = await practiceFolder({});
    expect((await inTerminal(["export", "hall", "barn"], at(empty))).err).toContain("[practice-none]");
    const folder = temporaryFolder();
    expect((await inTerminal(["export", "hall", "barn"], at(folder))).err).toContain("[data-file-missing]");
    expect(existsSync(join(folder, "practice.sqlite"))).toBe(false);
  });

  it("name the nearest record when there is none of that name", async () => {
    const folder = await practiceFolder({ oriel: marlsford });
    const seen = await inTerminal(["export", "hall", "Tithe Barn Hal"], at(folder));
    expect(seen.err).toContain("Did you mean Tithe Barn Hall? [record-missing]");
  });
});

describe("hallful backup and hallful restore", () => {
  it("bring back what was there, and keep what it replaced", async () => {
    const folder = await practiceFolder({ oriel: marlsford });
    const made = await inTerminal(["backup", "monday.sqlite"], at(folder));
    expect(made.out).toMatch(/^Backed up .*practice\.sqlite to .*monday\.sqlite \(\d+ bytes\)\.\n$/);
    const input = JSON.stringify({ ...marlsford.halls[0]?.document, name: "After the backup" });
    await inTerminal(["import", "hall", "-", "--id", "tithe-barn-hall", "--replace"], {
      ...at(folder),
      input,
    });
    const restored = await inTerminal(["restore", "monday.sqlite"], at(folder));
    expect(restored).toMatchObject({ code: 0, err: "" });
    expect(restored.out).toContain("What was there is kept as");
    expect(existsSync(join(folder, "practice-replaced-2026-11-25-094500.sqlite"))).toBe(true);
    const barn = await inTerminal(["export", "hall", "tithe-barn-hall"], at(folder));
    expect(JSON.parse(barn.out)).toEqual(marlsford.halls[0]?.document);
  });

  it("refuse what is not a data file of Hallful's, and overwrite nothing", async () => {
    const folder = await practiceFolder({ oriel: marlsford });
    writeFileSync(join(folder, "letter.txt"), "Dear hall committee");
    const onto = await inTerminal(["backup", "letter.txt"], at(folder));
    expect(onto.err).toContain("[backup-exists]");
    const from = await inTerminal(["restore", "letter.txt"], at(folder));
    expect(from.err).toContain("[data-file-foreign]");
    expect(readFileSync(join(folder, "letter.txt"), "utf8")).toBe("Dear hall committee");
  });

  it("take the data file from --data before HALLFUL_DATA", async () => {
    const folder = await practiceFolder({ oriel: marlsford });
    const words = ["backup", "copy.sqlite", "--data", "elsewhere.sqlite"];
    const seen = await inTerminal(words, at(folder));
    expect(seen.err).toContain("elsewhere.sqlite");
    expect(seen.err).toContain("[data-file-missing]");
  });
});

const now = () => "2026-11-25T09:45:00.000Z";

function at(folder: string) {
  return { folder, environment: { HALLFUL_DATA: "practice.sqlite" } };
}

async function practiceFolder(practices: Readonly<Record<string, DemoPractice>>): Promise<string> {
  const folder = temporaryFolder();
  const store = await openSqliteStore({ file: join(folder, "practice.sqlite"), now });
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  for (const [id, start] of Object.entries(practices)) {
    // oxlint-disable-next-line no-await-in-loop -- one after the other
    const done = await openPractice(store.value, { action: `action-${id}`, id, start });
    if (!done.ok) throw new Error(JSON.stringify(done.problems));
  }
  await store.value.close();
  return folder;
}
