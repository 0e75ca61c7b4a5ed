import { roundPlan } from "#kernels/packing";
import { mustBeAllowed } from "../allowed-lines.ts";
import type { Hall } from "../hall.ts";
import { floorToFill } from "../mat-plan.ts";
import type { ArrangementOptions, RoundMatPlan } from "./arrangement-types.ts";
import { roundCentre } from "./round-centre.ts";
import { ringSentences } from "./ring-sentences.ts";
import { setOutRings } from "./set-out-rings.ts";

/** 1 m from the teacher to the nearest feet: room to sit and to stand up. Common practice, no source. */
export const USUAL_LEAST = 1000;

/**
 * Rings, or arcs of them, around the teacher, everyone with the feet to her: around the centre that the hall has for
 * them, or else that of her zone, or, where there is none, around the most open point of the floor. The centre is moved to whole centimetres from a wall.
 */
export function roundMats(
  hall: Hall,
  {
    centre: wished = hall.ringCentre,
    least = USUAL_LEAST,
  }: Pick<ArrangementOptions, "centre" | "least"> = {},
): RoundMatPlan {
  const from = roundCentre(hall, wished);
  const floor = floorToFill(hall);
  const found = roundPlan(floor, hall.mat, hall.gaps, from.centre, least);
  const { mats, rings } = setOutRings(hall, floor, found, from);
  mustBeAllowed(hall, floor, mats);
  const toTheCentimetre = rings.every((ring) => ring.marks.every((mark) => mark.chord % 10 === 0));
  const figured = { toTheCentimetre, centre: from.setOut, rings };
  const { count, bound, proven } = found;
  const ringSetOut = { ...figured, sentences: ringSentences(figured, "metric") };
  return { arrangement: "round", count, bound, proven, mats, ringSetOut, centre: from.centre };
}
