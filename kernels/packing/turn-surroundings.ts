import { type Bounds, boundsOf, type Polygon, rotatePolygon } from "#kernels/geometry";
import { type Obstacles, obstaclesInFrame, type Surroundings } from "./obstacles.ts";

/** Surroundings turned so that lines of one direction run along x: the same for both ways the rectangles lie. */
export type TurnedSurroundings = {
  readonly hull: Polygon;
  readonly bounds: Bounds;
  readonly obstacles: Obstacles;
  /** the boxes of pockets, fixtures and zones before they are cut into obstacles */
  readonly shapes: readonly Bounds[];
};

export function turnSurroundings(surroundings: Surroundings, direction: number): TurnedSurroundings {
  const hull = rotatePolygon(surroundings.hull, -direction);
  return {
    hull,
    bounds: boundsOf(hull),
    obstacles: obstaclesInFrame(surroundings.obstacles, direction),
    shapes: surroundings.shapes.map((shape) => boundsOf(rotatePolygon(shape, -direction))),
  };
}
