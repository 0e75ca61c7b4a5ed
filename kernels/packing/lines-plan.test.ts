import { describe, expect, it } from "vitest";
import { checkPlaced, type Floor, linesByScanning, linesPlan } from "./index.ts";

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

describe("linesPlan on awkward floors", () => {
  const tee: Floor["outline"] = [
    [0, 400],
    [900, 400],
    [900, 0],
    [1300, 0],
    [1300, 200],
    [1600, 200],
    [1600, 700],
    [1300, 700],
    [1300, 1400],
    [900, 1400],
    [900, 800],
    [400, 800],
    [400, 1300],
    [0, 1300],
  ];
  const zone = [
    [1200, 400],
    [1500, 400],
    [1500, 600],
    [1200, 600],
  ] as const;
  const [square, apart] = [
    { length: 200, width: 200 },
    { side: 200, end: 0, wall: 0 },
  ];

  it("gives wings lines of their own where that gains a place", () => {
    // a scan of every unparted plan finds 14
    const floor = { outline: tee, fixtures: [], keepClear: [zone] };
    const plan = planned(floor, square, apart);
    expect(linesByScanning(floor, square, apart, [0], 100)).toBe(14);
    expect(plan).toMatchObject({ count: 15, wings: 2, proven: true });
  });

  it("holds nothing on a floor that is all zone, and says that this is proven", () => {
    const outline = rectangle(6000, 6000);
    expect(planned({ outline, fixtures: [], keepClear: [outline] })).toMatchObject({
      count: 0,
      proven: true,
    });
    expect(planned({ outline, fixtures: [outline], keepClear: [] })).toMatchObject({
      count: 0,
      proven: true,
    });
  });

  it("takes fixtures that are slivers, touch, overlap or stick out of the floor", () => {
    const outline = rectangle(8000, 12000);
    const sliver = [
      [3700, 3000],
      [3700, 9000],
      [3700, 6000],
    ] as const;
    const level = [
      [3000, 6000],
      [5000, 6000],
    ] as const;
    const out = rectangle(1000, 1000).map(([x, y]) => [x - 500, y - 500] as const);
    for (const fixtures of [[sliver], [level], [out], [out, out, sliver, level]])
      expect(planned({ outline, fixtures, keepClear: [] }).count).toBeLessThanOrEqual(30);
    // beside the sliver 3700 - 500 - 500 = 2700 takes 2 columns of 610 + 500 and 8000 - 4200 - 500 = 3300 takes 3
    expect(planned({ outline, fixtures: [sliver], keepClear: [] }).count).toBeLessThan(30);
  });

  it("holds nothing on a floor without area", () => {
    const flat = [
      [0, 0],
      [9000, 0],
      [4000, 0],
    ] as const;
    expect(linesPlan({ outline: flat, fixtures: [], keepClear: [] }, mat, usual, "auto").count).toBe(0);
    expect(linesPlan({ outline: [], fixtures: [], keepClear: [] }, mat, usual, [30]).count).toBe(0);
  });

  it("says that a drum of five hundred walls is not proven when the steps run out", () => {
    const outline = Array.from({ length: 500 }, (_, index) => {
      const turn = (index * Math.PI) / 250;
      return [Math.round(7000 * Math.cos(turn)), Math.round(7000 * Math.sin(turn))] as const;
    });
    const plan = planned({ outline, fixtures: [], keepClear: [] });
    // 50 or more on one axis alone; the area bound: some 154 m² at 2.331 m² each
    expect(plan.count).toBeGreaterThanOrEqual(50);
    expect(plan.proven).toBe(false);
    expect(plan.bound).toBeGreaterThan(plan.count);
  });

  it("throws on a rectangle without a size and on a gap below nothing", () => {
    const floor = { outline: rectangle(8000, 12000), fixtures: [], keepClear: [] };
    expect(() => linesPlan(floor, { length: 0, width: 610 }, usual, [0])).toThrow(RangeError);
    expect(() => linesPlan(floor, { length: Number.NaN, width: 610 }, usual, [0])).toThrow(RangeError);
    expect(() => linesPlan(floor, mat, { ...usual, wall: -1 }, [0])).toThrow(RangeError);
  });
});

describe("the places of a plan", () => {
  it("lie on whole centimetres and share the room that is left", () => {
    // across 6 × 610 + 5 × 500 = 6160 of 7000: 840 left, 420 to each side: 500 + 420 = 920
    // along 5 × 1800 + 4 × 300 = 10200 of 11000: 800 left, shared by 6 is 130: 500 + 130 = 630, then 2230 apart
    const plan = planned({ outline: rectangle(8000, 12000), fixtures: [], keepClear: [] });
    expect(plan).toMatchObject({ grid: 10, direction: 0, along: "width" });
    expect(plan.lines.map((line) => line.offset)).toEqual([630, 2860, 5090, 7320, 9550]);
    expect(plan.lines[0]?.starts).toEqual([920, 2030, 3140, 4250, 5360, 6470]);
    expect(plan.lines[0]?.pieces[0]).toEqual({ centre: [920 + 305, 630 + 900], angle: 90 });
  });

  it("lie on whole millimetres, or where they must, when a centimetre would cost a place", () => {
    // 2 × 500 + 6 × 610 + 5 × 503 = 7175 wide with gaps of 503: only starts at 500, 1613, 2726, … fit
    const plan = planned({ outline: rectangle(7175, 2900), fixtures: [], keepClear: [] }, mat, {
      side: 503,
      end: 300,
      wall: 500,
    });
    expect(plan).toMatchObject({ count: 6, grid: 1 });
    expect(plan.lines[0]?.starts.slice(0, 3)).toEqual([500, 1613, 2726]);
  });
});
