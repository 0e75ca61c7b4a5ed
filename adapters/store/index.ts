export { type BackupOrder, backupData } from "./backup-data.ts";
export { openSqliteStore, type SqliteOptions } from "./open-sqlite-store.ts";
export { type RestoreOrder, restoreData } from "./restore-data.ts";
