import type { Hall } from "../hall.ts";
import type { HallFrame } from "../hall-frame.ts";
import { stringBetween } from "../line-string.ts";
import { nearestEdge } from "../mat-extents.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { dot } from "../vectors.ts";
import type { TapeFigure, TapeFrame } from "./measure-place.ts";
import type { NamedString, PlaceGroup } from "./places-set-out-types.ts";

/** A thousandth of a millimetre: what turns and sums leave. */
const HAIR = 1e-3;

/** The strings that some mat is measured from, each from wall to wall past the mat that it touches. */
export function stretchedStrings(
  hall: Hall,
  frame: HallFrame,
  { along, away }: TapeFrame,
  mats: readonly PlacedMat[],
  used: ReadonlySet<TapeFigure["from"]>,
): readonly NamedString[] {
  return [away, along].flatMap(({ way, across, string, name }) => {
    if (!used.has(name)) return [];
    const nearest = mats.find((mat) => nearestEdge(hall.mat, [mat], way, across) < string + HAIR);
    const at = dot(nearest?.centre ?? [0, 0], across);
    const ends = stringBetween(hall, frame, { away: way, along: across }, string, at, at);
    if (ends === null) throw new RangeError(`a string between no walls: ${string}`);
    return [{ name, ...ends }];
  });
}

/** One string alone needs no number. */
export function plainlyNamed(
  strings: readonly NamedString[],
  groups: readonly PlaceGroup[],
): { readonly strings: readonly NamedString[]; readonly groups: readonly PlaceGroup[] } {
  const [only, ...more] = strings;
  if (only === undefined || more.length > 0) return { strings, groups };
  const name = "the string";
  const plain = (from: string): string => (from === only.name ? name : from);
  return {
    strings: [{ ...only, name }],
    groups: groups.map((it) => ({ ...it, outFrom: plain(it.outFrom), alongFrom: plain(it.alongFrom) })),
  };
}
