import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, readFileSync, writeSync } from "node:fs";
import { dirname } from "node:path";
import type { Sealer } from "#app/ports";
import { bad, good, problem, type Result } from "#core/words";
import { keySealer, newKey } from "./key-sealer.ts";

/**
 * The sealer under the key in a file of 64 hexadecimal digits, which is made when it is not there, readable by its
 * owner only. It lies beside the data and is in no backup: whoever finds a backup reads no note.
 * Problems: "key-file-unreadable", "key-file-unwritable".
 */
export function openKeyFile(file: string): Result<Sealer> {
  const made = existsSync(file) ? good(null) : makeKeyFile(file);
  if (!made.ok) return made;
  const key = readKey(file);
  return key === undefined ? bad(unreadable(file)) : good(keySealer(key));
}

function readKey(file: string): Uint8Array | undefined {
  try {
    const text = readFileSync(file, "utf8").trim();
    return /^[0-9a-f]{64}$/.test(text) ? Buffer.from(text, "hex") : undefined;
  } catch {
    return undefined;
  }
}

/** "wx" never writes over a key that another start made in the meantime. */
function makeKeyFile(file: string): Result<null> {
  try {
    mkdirSync(dirname(file), { recursive: true });
    const handle = openSync(file, "wx", 0o600);
    writeSync(handle, `${Buffer.from(newKey()).toString("hex")}\n`);
    fsyncSync(handle);
    closeSync(handle);
    return good(null);
  } catch {
    return existsSync(file) ? good(null) : bad(unwritable(file));
  }
}

function unreadable(file: string) {
  const says = `The key file ${file} cannot be read, or is not a key.`;
  return problem("key-file-unreadable", "key", says, "Put back the one that notes were sealed under.");
}

function unwritable(file: string) {
  const says = `The key file ${file} cannot be made.`;
  return problem(
    "key-file-unwritable",
    "key",
    says,
    "Make its folder writable, or name another with --key FILE.",
  );
}
