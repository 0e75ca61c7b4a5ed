import { arrangementRow, arrangedPlan, type Hall, hallFromDocument, hallDocumentSchema } from "#core/hall";
import { expect, test } from "vitest";
import { arrangementFigures } from "./arrangement-figures.ts";

function hallOf(parts: object): Hall {
  const read = hallFromDocument(
    hallDocumentSchema.parse({
      name: "Salt Loft",
      outline: rectangle(0, 8, 12),
      mat: { length: 1.83, width: 0.61 },
      gaps: { side: 0.5, end: 0.3, wall: 0.5 },
      axis: 0,
      ...parts,
    }),
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

function rectangle(from: number, across: number, to: number) {
  return [
    [0, from],
    [across, from],
    [across, to],
    [0, to],
  ];
}

test("a proven plan says so; without a teacher’s place or a door nothing is claimed of sight or ways", () => {
  const hall = hallOf({});
  // 7 × 11 m: files ⌊7.5/1.11⌋ = 6 by ⌊11.3/2.13⌋ = 5 is 30; turned ⌊7.3/2.13⌋ = 3 by ⌊11.5/1.11⌋ = 10 is 30
  expect(arrangementFigures(arrangementRow(hall, arrangedPlan(hall, "lines")), "metric")).toMatchObject({
    name: "In straight lines",
    mats: "30",
    most: "30, proven",
    cannotSee: "not known",
    way: "not known",
  });
});

test("a plan that is not proven says how many more there could be", () => {
  const hall = hallOf({ teacher: { outline: rectangle(9.5, 8, 12) } });
  const row = arrangementRow(hall, { ...arrangedPlan(hall, "lines"), bound: 27, proven: false });
  const figures = arrangementFigures(row, "metric");
  expect([figures.mats, figures.most]).toEqual(["24", "27, 3 more"]);
  expect(figures.cannotSee).toBe(String(row.sight?.hidden.length));
});
