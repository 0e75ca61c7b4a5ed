export type { Point, Polygon } from "./point.ts";
