import { existsSync, realpathSync } from "node:fs";

/** Whether two names mean one file, also by way of a link. */
export function isSameFile(one: string, other: string): boolean {
  if (!existsSync(one) || !existsSync(other)) return false;
  return realpathSync(one) === realpathSync(other);
}
