import type { Exit } from "./exits-of.ts";
import type { ExitFigure, FloorSpaceFigure } from "./published-figures.ts";

export type Occupancy = {
  /** from the hall's own notice, everybody in the room; undefined where none is known */
  readonly posted: number | undefined;
  /** square millimetres within the walls */
  readonly grossArea: number;
  /** the same less everything that stands on the floor, movable or not */
  readonly netArea: number;
  readonly bySpace: readonly SpaceOccupancy[];
  readonly byExits: readonly ExitOccupancy[];
  readonly exits: readonly Exit[];
  /** the posted number first, then one for each figure with where it comes from */
  readonly sentences: readonly string[];
  /** said beside every figure, never instead of it */
  readonly caution: string;
};

export type SpaceOccupancy = FloorSpaceFigure & {
  /** whole people, rounded down */
  readonly people: number;
  /** which of the two areas was shared out; the smaller where the table does not say */
  readonly areaUsed: "gross" | "net";
};

export type ExitOccupancy = ExitFigure & { readonly all: number; readonly withoutWidest: number | null };
