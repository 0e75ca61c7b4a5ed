export type PayerKey =
  | { readonly kind: "single" | "concession" | "free" | "pay-what-you-can" | "monthly" }
  | { readonly kind: "pass"; readonly classes: number }
  | { readonly kind: "course"; readonly sessions: number };

export type PayerKind = PayerKey["kind"];

/** Reads a key of the mix: "pass-10" is a pass of ten classes, "course-6" a block of six; null for anything else. */
export function payerKey(key: string): PayerKey | null {
  switch (key) {
    case "single":
    case "concession":
    case "free":
    case "pay-what-you-can":
    case "monthly":
      return { kind: key };
  }
  const sized = /^(pass|course)-([1-9]\d{0,2})$/.exec(key);
  if (sized === null) return null;
  const size = Number(sized[2]);
  return sized[1] === "pass" ? { kind: "pass", classes: size } : { kind: "course", sessions: size };
}

/** What a payer is called in a sum: "10-pass", "Course of 6", "Single". */
export function payerName(key: string): string {
  const payer = payerKey(key);
  if (payer?.kind === "pass") return `${payer.classes}-pass`;
  if (payer?.kind === "course") return `Course of ${payer.sessions}`;
  const words = key.replaceAll("-", " ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** Within a sentence: "a 10-pass", "a course of 6", "pay what you can", "the monthly payment", "a single". */
export function payerInWords(key: string): string {
  const payer = payerKey(key);
  if (payer?.kind === "pay-what-you-can") return "pay what you can";
  if (payer?.kind === "monthly") return "the monthly payment";
  return `a ${payerName(key).toLowerCase()}`;
}
