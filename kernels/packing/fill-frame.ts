import { type Stack, stackLines } from "./stack-lines.ts";
import { cutStrip, type Frame, startStrips, type Strips } from "./strips.ts";

/** A frame being filled: what can be built so far, and what no stack of lines can beat. */
export type Filling = { readonly strips: Strips; lower: Stack; upper: Stack };

/** Doubt within a hundredth of a millimetre: time to try whether the stack of the bound can be built. */
const NEARLY_SURE = 1e-2;

export function startFilling(frame: Frame): Filling {
  const strips = startStrips(frame);
  return { strips, lower: stack(strips, "least"), upper: stack(strips, "most") };
}

/**
 * Cuts the strips that the upper bound rests on until a stack that can be built meets the bound, or the bound
 * falls below what is needed, or the steps run out.
 */
export function fillFrame(filling: Filling, needed: number, steps: number): void {
  const { strips } = filling;
  while (filling.upper.count >= needed && filling.lower.count < filling.upper.count) {
    const doubt = cutDoubtful(strips, filling.upper);
    if (doubt < NEARLY_SURE) buildNearby(strips, filling.upper);
    filling.upper = stack(strips, "most");
    filling.lower = stack(strips, "least");
    if (doubt === 0 || strips.steps >= steps) return;
  }
}

/**
 * Cuts each strip whose promise the stack relies on and that does not hold throughout. Answers how thick the
 * thickest of them was, 0 when none was thick enough to be cut.
 */
function cutDoubtful(strips: Strips, stack: Stack): number {
  let thickest = 0;
  for (const { at, holds, strip: index } of stack.lines.toReversed()) {
    const strip = strips.list[index];
    if (strip === undefined || strip.least >= holds || !cutStrip(strips, index, at)) continue;
    thickest = Math.max(thickest, strip.to - strip.from);
  }
  return thickest;
}

/** Cuts at the offsets that the stack would have if each line moved up past the doubt, as far as that works. */
function buildNearby(strips: Strips, stack: Stack): void {
  let earliest = -Infinity;
  for (const { at, holds } of stack.lines) {
    const built = offsetHolding(strips, Math.max(at, earliest), holds);
    if (built === null) return;
    earliest = built + strips.frame.pitchAcross;
  }
}

/** The offset itself, or the first one a hair above it at which that many fit. */
function offsetHolding(strips: Strips, offset: number, holds: number): number | null {
  cutStrip(strips, indexAt(strips, offset), offset);
  for (let index = indexAt(strips, offset); index < strips.list.length; index++) {
    const strip = strips.list[index];
    if (strip === undefined || strip.from - offset > NEARLY_SURE) return null;
    if (strip.least >= holds) return Math.max(offset, strip.from);
  }
  return null;
}

function indexAt(strips: Strips, offset: number): number {
  return strips.list.findIndex((strip) => strip.to >= offset);
}

function stack(strips: Strips, word: "most" | "least"): Stack {
  return stackLines(strips.list, word, strips.frame.pitchAcross);
}
