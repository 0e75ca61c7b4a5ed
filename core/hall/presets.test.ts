import { expect, test } from "vitest";
import { gapPresetNames, gapPresets, matPresetNames, matPresetOf, matPresets, presetOf } from "./presets.ts";

test("HALL-14: the usual gaps are half a metre beside, 0.30 m between head and foot, half a metre from walls", () => {
  expect(gapPresets.usual).toEqual({ side: 500, end: 300, wall: 500 });
});

test("HALL-14: every named gap and mat is known again by its numbers", () => {
  for (const name of gapPresetNames) expect(presetOf(gapPresets[name])).toBe(name);
  for (const name of matPresetNames) expect(matPresetOf(matPresets[name])).toBe(name);
});

test("HALL-14: gaps and mats of her own have no name", () => {
  expect(presetOf({ ...gapPresets.usual, wall: gapPresets.usual.end })).toBeUndefined();
  expect(matPresetOf({ ...matPresets.long, width: matPresets.standard.width })).toBeUndefined();
});
