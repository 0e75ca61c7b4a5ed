import { closeSync, fsyncSync, openSync } from "node:fs";
import { dirname } from "node:path";

/** Puts the content of a file on disk before anybody is told that it is there. */
export function settleFile(file: string): void {
  const open = openSync(file, "r+");
  fsyncSync(open);
  closeSync(open);
}

/** Puts the name of a new file on disk, not only its content. Windows has no such call and needs none. */
export function settleFolder(file: string): void {
  if (process.platform === "win32") return;
  const folder = openSync(dirname(file), "r");
  fsyncSync(folder);
  closeSync(folder);
}
