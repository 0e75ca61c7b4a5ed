import { type CustomTypesConfig, Pool, types } from "pg";

/** The number of connections a group's server uses at once; a small PostgreSQL takes a hundred in all. */
const CONNECTIONS = 10;

/** How long a statement waits for another that writes the same row, or for a connection, before "store-busy". */
const PATIENCE_MILLISECONDS = 10_000;

/** Connections to the address. One that breaks is told by what was using it and replaced by the next. */
export function makePool(url: string): Pool {
  const pool = new Pool({
    connectionString: url,
    max: CONNECTIONS,
    connectionTimeoutMillis: PATIENCE_MILLISECONDS,
    lock_timeout: PATIENCE_MILLISECONDS,
    fallback_application_name: "hallful",
    keepAlive: true,
    types: { getTypeParser },
  });
  // an error event that nobody hears ends the whole program, whether the connection was idle or lent out
  pool.on("error", () => {});
  pool.on("connect", (client) => client.on("error", () => {}));
  return pool;
}

/** Large whole numbers, which count and sum answer too, would else come as text. */
const getTypeParser: CustomTypesConfig["getTypeParser"] = (type, format) =>
  type === types.builtins.INT8 ? wholeNumber : types.getTypeParser(type, format);

/** Money and counts stay below 2^53; a number that does not is a fault and must not be rounded. */
function wholeNumber(text: string): number {
  const value = Number(text);
  if (!Number.isSafeInteger(value)) throw new RangeError(`a whole number too large to be held: ${text}`);
  return value;
}
