import { describe, expect, it } from "vitest";
import { checkPlaced, type Floor, linesPlan } from "./index.ts";

const usual = { side: 500, end: 300, wall: 500 };
const mat = { length: 1800, width: 610 };

function rectangle(width: number, depth: number): Floor["outline"] {
  return [
    [0, 0],
    [width, 0],
    [width, depth],
    [0, depth],
  ];
}

function planned(floor: Floor, piece = mat, gaps = usual) {
  const plan = linesPlan(floor, piece, gaps, "auto");
  const placed = plan.lines.flatMap((line) => line.pieces);
  expect(checkPlaced(floor, piece, gaps, placed)).toEqual([]);
  expect(placed).toHaveLength(plan.count);
  return plan;
}

describe("linesPlan", () => {
  it("fills a rectangle with the product of what fits across and along", () => {
    // 7000 across: (7000 + 500) / 1110 = 6; 11000 along: (11000 + 300) / 2100 = 5; turned 3 × 10
    const plan = planned({ outline: rectangle(8000, 12000), fixtures: [], keepClear: [] });
    expect(plan).toMatchObject({ count: 30, bound: 30, proven: true });
  });

  it("keeps an exact fit when the hall is turned by 37 degrees", () => {
    // 2 × 500 + 3 × 610 + 2 × 500 = 3830 across; 2 × 500 + 2 × 1800 + 300 = 4900 along
    const radians = (37 * Math.PI) / 180;
    const [cosine, sine] = [Math.cos(radians), Math.sin(radians)];
    const outline = rectangle(3830, 4900).map(
      ([x, y]) => [x * cosine - y * sine, x * sine + y * cosine] as const,
    );
    expect(planned({ outline, fixtures: [], keepClear: [] })).toMatchObject({ count: 6, proven: true });
  });

  it("holds nothing where the rectangle is larger than the floor", () => {
    expect(planned({ outline: rectangle(1000, 1000), fixtures: [], keepClear: [] })).toMatchObject({
      count: 0,
      bound: 0,
      proven: true,
    });
  });

  it("splits its lines round a pillar", () => {
    // a 12 × 3 floor without gaps takes 12 upright 1 × 3; a 1 × 1 pillar at x 4..5 costs the one it stands on
    const pillar = [
      [4, 1],
      [5, 1],
      [5, 2],
      [4, 2],
    ] as const;
    const floor = { outline: rectangle(12, 3), fixtures: [pillar], keepClear: [] };
    expect(planned(floor, { length: 3, width: 1 }, { side: 0, end: 0, wall: 0 }).count).toBe(11);
  });
});
