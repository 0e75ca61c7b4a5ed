import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";

/** An empty folder that goes when the test that asked for it is over. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "hallful-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
