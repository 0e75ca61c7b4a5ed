type Mix = Readonly<Record<string, number>>;
type Sized = "pass" | "course";

/*
 * { single: 0.4, "pass-10": 0.6 } with the 10-pass made a 12-pass is { single: 0.4, "pass-12": 0.6 }.
 *
 * Invariant: the shares add to what they added to before.
 */

/**
 * The mix after the sizes of passes or courses have changed: a share follows its pass to another size, a new one
 * begins with nobody, and the people of one that is taken away pay singles.
 */
export function mixAfterSizes(
  mix: Mix,
  kind: Sized,
  before: readonly number[],
  after: readonly number[],
): Record<string, number> {
  const keys = after.map((size) => `${kind}-${size}`);
  const orphans = Object.keys(mix).filter((key) => key.startsWith(`${kind}-`) && !keys.includes(key));
  const without = keys.filter((key) => !(key in mix));
  const moved = new Map(orphans.map((orphan, index) => [orphan, without[index]]));
  // a size that is half typed may be that of another: its share waits under its old name
  const taken = after.length < before.length;
  const next: Record<string, number> = {};
  for (const [key, share] of Object.entries(mix)) {
    const to = moved.has(key) ? (moved.get(key) ?? (taken ? "single" : key)) : key;
    next[to] = (next[to] ?? 0) + share;
  }
  for (const key of keys) next[key] ??= 0;
  return next;
}
