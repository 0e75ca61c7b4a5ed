import type { Point } from "#kernels/geometry";
import type { Viewport } from "../floor/viewport.ts";
import { onPaper } from "./mat-marks.tsx";

type Props = {
  readonly lines: readonly (readonly Point[])[];
  /** millimetres */
  readonly width: number;
  readonly view: Viewport;
};

/** The ways to the doors as bands of their width with a broken line along the middle, under the mats. */
export function WaysDrawing({ lines, width, view }: Props) {
  // ways share their last part with many others: one path each for all bands and all lines
  const drawn = lines
    .filter((line) => line.length > 1)
    .map((line) => `M${line.map((point) => onPaper(view, point)).join("L")}`)
    .join("");
  return (
    <g className="ways">
      <path className="way-band" d={drawn} strokeWidth={width * view.scale} />
      <path className="way-line" d={drawn} />
    </g>
  );
}
