/** How many guesses are named one by one; more would drown the answer. */
const MOST_NAMED = 4;

/** "Rests on 2 guesses: how many come, what music costs." Of many only the number is told. */
export function guessWords(restsOn: string, guessNames: readonly string[]): string {
  if (guessNames.length === 0 || guessNames.length > MOST_NAMED) return restsOn;
  return `${restsOn.replace(/\.$/, "")}: ${guessNames.join(", ")}.`;
}
