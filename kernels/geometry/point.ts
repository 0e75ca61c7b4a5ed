/** [x, y]. Whole millimetres in the frame of the hall; real millimetres in a turned frame. y points up. */
export type Point = readonly [x: number, y: number];

/** Corners in order, either way round, not closed: the last joins the first. */
export type Polygon = readonly Point[];
