import { containsPoint, type Point, type Polygon, polygonDistance } from "#kernels/geometry";
import { checkPlaced } from "#kernels/packing";
import { aHall } from "#testing";
import { expect, test } from "vitest";
import { doorSwing } from "../door-swing.ts";
import { rectangleAt } from "../floor-shapes.ts";
import type { Hall } from "../hall.ts";
import { hallToDocument } from "../hall-to-document.ts";
import { floorToFill, matPlan } from "../mat-plan.ts";
import { readHall } from "../read-hall.ts";
import { clearWay } from "./clear-way.ts";
import { withPlace } from "./with-place.ts";

const bay = { length: 2000, width: 1500 };

/** A door 1 m wide in the middle of the back wall of 8 × 12 m. */
function doored(hall: Hall): Hall {
  const door = doorSwing(hall.outline, { wall: 0, hingeAt: 3500, width: 1000, reaches: "on" });
  return { ...hall, keepClear: [door] };
}

const hall = doored(aHall({ postedCapacity: 60 }));

test("HALL-48: a bay is placed with a way of 0.90 m to the door that no mat lies in, and few mats are lost", () => {
  const plan = matPlan(hall);
  const found = withPlace(hall, bay, plan, matPlan);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  const { hall: changed, plan: after, lost, way, bay: outline, sentence } = found.value;
  expect(plan.count - after.count).toBe(lost);
  // a bay of 3 m² at 1.11 × 2.13 = 2.4 m² a mat touches at most 2 × 3 mats where it stands in nobody’s line
  expect(lost).toBeGreaterThanOrEqual(0);
  expect(lost).toBeLessThanOrEqual(6);
  expect(checkPlaced(floorToFill(changed), changed.mat, changed.gaps, after.mats)).toEqual([]);
  expect(readHall(hallToDocument(changed, {}))).toEqual({ ok: true, value: changed });
  expect(changed.peopleNotOnMats).toBe(2);
  expect(way.length).toBeGreaterThan(0);
  expect(sentence).toMatch(
    /^A place of 2\.00 m by 1\.50 m at the back.*0\.90 m wide to a door: \d+ mats fit/,
  );
  // the way there is a way: a mat that lies in the bay, in a hall with all the others, is not shut off
  const [x, y] = [
    (outline[0]?.[0] ?? 0) + (outline[2]?.[0] ?? 0),
    (outline[0]?.[1] ?? 0) + (outline[2]?.[1] ?? 0),
  ];
  const guest = { centre: [x / 2, y / 2] as const, angle: 0 };
  const clear = clearWay(changed, { mats: [...after.mats, guest] }, 900);
  expect(clear.ok && clear.value.stuck.some((it) => it.mat === after.mats.length)).toBe(false);
});

test("HALL-48: a place is found at every width of its way, however walls and cells fall", () => {
  // 5 × 6 m with a door and no mats: cells are 10 mm, so ten widths 1 mm apart meet every way they can fall
  const small = doored(
    aHall({
      outline: [
        [0, 0],
        [5, 0],
        [5, 6],
        [0, 6],
      ],
    }),
  );
  const bare = { ...matPlan(small), mats: [], count: 0 };
  const widths = Array.from({ length: 10 }, (_, more) => 900 + more);
  const found = widths.filter(
    (wayWidth) => withPlace(small, bay, bare, () => bare, { wayWidth, tries: 1 }).ok,
  );
  expect(found).toEqual(widths);
});

test("HALL-48: the way goes round what stands in it", () => {
  // a screen from the left wall to 1.2 m before the right one; before it chairs leave 1.5 m at the door, 1.1 m along
  // the back wall and 1.2 m along the right one, too little anywhere for the bay
  const screened: Hall = {
    ...hall,
    fixtures: [
      { label: "Screen", outline: rectangleAt([0, 2500], 6800, 100), movable: true },
      { label: "Chairs left", outline: rectangleAt([0, 0], 3300, 2500), movable: true },
      { label: "Chairs right", outline: rectangleAt([4800, 1100], 2000, 1400), movable: true },
    ],
  };
  const found = withPlace(screened, bay, matPlan(screened), matPlan, { tries: 2 });
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  const { way, plan, lost } = found.value;
  for (const there of [
    [5500, 500],
    [7400, 2550],
  ] as const)
    expect(way.some((leg) => containsPoint(leg, there))).toBe(true);
  expect(plan.count).toBe(matPlan(screened).count - lost);
  // no strip comes nearer to a screen than it must: its middle line keeps half a way from each
  for (const { outline } of screened.fixtures)
    for (const leg of way) expect(polygonDistance(middleLine(leg), outline)).toBeGreaterThanOrEqual(449);
});

/** From the middle of one short end to that of the other, drawn in by the 451 mm that the strip reaches past. */
function middleLine(leg: Polygon): Polygon {
  const [a = [0, 0], b = a, c = a, d = a] = leg;
  const [start, end]: [Point, Point] = [
    [(a[0] + d[0]) / 2, (a[1] + d[1]) / 2],
    [(b[0] + c[0]) / 2, (b[1] + c[1]) / 2],
  ];
  const share = 451 / Math.hypot(end[0] - start[0], end[1] - start[1]);
  const at = (from: Point, to: Point): Point => [
    from[0] + (to[0] - from[0]) * share,
    from[1] + (to[1] - from[1]) * share,
  ];
  return [at(start, end), at(end, start)];
}

test("HALL-48: a door behind screens leaves no place, and sizes that make no sense are told", () => {
  const shut: Hall = {
    ...hall,
    fixtures: [{ label: "Screen", outline: rectangleAt([0, 1200], 8000, 100), movable: true }],
  };
  const none = withPlace(shut, bay, matPlan(shut), matPlan);
  expect(none.ok ? [] : none.problems.map((it) => [it.code, it.says])).toEqual([
    ["place-no-room", "There is no place of 2.00 m by 1.50 m with a way 0.90 m wide to a door."],
  ]);
  const odd = withPlace(aHall(), { length: 20, width: Number.NaN }, matPlan(hall), matPlan, { wayWidth: 9 });
  expect(odd.ok ? [] : odd.problems.map((it) => it.code)).toEqual([
    "place-size",
    "place-size",
    "way-width",
    "doors-missing",
  ]);
});
