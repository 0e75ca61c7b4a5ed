type Guessed = { readonly guesses: readonly string[] };

/** A document in which a field is marked as a guess, or no longer, once. */
export function withGuess<Document extends Guessed>(
  document: Document,
  path: string,
  guess: boolean,
): Document {
  const others = document.guesses.filter((it) => it !== path);
  return { ...document, guesses: guess ? [...others, path] : others };
}
