import type { PassUse, PassState } from "#core/books";
import type { Locale } from "#core/words";
import { dateWords } from "../words/dates.ts";
import type { Classes } from "./pass-dates.ts";

/** The dates on which classes were taken off, in order, each with its class and why. */
export function usedWords(
  { used }: PassState,
  classes: Classes,
  locale: Locale,
): readonly { readonly key: string; readonly words: string }[] {
  if (used.length === 0) return [{ key: "none", words: "Not used yet." }];
  const names = new Map(classes.map(({ id, document }) => [id, document.name]));
  return [...used]
    .sort((one, other) => (one.on < other.on ? -1 : Number(one.on > other.on)))
    .map((use) => ({
      key: use.session,
      words: `${dateWords(use.on, locale)}: ${names.get(use.class) ?? use.class}${whyWords(use)}`,
    }));
}

function whyWords({ why }: PassUse): string {
  switch (why) {
    case "attended":
      return "";
    case "late":
      return ", given up too late";
    case "not-come":
      return ", did not come";
  }
}
