import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

/** What a browser that is measured is started with: nothing of its own goes on beside the page. */
export const quietly = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** The browser that HALLFUL_CHROMIUM names, or the first on the path. Throws where there is none. */
export function chromiumPath(): string {
  const named = process.env["HALLFUL_CHROMIUM"] ?? "";
  if (named !== "") return named;
  const folders = (process.env["PATH"] ?? "").split(delimiter);
  const paths = folders.flatMap((folder) => ["chromium", "google-chrome"].map((name) => join(folder, name)));
  const found = paths.find(canRun);
  if (found === undefined) throw new Error("No Chromium on the path: set HALLFUL_CHROMIUM to one.");
  return found;
}

function canRun(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
