export { type BackupOrder, backupData } from "./backup-data.ts";
export { checkFile } from "./check-file.ts";
export { dataFileName } from "./data-file-name.ts";
export { openSqliteStore, type SqliteOptions } from "./open-sqlite-store.ts";
export { openPostgresStore, type PostgresOptions } from "./postgres/open-postgres-store.ts";
export { type RestoreOrder, restoreData } from "./restore-data.ts";
export type { WholeStore } from "./sql-store.ts";
