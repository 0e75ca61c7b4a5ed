/** ": Badminton, Summer fair, Choir and more." */
export function firstTitles(titles: readonly string[]): string {
  const all = [...new Set(titles)];
  if (all.length === 0) return ".";
  return `: ${all.slice(0, 3).join(", ")}${all.length > 3 ? " and more" : ""}.`;
}
