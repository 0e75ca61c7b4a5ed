export { type BackupOrder, backupData } from "./backup-data.ts";
export { checkFile } from "./check-file.ts";
export { type DataPlace, dataPlace, placeInWords } from "./data-place.ts";
export { moveIn, moveOut } from "./move/move-files.ts";
export { openSqliteStore, type SqliteOptions } from "./open-sqlite-store.ts";
export { openStore } from "./open-store.ts";
export { openPostgresStore, type PostgresOptions } from "./postgres/open-postgres-store.ts";
export { type RestoreOrder, restoreData } from "./restore-data.ts";
export type { WholeStore } from "./sql-store.ts";
