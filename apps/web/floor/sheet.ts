import type { Sheet } from "./viewport.ts";

/**
 * The sheet for a width in pixels. 48 px of margin hold a dimension 26 px from its wall with a level figure beside
 * it; on a wide screen the drawing stays within 620 px so that the answer and the list are seen with it.
 */
export function sheetFor(width: number): Sheet {
  return { width, maxHeight: width < 500 ? width * 1.6 : 620, margin: width < 500 ? 44 : 52 };
}
