import type { PaperSize } from "./paper-types.ts";

/** Upright, in millimetres: ISO 216 A4, and 8 1/2 by 11 in. */
export const paperSizes: Readonly<Record<PaperSize, { readonly width: number; readonly height: number }>> = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
};

export const paperNames: Readonly<Record<PaperSize, string>> = { a4: "A4", letter: "Letter" };

/** What printers of a place hold: Letter in the United States, A4 nearly everywhere else. */
export function usualPaper(locale: "en-GB" | "en-US"): PaperSize {
  return locale === "en-US" ? "letter" : "a4";
}
