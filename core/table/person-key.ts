/**
 * The same person however her name was typed: "Nell  Arkwright " and "nell arkwright" are one, with the letters
 * of composed and decomposed accents alike. Two people of the same name are one too, and nothing here can tell.
 */
export function personKey(written: string): string {
  return written.normalize("NFKC").replaceAll(/\s+/g, " ").trim().toLowerCase();
}
