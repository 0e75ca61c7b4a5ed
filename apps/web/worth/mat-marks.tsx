import type { Mat, PlacedMat } from "#core/hall";
import { matCorners } from "../floor/mat-corners.ts";
import { toPaper, type Viewport } from "../floor/viewport.ts";

type Props = {
  readonly mat: Mat;
  readonly mats: readonly PlacedMat[];
  /** which mats, by index in the plan */
  readonly marked: readonly number[];
  readonly view: Viewport;
};

/** A cross from corner to corner of each mat named: seen in grey as well as in colour. */
export function CrossedMats({ mat, mats, marked, view }: Props) {
  return <path className="mat-cross" d={eachMat({ mat, mats, marked, view }, crossOf)} />;
}

/** The mats named filled with ink. */
export function InkedMats({ mat, mats, marked, view }: Props) {
  return <path className="mat-inked" d={eachMat({ mat, mats, marked, view }, areaOf)} />;
}

function eachMat({ mat, mats, marked, view }: Props, drawn: (corners: readonly string[]) => string): string {
  return marked
    .flatMap((index) => {
      const placed = mats[index];
      return placed === undefined ? [] : [drawn(matCorners(mat, placed).map((it) => onPaper(view, it)))];
    })
    .join("");
}

function crossOf([a = "", b = "", c = "", d = ""]: readonly string[]): string {
  return `M${a}L${c}M${b}L${d}`;
}

function areaOf([a = "", b = "", c = "", d = ""]: readonly string[]): string {
  return `M${a}L${b}L${c}L${d}Z`;
}

export function onPaper(view: Viewport, point: readonly [number, number]): string {
  const [x, y] = toPaper(view, point);
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}
