import { type RealPostgres, realPostgres, storeContract } from "#testing";
import { afterAll, beforeAll } from "vitest";
import { openPostgresStore } from "./open-postgres-store.ts";

let server: RealPostgres;
beforeAll(async () => {
  server = await realPostgres();
}, 60_000);
afterAll(() => server.stop());

storeContract("a PostgreSQL database", async () => {
  const url = await server.emptySchema();
  return async () => {
    const store = await openPostgresStore({ url, now: () => "2026-09-07T18:00:00Z" });
    if (!store.ok) throw new Error(JSON.stringify(store.problems));
    return store.value;
  };
});
