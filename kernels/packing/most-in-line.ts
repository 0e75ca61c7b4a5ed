/**
 * The most points in [first, last] at least `pitch` apart that avoid the open spans: from the left, each as
 * early as it may stand, which no other choice can beat. Spans come as [from, to] pairs in any order, empty
 * ones with from ≥ to. When `places` is given the points are pushed to it.
 */
export function mostInLine(
  first: number,
  last: number,
  pitch: number,
  spans: Float64Array,
  places?: number[],
): number {
  const sorted = inOrder(first, last, spans);
  let at = sorted.first;
  let count = 0;
  for (let i = 0; i <= sorted.size; i++) {
    const from = i < sorted.size ? order[2 * i]! : Infinity;
    const to = i < sorted.size ? order[2 * i + 1]! : -Infinity;
    if (at > sorted.last) break;
    const limit = from < sorted.last ? from : sorted.last;
    if (at <= limit) {
      const fits = Math.floor((limit - at) / pitch) + 1;
      if (places !== undefined) for (let k = 0; k < fits; k++) places.push(at + k * pitch);
      count += fits;
      at += fits * pitch;
    }
    if (from < at && at < to) at = to;
  }
  return count;
}

/** Shared by calls, which never nest: the spans that matter, by their start. */
let order = new Float64Array(64);
const sorted = { first: 0, last: 0, size: 0 };

/** Sorts what lies between; a span across either end moves that end in. */
function inOrder(first: number, last: number, spans: Float64Array): typeof sorted {
  if (order.length < spans.length) order = new Float64Array(2 * spans.length);
  let size = 0;
  for (let i = 0; i < spans.length; i += 2) {
    const [from, to] = [spans[i]!, spans[i + 1]!];
    if (from >= to || to <= first || from >= last) continue;
    if (from < first) {
      first = to;
      continue;
    }
    if (to > last) {
      last = from;
      continue;
    }
    let hole = 2 * size++;
    while (hole > 0 && order[hole - 2]! > from) {
      order[hole] = order[hole - 2]!;
      order[hole + 1] = order[hole - 1]!;
      hole -= 2;
    }
    order[hole] = from;
    order[hole + 1] = to;
  }
  sorted.first = first;
  sorted.last = last;
  sorted.size = size;
  return sorted;
}
