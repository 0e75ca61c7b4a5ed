import { type Point, type Polygon } from "#kernels/geometry";
import { cornerAt } from "./floor-corners.ts";
import { outwardOf } from "./floor-walls.ts";
import type { KeepClear } from "./hall.ts";
import { added, direction, scaled } from "./vectors.ts";

/** A door in a wall that opens into the hall. Millimetres. */
export type Door = {
  /** the wall that leaves this corner */
  readonly wall: number;
  /** from that corner to the hinge */
  readonly hingeAt: number;
  /** of the leaf */
  readonly width: number;
  /** where the shut leaf reaches from its hinge: on along the wall, or back towards the corner */
  readonly reaches: "on" | "back";
  readonly label?: string;
  /** whether it is a way out in an emergency, as far as anybody has said */
  readonly wayOut?: boolean;
};

/** Six flat sides stand at most 1 % of the width outside the true quarter circle: 9 mm for a door of 0.90 m. */
const SIDES = 6;
/**
 * Hinge, leaf and corners are each rounded to the millimetre, up to 0.7 mm off: the leaf's tip by up to 1.3 mm,
 * a side of the zone by 0.7 mm. With 1 mm a door of 793 mm in a slanting wall swept outside its zone.
 */
const ROUNDING = 3;

/**
 * The quarter circle that the leaf sweeps, as a zone to keep clear, with the leaf beside it for the drawing. The
 * zone is drawn round the circle from outside, so that it covers all of it.
 */
export function doorSwing(outline: Polygon, door: Door): KeepClear {
  const from = cornerAt(outline, door.wall);
  const wallWay = direction(from, cornerAt(outline, (door.wall + 1) % outline.length));
  const shut = scaled(wallWay, door.reaches === "on" ? 1 : -1);
  const inward = scaled(outwardOf(outline, door.wall), -1);
  const hinge = added(from, scaled(wallWay, door.hingeAt));
  const at = (degrees: number, reach: number): Point =>
    whole(added(hinge, turned(shut, inward, degrees, reach)));
  const zone = [whole(hinge), ...sweep(door.width).map(({ degrees, reach }) => at(degrees, reach))];
  const leaf = { hinge: whole(hinge), closed: at(0, door.width), open: at(90, door.width) };
  const said = door.wayOut === undefined ? leaf : { ...leaf, wayOut: door.wayOut };
  return { label: door.label ?? "Door", outline: zone, door: said };
}

/** The corners of the sides that touch the circle, from the shut leaf (0°) to the open one (90°). */
function sweep(width: number): readonly { degrees: number; reach: number }[] {
  const step = 90 / SIDES;
  const radius = width + ROUNDING;
  const outer = radius / Math.cos((step / 2) * (Math.PI / 180));
  const middle = Array.from({ length: SIDES }, (_, side) => ({ degrees: (side + 0.5) * step, reach: outer }));
  return [{ degrees: 0, reach: radius }, ...middle, { degrees: 90, reach: radius }];
}

function turned(shut: Point, inward: Point, degrees: number, reach: number): Point {
  const radians = (degrees * Math.PI) / 180;
  return added(scaled(shut, reach * Math.cos(radians)), scaled(inward, reach * Math.sin(radians)));
}

function whole([x, y]: Point): Point {
  return [Math.round(x) + 0, Math.round(y) + 0];
}
