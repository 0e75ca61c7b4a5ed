/** The candidate that is fewest changes of letters away, if it is near enough to be meant. */
export function nearest(word: string, candidates: readonly string[]): string | undefined {
  const far = Math.max(2, Math.floor(word.length / 3));
  const measured = candidates.map((candidate) => ({ candidate, changes: changes(word, candidate) }));
  const near = measured.filter((it) => it.changes <= far).sort((a, b) => a.changes - b.changes);
  return near[0]?.candidate;
}

/** Levenshtein's distance: letters put in, taken out or exchanged (V. Levenshtein, 1965). */
function changes(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let index = 0; index < from.length; index += 1) {
    const next = [index + 1];
    for (let at = 0; at < to.length; at += 1) {
      const exchanged = (row[at] ?? 0) + (from[index] === to[at] ? 0 : 1);
      next.push(Math.min(exchanged, (row[at + 1] ?? 0) + 1, (next[at] ?? 0) + 1));
    }
    row = next;
  }
  return row[to.length] ?? 0;
}
