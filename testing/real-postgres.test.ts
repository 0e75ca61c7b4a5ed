import { Client } from "pg";
import { afterAll, beforeAll, expect, it } from "vitest";
import { type RealPostgres, realPostgres } from "./real-postgres.ts";

let server: RealPostgres;
beforeAll(async () => {
  server = await realPostgres();
}, 60_000);
afterAll(() => server.stop());

it("is a PostgreSQL that sorts as people do and writes through to the disk", async () => {
  const client = new Client({ connectionString: await server.emptySchema() });
  await client.connect();
  const sorted = await client.query(
    "select array_agg(x order by x) as all from unnest(array['b','A','a','B']) x",
  );
  expect(sorted.rows[0]).toEqual({ all: ["a", "A", "b", "B"] });
  const { rows } = await client.query("select current_setting('fsync') as fsync, current_schema() as schema");
  expect(rows).toEqual([{ fsync: "on", schema: "empty_1" }]);
  await client.end();
});
