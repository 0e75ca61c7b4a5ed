import type { Arrangement } from "#core/hall";

/** How the mats stand, after the name of a hall: "Tithe Barn Hall, in rings". */
export const wayWords: Readonly<Record<Arrangement, string>> = {
  lines: "in lines",
  staggered: "staggered",
  facing: "in two banks",
  round: "in rings",
  most: "along and across",
};
