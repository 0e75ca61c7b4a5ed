import type { Point } from "#kernels/geometry";

type Press = { readonly key: string; readonly shiftKey: boolean; readonly altKey: boolean };

/** Picture points that an arrow key moves the cross-hair by, y down: 10, 50 with Shift, 1 with Alt; null for other keys. */
export function arrowPoints({ key, shiftKey, altKey }: Press): Point | null {
  const step = altKey ? 1 : shiftKey ? 50 : 10;
  switch (key) {
    case "ArrowLeft":
      return [-step, 0];
    case "ArrowRight":
      return [step, 0];
    case "ArrowUp":
      return [0, -step];
    case "ArrowDown":
      return [0, step];
    default:
      return null;
  }
}
