// Common practice, no source: how many mats whole halls take with the usual gaps (0.50 m beside, 0.30 m between head
// and foot), half a metre from the side walls, 2.50 m in front for the teacher and 0.90 m at the back for the way out;
// counted by hand on a grid, the better of the two ways that mats can lie. 3.5 to 5.5 m² of hall a mat.
import { expect, test } from "vitest";
import { type HallDocumentInput, matPlan, readHall } from "#core/hall";

function strip(width: number, from: number, to: number): [number, number][] {
  return [
    [0, from],
    [width, from],
    [width, to],
    [0, to],
  ];
}

function hallOf(width: number, depth: number): HallDocumentInput {
  return {
    name: `${width} × ${depth} m`,
    outline: strip(width, 0, depth),
    keepClear: [{ label: "Way out", outline: strip(width, 0, 0.9) }],
    teacher: { outline: strip(width, depth - 2.5, depth) },
    mat: { length: 1.83, width: 0.61 },
    gaps: { side: 0.5, end: 0.3, wall: 0.5 },
  };
}

test.each([
  // turned: ⌊(5.0 + 0.3) / 2.13⌋ = 2 by ⌊(5.6 + 0.5) / 1.11⌋ = 5
  [6, 9, 10],
  // turned: ⌊(6.5 + 0.3) / 2.13⌋ = 3 by ⌊(7.6 + 0.5) / 1.11⌋ = 7
  [7.5, 11, 21],
  // ⌊(7.0 + 0.5) / 1.11⌋ = 6 by ⌊(8.6 + 0.3) / 2.13⌋ = 4
  [8, 12, 24],
  // ⌊(8.0 + 0.5) / 1.11⌋ = 7 by ⌊(11.6 + 0.3) / 2.13⌋ = 5
  [9, 15, 35],
])("a hall of %d by %d m takes %d mats, at 3.5 to 5.5 m² of hall each", (width, depth, mats) => {
  const hall = readHall(hallOf(width, depth));
  if (!hall.ok) throw new Error(JSON.stringify(hall.problems));
  const { count, proven } = matPlan(hall.value);
  expect([count, proven]).toEqual([mats, true]);
  expect((width * depth) / count).toBeGreaterThan(3.5);
  expect((width * depth) / count).toBeLessThan(5.5);
});
