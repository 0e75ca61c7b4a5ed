import { createCipheriv, createDecipheriv, randomBytes } from "node:crypto";
import type { Sealer } from "#app/ports";
import { bad, good, problem, type Result } from "#core/words";

/*
 * AES-256-GCM (NIST SP 800-38D) with a random nonce of 96 bits for each note; the practice and the person are
 * authenticated with it, so that a note moved to somebody else does not open.
 */
const CIPHER = "aes-256-gcm";
const KEY_BYTES = 32;
const NONCE_BYTES = 12;
const TAG_BYTES = 16;
const FORM = "seal1.";

/** A sealer under a key of 32 bytes. Throws on a key of another length. */
export function keySealer(key: Uint8Array): Sealer {
  if (key.length !== KEY_BYTES) throw new RangeError(`a key has ${KEY_BYTES} bytes, not ${key.length}`);
  return {
    seal: (practice, person, text) => seal(key, whose(practice, person), text),
    open: (practice, person, sealed) => open(key, whose(practice, person), sealed),
  };
}

export function newKey(): Uint8Array {
  return randomBytes(KEY_BYTES);
}

function seal(key: Uint8Array, owner: Buffer, text: string): string {
  const nonce = randomBytes(NONCE_BYTES);
  const cipher = createCipheriv(CIPHER, key, nonce, { authTagLength: TAG_BYTES }).setAAD(owner);
  const closed = Buffer.concat([cipher.update(text, "utf8"), cipher.final()]);
  return `${FORM}${Buffer.concat([nonce, cipher.getAuthTag(), closed]).toString("base64url")}`;
}

function open(key: Uint8Array, owner: Buffer, sealed: string): Result<string> {
  const bytes = Buffer.from(sealed.slice(FORM.length), "base64url");
  if (!sealed.startsWith(FORM) || bytes.length < NONCE_BYTES + TAG_BYTES) return bad(noteSealed());
  const nonce = bytes.subarray(0, NONCE_BYTES);
  const tag = bytes.subarray(NONCE_BYTES, NONCE_BYTES + TAG_BYTES);
  const decipher = createDecipheriv(CIPHER, key, nonce, { authTagLength: TAG_BYTES })
    .setAAD(owner)
    .setAuthTag(tag);
  try {
    const text = Buffer.concat([decipher.update(bytes.subarray(NONCE_BYTES + TAG_BYTES)), decipher.final()]);
    return good(text.toString("utf8"));
  } catch {
    return bad(noteSealed());
  }
}

function whose(practice: string, person: string): Buffer {
  return Buffer.from(`${practice}\n${person}`);
}

function noteSealed() {
  const says = "This note about health cannot be opened: it was sealed under another key.";
  const next = "Put the key file back that lay beside the data, or ask the person again.";
  return problem("note-sealed", "person", says, next);
}
