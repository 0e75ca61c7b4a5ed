import type { Polygon } from "#kernels/geometry";
import { floorFromWalls } from "../floor-start.ts";
import { type MeasuredWall, turnIsKnown, turnOf } from "./measured-walls.ts";

/** Turns in degrees and the floor that they make: from where a fit may begin. */
export type FirstWalk = { readonly turns: readonly number[]; readonly outline: Polygon };

/** Degrees by which two untold turns are changed against one another for another beginning. */
const VARIED = 50;
const MOST_WALKS = 9;

/**
 * Beginnings for the fit. Where every turn is told there is one. Untold turns share what is missing from once round,
 * and then are varied in pairs, because a fit that begins too far away may settle in a floor that crosses itself.
 */
export function firstWalks(walls: readonly MeasuredWall[]): readonly FirstWalk[] {
  const untold = [...walls.keys()].filter((index) => {
    const wall = walls[index];
    return wall !== undefined && !turnIsKnown(wall);
  });
  const shared = sharedTurns(walls, untold.length);
  const pairs = untold.flatMap((one, place) => {
    const other = untold[(place + 1) % untold.length];
    return other === undefined || other === one ? [] : [[one, other] as const, [other, one] as const];
  });
  const varied = pairs.map(([more, less]) =>
    shared.map((turn, index) =>
      index === more ? held(turn + VARIED, turn) : index === less ? held(turn - VARIED, turn) : turn,
    ),
  );
  return [shared, ...varied].slice(0, MOST_WALKS).map((turns) => walkOf(walls, turns));
}

function sharedTurns(walls: readonly MeasuredWall[], untold: number): readonly number[] {
  const sum = walls.reduce((total, wall) => total + turnOf(wall), 0);
  const missing = (sum >= 0 ? 360 : -360) - sum;
  return walls.map((wall) =>
    turnIsKnown(wall) ? turnOf(wall) : held(turnOf(wall) + missing / untold, turnOf(wall)),
  );
}

/** To the same side, and neither straight on nor straight back. */
function held(turn: number, side: number): number {
  return Math.sign(side || 1) * Math.min(175, Math.max(5, turn * Math.sign(side || 1)));
}

function walkOf(walls: readonly MeasuredWall[], turns: readonly number[]): FirstWalk {
  const walked = floorFromWalls(walls.map(({ length }, index) => ({ length, turn: turns[index] ?? 90 })));
  return { turns, outline: walked.outline };
}
