/** People in an order that no language and no machine changes, and that says nothing about them. */
export function byName(one: { readonly person: string }, other: { readonly person: string }): number {
  const [a, b] = [one.person.toLowerCase(), other.person.toLowerCase()];
  if (a !== b) return a < b ? -1 : 1;
  return one.person < other.person ? -1 : 1;
}
