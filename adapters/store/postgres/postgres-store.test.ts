import { type RealPostgres, realPostgres, recordStoreContract, storeContract } from "#testing";
import { afterAll, beforeAll } from "vitest";
import { openPostgresStore } from "./open-postgres-store.ts";

let server: RealPostgres;
beforeAll(async () => {
  server = await realPostgres();
}, 60_000);
afterAll(() => server.stop());

const freshSchema = async () => {
  const url = await server.emptySchema();
  return async () => {
    const store = await openPostgresStore({ url, now: () => "2026-09-07T18:00:00Z" });
    if (!store.ok) throw new Error(JSON.stringify(store.problems));
    return store.value;
  };
};

storeContract("a PostgreSQL database", freshSchema);
recordStoreContract("a PostgreSQL database", freshSchema);
