/** The most places in a ring that are free and at least `apart` steps from each other, going round. */
export function ringOfAngles(free: readonly boolean[], apart: number): readonly number[] {
  const next = nextFree(free);
  let best: readonly number[] = [];
  // some best choice has a first place in the first stretch of `apart` free steps, or nothing is free there
  const start = next[0];
  if (start === undefined || start === Infinity) return best;
  for (let first = start; first < Math.min(free.length, start + apart); first++) {
    if (free[first] !== true) continue;
    const chosen = greedyFrom(first, next, free.length, apart);
    if (chosen.length > best.length) best = chosen;
  }
  return best;
}

export function ringHolds(free: readonly boolean[], apart: number): number {
  return apart <= free.length && free.includes(true) ? ringOfAngles(free, apart).length : 0;
}

/** Per step the first free one from it on, counted past the end of the ring; Infinity when none is. */
function nextFree(free: readonly boolean[]): readonly number[] {
  const size = free.length;
  const next = Array.from({ length: 2 * size }, () => Infinity);
  for (let at = 2 * size - 1; at >= 0; at--)
    next[at] = free[at % size] === true ? at : (next[at + 1] ?? Infinity);
  return next;
}

/** Each place as early as it may follow the one before, as long as the last is far enough from the first. */
function greedyFrom(first: number, next: readonly number[], size: number, apart: number): readonly number[] {
  const chosen = [first];
  for (let at = next[first + apart]; at !== undefined && at <= first + size - apart; at = next[at + apart])
    chosen.push(at);
  return chosen.map((at) => at % size);
}
