/**
 * A fresh id for a document or an action: 26 letters and figures, 128 random bits.
 * Not crypto.randomUUID, which browsers refuse on a plain http address of the house network.
 */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  let number = 0n;
  for (const byte of bytes) number = number * 256n + BigInt(byte);
  return number.toString(32).padStart(26, "0");
}
