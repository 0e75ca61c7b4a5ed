export { areaBound } from "./area-bound.ts";
export { checkPlaced, type Fault } from "./check-placed.ts";
export { linesByScanning } from "./lines-by-scanning.ts";
export { linesPlan } from "./lines-plan.ts";
export type { Floor, Gaps, Line, LinesOptions, LinesPlan, Piece, Placed } from "./packing-types.ts";
export { rectangleOf } from "./rectangle-of.ts";
export { advanceMost, type MostRun, mostPlan, startMost } from "./most-run.ts";
export type { MostOptions, MostPlan } from "./most-types.ts";
