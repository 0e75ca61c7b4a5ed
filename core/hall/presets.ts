import { type Millimetres, millimetresFromMetres } from "#core/words";
import type { Mat, MatGaps } from "./hall.ts";

/**
 * Named starting values, common practice with no source: mats 0.61 m wide; 0.30 m beside a mat is close, 0.50 m
 * usual, 0.90 m roomy; 0.20, 0.30 and 0.60 m between head and foot; half a metre from the walls.
 * Chairs take 0.90 m at the ends too, so that legs stretch out and a person can walk behind.
 */
export const gapPresets: Readonly<Record<GapPreset, MatGaps>> = {
  close: gaps(0.3, 0.2, 0.5),
  usual: gaps(0.5, 0.3, 0.5),
  roomy: gaps(0.9, 0.6, 0.5),
  chairs: gaps(0.9, 0.9, 0.5),
};

export const matPresets: Readonly<Record<MatPreset, Mat>> = {
  short: mat(1.73, 0.61),
  standard: mat(1.83, 0.61),
  long: mat(2, 0.66),
};

export type GapPreset = "close" | "usual" | "roomy" | "chairs";
export type MatPreset = "short" | "standard" | "long";

export const gapPresetNames: readonly GapPreset[] = ["close", "usual", "roomy", "chairs"];
export const matPresetNames: readonly MatPreset[] = ["short", "standard", "long"];

/** The name of these gaps; undefined for gaps of her own. */
export function presetOf({ side, end, wall }: MatGaps): GapPreset | undefined {
  return gapPresetNames.find((name) => {
    const preset = gapPresets[name];
    return preset.side === side && preset.end === end && preset.wall === wall;
  });
}

/** The name of this mat; undefined for a size of her own. */
export function matPresetOf({ length, width }: Mat): MatPreset | undefined {
  return matPresetNames.find(
    (name) => matPresets[name].length === length && matPresets[name].width === width,
  );
}

function gaps(side: number, end: number, wall: number): MatGaps {
  return { side: metres(side), end: metres(end), wall: metres(wall) };
}

function mat(length: number, width: number): Mat {
  return { length: metres(length), width: metres(width) };
}

function metres(count: number): Millimetres {
  return millimetresFromMetres(count);
}
