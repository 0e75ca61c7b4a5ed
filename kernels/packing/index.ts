export type { Floor, Gaps, Line, LinesPlan, Piece, Placed } from "./packing-types.ts";
