import type { ClassDocument } from "./class-document.ts";

type Guessing = Pick<ClassDocument, "guesses">;

/** A field is a guess while its path, or that of the part it lies in, is listed: "mix" covers "mix.free". */
export function isGuess({ guesses }: Guessing, path: string): boolean {
  return guesses.some((guess) => guess === path || lies(path, guess));
}

/**
 * The document with a field known: what was listed for it, for what lies in it, and for a whole that it
 * is part of, since a whole with a known part has been looked at.
 */
export function markKnown<Document extends Guessing>(document: Document, path: string): Document {
  const guesses = document.guesses.filter((it) => it !== path && !lies(path, it) && !lies(it, path));
  return { ...document, guesses };
}

/** The document with a field marked as a guess, once. */
export function markGuess<Document extends Guessing>(document: Document, path: string): Document {
  return isGuess(document, path) ? document : { ...document, guesses: [...document.guesses, path] };
}

export type Answer = "mats" | "evening cost" | "break-even" | "ordinary evening" | "year";

const cost = [
  "minutes.setUp",
  "minutes.class",
  "minutes.packDown",
  "costs.travel",
  "costs.music",
  "costs.cover",
  "costs.other",
  "hire",
];
const breakEven = [...cost, "prices", "mix", "costs.perHead"];
const paths: Readonly<Record<Answer, readonly string[]>> = {
  mats: ["mats", "matsOwned", "ownCap", "insurerCap"],
  "evening cost": cost,
  "break-even": breakEven,
  "ordinary evening": [...breakEven, "heads", "minutes.travel"],
  year: [...breakEven, "heads", "weekday", "year"],
};

/** The guesses that an answer rests on, in the order in which they are listed. */
export function guessesBehind({ guesses }: Guessing, answer: Answer): readonly string[] {
  return guesses.filter((guess) =>
    paths[answer].some((path) => guess === path || lies(guess, path) || lies(path, guess)),
  );
}

/** "Rests on 4 guesses." or "" when it rests on none. */
export function guessesSentence(count: number): string {
  if (count === 0) return "";
  return count === 1 ? "Rests on 1 guess." : `Rests on ${count} guesses.`;
}

function lies(path: string, within: string): boolean {
  return path.startsWith(`${within}.`) || path.startsWith(`${within}[`);
}
