import { readFileSync } from "node:fs";

/** The version of package.json, which stands two folders above both the source and the built file. */
export const VERSION = readVersion();

function readVersion(): string {
  const text = readFileSync(new URL("../../package.json", import.meta.url), "utf8");
  const manifest: unknown = JSON.parse(text);
  if (typeof manifest !== "object" || manifest === null || !("version" in manifest)) {
    throw new TypeError("package.json has no version");
  }
  return String(manifest.version);
}
