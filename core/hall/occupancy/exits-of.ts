import type { Hall } from "../hall.ts";
import { waysOut } from "../way/ways-out.ts";

/** A way out: the width that is clear when it stands open, in millimetres. */
export type Exit = { readonly label: string; readonly width: number };

/** Two leaves of one door may be drawn two centimetres apart. */
const MEET = 20;

/**
 * Every door that `waysOut` counts, with the width of its leaf: the clear opening is some
 * centimetres less. Two leaves that meet when they are shut are one exit: two of 0.914 m are 1.828 m.
 */
export function exitsOf({ keepClear }: Pick<Hall, "keepClear">): readonly Exit[] {
  const leaves = waysOut(keepClear).map(({ label, door }) => ({
    label,
    width: apart(door.hinge, door.closed),
    meets: door.closed,
  }));
  const taken = new Set<number>();
  return leaves.flatMap((leaf, index) => {
    if (taken.has(index)) return [];
    const second = leaves.findIndex(
      (other, at) => at > index && !taken.has(at) && apart(leaf.meets, other.meets) <= MEET,
    );
    const other = leaves[second];
    if (other === undefined) return [{ label: leaf.label, width: leaf.width }];
    taken.add(second);
    const label = leaf.label === other.label ? leaf.label : `${leaf.label} and ${other.label}`;
    return [{ label, width: leaf.width + other.width }];
  });
}

function apart(a: readonly [number, number], b: readonly [number, number]): number {
  return Math.round(Math.hypot(a[0] - b[0], a[1] - b[1]));
}
