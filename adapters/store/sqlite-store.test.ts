import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { recordStoreContract, storeContract } from "#testing";
import { openSqliteStore } from "./open-sqlite-store.ts";

const freshFile = async () => {
  const file = join(mkdtempSync(join(tmpdir(), "hallful-")), "practice.sqlite");
  return async () => {
    const store = await openSqliteStore({ file, now: () => "2026-09-07T18:00:00Z" });
    if (!store.ok) throw new Error(JSON.stringify(store.problems));
    return store.value;
  };
};

storeContract("a SQLite file", freshFile);
recordStoreContract("a SQLite file", freshFile);
