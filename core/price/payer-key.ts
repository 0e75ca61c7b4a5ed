export type PayerKey =
  | { readonly kind: "single" }
  | { readonly kind: "concession" }
  | { readonly kind: "free" }
  | { readonly kind: "pass"; readonly classes: number };

/** Reads a key of the mix: "pass-10" is a pass of ten classes; null for anything else. */
export function payerKey(key: string): PayerKey | null {
  if (key === "single" || key === "concession" || key === "free") return { kind: key };
  const pass = /^pass-([1-9]\d{0,2})$/.exec(key);
  return pass === null ? null : { kind: "pass", classes: Number(pass[1]) };
}

/** What a payer is called in a sum: "10-pass", "Single". */
export function payerName(key: string): string {
  const payer = payerKey(key);
  if (payer?.kind === "pass") return `${payer.classes}-pass`;
  return key.charAt(0).toUpperCase() + key.slice(1);
}
