type Mix = Readonly<Record<string, number>>;
type Pass = { readonly classes: number };

/*
 * { single: 0.4, "pass-10": 0.6 } with the 10-pass made a 12-pass is { single: 0.4, "pass-12": 0.6 }.
 *
 * Invariant: the shares add to what they added to before.
 */

/**
 * The mix after the passes have changed: a share follows its pass to another size, a new pass begins with
 * nobody, and the people of a pass that is taken away pay singles.
 */
export function mixAfterPasses(
  mix: Mix,
  before: readonly Pass[],
  after: readonly Pass[],
): Record<string, number> {
  const sizes = after.map((it) => keyOf(it.classes));
  const orphans = Object.keys(mix).filter((key) => key.startsWith("pass-") && !sizes.includes(key));
  const without = sizes.filter((key) => !(key in mix));
  const moved = new Map(orphans.map((orphan, index) => [orphan, without[index]]));
  const next: Record<string, number> = {};
  for (const [key, share] of Object.entries(mix)) {
    const to = moved.has(key) ? (moved.get(key) ?? homeOf(key, before, after)) : key;
    next[to] = (next[to] ?? 0) + share;
  }
  for (const key of sizes) next[key] ??= 0;
  return next;
}

/** A size that is half typed may be that of another pass: its share waits under its old name. */
function homeOf(key: string, before: readonly Pass[], after: readonly Pass[]): string {
  return after.length < before.length ? "single" : key;
}

function keyOf(classes: number): string {
  return `pass-${classes}`;
}
