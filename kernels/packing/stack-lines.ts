import type { Strip } from "./strips.ts";

/** One line of a stack: its offset, how many it holds, and the strip that promised it. */
export type StackedLine = { readonly at: number; readonly holds: number; readonly strip: number };
export type Stack = { readonly count: number; readonly lines: readonly StackedLine[] };

/** Two lines may be this much closer (millimetres): what fits exactly on paper must survive adding. */
const TIE = 1e-7;

/**
 * The most rectangles in lines at least `pitch` apart, taking each strip at its word: `most` gives an upper
 * bound, `least` a stack that can be built. reach[n] is the lowest offset at which the last line can lie when
 * n rectangles are placed; whatever the last line holds, the rest lie best as low as they can.
 */
export function stackLines(strips: readonly Strip[], word: "most" | "least", pitch: number): Stack {
  const widest = strips.reduce((held, strip) => Math.max(held, strip[word]), 0);
  const reach: number[] = [-Infinity];
  const resume: number[] = [0];
  const last: StackedLine[] = [];
  for (;;) {
    const line = lowestLast(strips, word, widest, pitch, reach, resume);
    if (line === null) return { count: last.length, lines: unwind(last) };
    last.push(line);
    reach.push(line.at);
    resume.push(firstReaching(strips, line.at + pitch, resume.at(-1) ?? 0));
  }
}

/** Where the last line lies lowest when one more rectangle than so far is to be placed; null when nowhere. */
function lowestLast(
  strips: readonly Strip[],
  word: "most" | "least",
  widest: number,
  pitch: number,
  reach: readonly number[],
  resume: readonly number[],
): StackedLine | null {
  const wanted = reach.length;
  let best: StackedLine | null = null;
  let bestAt = Infinity;
  for (let holds = Math.min(widest, wanted); holds >= 1; holds--) {
    const earliest = reach[wanted - holds]! + pitch;
    if (earliest >= bestAt) break;
    for (let i = resume[wanted - holds]!; i < strips.length && strips[i]!.from < bestAt; i++) {
      if (strips[i]![word] < holds) continue;
      const at = Math.max(strips[i]!.from, Math.min(earliest, strips[i]!.to));
      if (at < bestAt) [best, bestAt] = [{ at, holds, strip: i }, at];
      break;
    }
  }
  return best;
}

function firstReaching(strips: readonly Strip[], offset: number, from: number): number {
  let index = from;
  while (index < strips.length && strips[index]!.to < offset - TIE) index++;
  return index;
}

/** From the last line back: before it came what was placed without what it holds. */
function unwind(last: readonly StackedLine[]): readonly StackedLine[] {
  const lines: StackedLine[] = [];
  for (let n = last.length; n > 0; ) {
    const line = last[n - 1]!;
    lines.push(line);
    n -= line.holds;
  }
  return lines.toReversed();
}
