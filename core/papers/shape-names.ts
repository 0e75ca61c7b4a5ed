import type { Hall } from "#core/hall";
import type { NamedShapes } from "./hall-sheet-types.ts";

/**
 * Fixtures are a, b … z, aa, ab; doors D1, D2; places for wheelchairs and chairs P1, P2 as the hall numbers them; other
 * zones K1, K2. The way to a place has no name of its own. Corners have capitals and mats have numbers.
 */
export function shapeNames({ fixtures, keepClear }: Pick<Hall, "fixtures" | "keepClear">): NamedShapes {
  const counts = { D: 0, K: 0 };
  return {
    fixtures: fixtures.map((_, index) => smallLetters(index)),
    keepClear: keepClear.map(({ door, place }) => {
      if (place !== undefined) return place.part === "bay" ? `P${place.number}` : "";
      const kind = door === undefined ? "K" : "D";
      counts[kind] += 1;
      return `${kind}${counts[kind]}`;
    }),
  };
}

function smallLetters(index: number): string {
  const letter = "abcdefghijklmnopqrstuvwxyz"[index % 26] ?? "";
  return index < 26 ? letter : smallLetters(Math.floor(index / 26) - 1) + letter;
}
