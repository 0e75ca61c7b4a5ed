import type { CostHeading, Heading, Means } from "#core/books";
import { type Locale, word } from "#core/words";

/** What money is taken for, as a heading. */
export function headingWords(heading: Heading): string {
  return headings[heading];
}

const headings: Readonly<Record<Heading, string>> = {
  single: "single places",
  concession: "concession places",
  pass: "passes",
  block: "blocks",
  workshop: "workshops",
  private: "private teaching",
  studio: "classes for studios",
  other: "other income",
};

/** One of it, for a line by itself. */
export function oneWords(heading: Heading): string {
  return ones[heading];
}

const ones: Readonly<Record<Heading, string>> = {
  single: "single place",
  concession: "concession place",
  pass: "pass",
  block: "block",
  workshop: "workshop",
  private: "private teaching",
  studio: "class for a studio",
  other: "other income",
};

/** What money is spent on, as a heading. */
export function costWords(heading: CostHeading, locale: Locale): string {
  if (heading === "hall") return `hall ${word("hire", locale)}`;
  return heading === "cover" ? word("cover", locale) : costs[heading];
}

const costs: Readonly<Record<Exclude<CostHeading, "hall" | "cover">, string>> = {
  travel: "travel",
  music: "music",
  insurance: "insurance",
  kit: "mats and kit",
  training: "training",
  fees: "fees",
  other: "other costs",
};

/** Where money lies. */
export function meansWords(means: Means): string {
  return means === "cash" ? "in the cash box" : means === "card" ? "on its way from cards" : "in the bank";
}

/** "tithe-barn" as "tithe barn", for what the record has no name for. */
export function plainId(id: string): string {
  return id.replaceAll(/[-.]+/g, " ");
}
