// Example: at 1:100 a wall of 9.14 m is 91.4 mm; on a US paper 1:96 is called "1/8 in to the foot".
// Invariant: only scales that a ruler for drawings has, so that the paper can be measured.
import type { LengthUnits } from "#core/words";

export type DrawingScale = {
  /** millimetres of hall to one of paper */
  readonly ratio: number;
  readonly says: string;
};

const metric = [25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 1500, 2000];

/** How much paper a foot gets, and how many of it there are in a foot. */
const feet: readonly (readonly [paper: string, ratio: number])[] = [
  ["1/2 in", 24],
  ["1/4 in", 48],
  ["3/16 in", 64],
  ["1/8 in", 96],
  ["3/32 in", 128],
  ["1/16 in", 192],
];

/** Beyond 1/16 in to the foot drawings go by feet to the inch. */
const feetToTheInch = [20, 30, 40, 50, 60, 80, 100, 150];

/** Every scale that a sheet may have, the largest drawing first. */
export function drawingScales(units: LengthUnits): readonly DrawingScale[] {
  if (units === "metric") return metric.map((ratio) => ({ ratio, says: `1:${ratio}` }));
  return [
    ...feet.map(([paper, ratio]) => ({ ratio, says: `${paper} to the foot (1:${ratio})` })),
    ...feetToTheInch.map((it) => ({ ratio: it * 12, says: `1 in to ${it} ft (1:${it * 12})` })),
  ];
}
