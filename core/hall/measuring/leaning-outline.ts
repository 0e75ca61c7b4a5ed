import { crossesItself } from "#kernels/geometry";
import { type FittedOutline, fitOutline } from "./fit-outline.ts";
import { standsOut } from "./likely-wrong.ts";
import { predicted, residual } from "./measure-of.ts";
import type { Measure } from "./measured-walls.ts";

/** The hall if no length is wrong and its corners are not the angles that were taken. */
export type LeaningOutline = {
  readonly fitted: FittedOutline;
  /** by how many degrees the corner that is furthest off is off */
  readonly degrees: number;
};

/** As sure as a turn of which hardly anything is known: 10°, in radians. */
const LOOSE = Math.PI / 18;

/** The outline that fits the lengths with turns hardly counted; undefined where some length stands out even so. */
export function leaningOutline(
  measures: readonly Measure[],
  first: FittedOutline,
): LeaningOutline | undefined {
  if (!measures.some(isToldTurn)) return undefined;
  const loose = measures.map((it) => (isToldTurn(it) ? { ...it, error: LOOSE } : it));
  const fitted = fitOutline(loose, first.outline);
  if (fitted === undefined || standsOut(loose, fitted) || crossesItself(fitted.outline) !== null)
    return undefined;
  const off = loose
    .filter(isToldTurn)
    .map((it) => Math.abs(residual(it, predicted(fitted.outline, it).value)));
  return { fitted, degrees: Math.round((Math.max(...off) * 1800) / Math.PI) / 10 };
}

function isToldTurn({ kind, told }: Measure): boolean {
  return kind === "turn" && told;
}
