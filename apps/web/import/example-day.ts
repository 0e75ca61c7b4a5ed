import type { Locale } from "#core/words";

/** 15 September 2026 as it is mostly written by hand. */
export function exampleDay(locale: Locale): string {
  return locale === "en-US" ? "9/15/2026" : "15/9/2026";
}
