import { type Polygon, rotateAboutOrigin } from "#kernels/geometry";
import type { Piece, Placed } from "./packing-types.ts";

/** The four corners of a placed rectangle, anticlockwise, grown by a margin along its length and its width. */
export function rectangleOf(placed: Placed, piece: Piece, grownAlong = 0, grownAcross = 0): Polygon {
  const [x, y] = [piece.length / 2 + grownAlong, piece.width / 2 + grownAcross];
  const corners = [
    [-x, -y],
    [x, -y],
    [x, y],
    [-x, y],
  ] as const;
  return corners.map((corner) => {
    const [dx, dy] = rotateAboutOrigin(corner, placed.angle);
    return [placed.centre[0] + dx, placed.centre[1] + dy] as const;
  });
}
