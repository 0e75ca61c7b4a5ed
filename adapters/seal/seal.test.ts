import { readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { temporaryFolder } from "#testing";
import { expect, test } from "vitest";
import { keySealer, newKey } from "./key-sealer.ts";
import { openKeyFile } from "./open-key-file.ts";

const note = "left knee: no deep bends";

test("a sealed note says nothing, never looks the same, and opens for its person", () => {
  const sealer = keySealer(newKey());
  const sealed = sealer.seal("oriel", "ana", note);
  expect(sealed).not.toContain("knee");
  expect(Buffer.from(sealed.slice(6), "base64url").toString("latin1")).not.toContain("knee");
  expect(sealer.seal("oriel", "ana", note)).not.toBe(sealed);
  expect(sealer.open("oriel", "ana", sealed)).toEqual({ ok: true, value: note });
});

test("a note opens for nobody else, under no other key, and not when a letter was changed", () => {
  const sealer = keySealer(newKey());
  const sealed = sealer.seal("oriel", "ana", note);
  const changed = `${sealed.slice(0, -2)}${sealed.at(-2) === "A" ? "B" : "A"}${sealed.at(-1)}`;
  const tries = [
    sealer.open("oriel", "ben", sealed),
    sealer.open("ines", "ana", sealed),
    keySealer(newKey()).open("oriel", "ana", sealed),
    sealer.open("oriel", "ana", changed),
    sealer.open("oriel", "ana", note),
    sealer.open("oriel", "ana", "seal1.AAAA"),
  ];
  expect(tries.map((it) => it.ok)).toEqual([false, false, false, false, false, false]);
});

test("the key file is made once, for its owner only, and opens what it closed at the next start", () => {
  const file = join(temporaryFolder(), "hallful.key");
  const first = openKeyFile(file);
  const sealed = first.ok ? first.value.seal("oriel", "ana", note) : "";
  expect(statSync(file).mode & 0o777).toBe(0o600);
  const key = readFileSync(file, "utf8");
  const second = openKeyFile(file);
  expect(second.ok && second.value.open("oriel", "ana", sealed)).toEqual({ ok: true, value: note });
  expect(readFileSync(file, "utf8")).toBe(key);
});

test("a key file that is none, or a folder that is not there, is told", () => {
  const file = join(temporaryFolder(), "hallful.key");
  writeFileSync(file, "not a key\n");
  const codes = [openKeyFile(file), openKeyFile(join(file, "there", "x.key"))].map((it) =>
    it.ok ? "" : it.problems[0]?.code,
  );
  expect(codes).toEqual(["key-file-unreadable", "key-file-unwritable"]);
  expect(readFileSync(file, "utf8")).toBe("not a key\n");
});
