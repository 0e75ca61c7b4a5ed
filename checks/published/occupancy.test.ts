// How many people published tables give for a floor and its exits, by hand. From memory, to be looked up in the
// edition that holds: Approved Document B (England), volume 2, 2019, tables D1, 2.2 and 2.3; International Building
// Code 2021, table 1004.5 and 1005.3.2; NFPA 101, table 7.3.1.2. Seen: Approved Document B (2006), appendix C, that
// the capacity is the area divided by the floor space factor; the 50 square feet of an exercise room on a public
// occupant-load sheet; a worked reply on a fire-safety forum with 1200 mm for 240 people, 1050 to 1100 mm for 220,
// less for 110, the largest exit discounted.
import { expect, test } from "vitest";
import { type Exit, exitFigures, floorSpaceFigures, occupancy, peopleThrough, readHall } from "#core/hall";

function hallOf(width: number, depth: number, stage: number) {
  const hall = readHall({
    name: "Grange Hall",
    outline: [
      [0, 0],
      [width, 0],
      [width, depth],
      [0, depth],
    ],
    fixtures: [
      {
        label: "Stage",
        outline: [
          [0, depth - stage],
          [width, depth - stage],
          [width, depth],
          [0, depth],
        ],
      },
    ],
    mat: { length: 1.83, width: 0.61 },
    gaps: { side: 0.5, end: 0.3, wall: 0.5 },
    postedCapacity: 60,
  });
  if (!hall.ok) throw new Error(JSON.stringify(hall.problems));
  return hall.value;
}

test("a hall of 9 × 15 m with a stage 3 m deep by floor space", () => {
  const found = occupancy(hallOf(9, 15, 3), []);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  // gross 9 × 15 = 135 m², net 135 − 27 = 108 m²
  expect([found.value.grossArea, found.value.netArea]).toEqual([135e6, 108e6]);
  // 108/0.5 = 216; 108/1.39 = 77.7; 135/4.65 = 29.03; the same two by the other code
  expect(found.value.bySpace.map((it) => it.people)).toEqual([216, 77, 29, 77, 29]);
  // 15 and 50 square feet of 0.09290304 m² are 1.3935 and 4.6452 m²
  expect(floorSpaceFigures.slice(1).map((it) => Math.round(it.squareMetresPerPerson / 0.09290304))).toEqual([
    15, 50, 15, 50,
  ]);
});

const [england, unitedStates] = exitFigures;
if (england === undefined || unitedStates === undefined) throw new Error("two published rules");

function exits(...widths: number[]): readonly Exit[] {
  return widths.map((width, index) => ({ label: `Exit ${index + 1}`, width }));
}

test.each([
  [749, 0],
  [750, 60],
  [849, 60],
  [850, 110],
  [1049, 110],
  [1050, 220],
  // 1100 / 5 = 220
  [1100, 220],
  // 1200 / 5 = 240
  [1200, 240],
  [1203, 240],
])("England: with a wider one discounted, an exit of %d mm is for %d people", (width, people) => {
  expect(peopleThrough(exits(2000, width), england.people).withoutWidest).toBe(people);
});

test("England: exits are counted one by one, three of 850 mm for 330 and without one of them for 220", () => {
  expect(peopleThrough(exits(850, 850, 850), england.people)).toEqual({ all: 330, withoutWidest: 220 });
});

test("England: one exit is for 60 people at most, however wide, and there is none without it", () => {
  expect(peopleThrough(exits(1200), england.people)).toEqual({ all: 60, withoutWidest: null });
});

test("United States: 0.2 inches a person, 36 inches for 180 people, widths added up", () => {
  // 36 in = 914.4 mm, / 5.08 = 180; 36 + 72 in: 540
  expect(peopleThrough(exits(914.4, 1828.8), unitedStates.people)).toEqual({ all: 540, withoutWidest: 180 });
});
