export { openSqliteStore, type SqliteOptions } from "./open-sqlite-store.ts";
