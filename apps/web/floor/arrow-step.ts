import type { Point } from "#kernels/geometry";

export type ArrowPress = { readonly key: string; readonly shiftKey: boolean; readonly altKey: boolean };

/** Millimetres that an arrow key moves by, y up: 1 cm, 10 cm with Shift, 1 m with Alt; null for other keys. */
export function arrowStep({ key, shiftKey, altKey }: ArrowPress): Point | null {
  const size = altKey ? 1000 : shiftKey ? 100 : 10;
  switch (key) {
    case "ArrowLeft":
      return [-size, 0];
    case "ArrowRight":
      return [size, 0];
    case "ArrowUp":
      return [0, size];
    case "ArrowDown":
      return [0, -size];
    default:
      return null;
  }
}
