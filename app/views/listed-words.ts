/** "a", "a and b", "a, b and c"; with commas in them "a; b, the second; c" */
export function listedWords(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  // a name like “Tuesday evening, mixed” would fall apart between commas
  if (words.some((word) => word.includes(","))) return words.join("; ");
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
}
