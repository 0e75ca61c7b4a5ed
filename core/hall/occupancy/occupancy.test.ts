import { aHall } from "#testing";
import { array, assert, integer, property, tuple } from "fast-check";
import { expect, test } from "vitest";
import type { Polygon } from "#kernels/geometry";
import { rectangleAt } from "../floor-shapes.ts";
import { exitsOf } from "./exits-of.ts";
import { freeArea } from "./free-area.ts";
import { occupancy } from "./occupancy.ts";

type Corner = [number, number];

function rectangle(x: number, y: number, width: number, depth: number): Corner[] {
  return rectangleAt([x, y], width, depth).map(([right, up]) => [right, up]);
}

function door(label: string, hinge: number, closed: number) {
  const leaf = Math.abs(closed - hinge);
  return {
    label,
    outline: rectangle(Math.min(hinge, closed), 0, leaf, leaf),
    door: { hinge: [hinge, 0] as Corner, closed: [closed, 0] as Corner, open: [hinge, leaf] as Corner },
  };
}

test("HALL-44: the posted number stands first, with whom it leaves on mats, and the caution says who decides", () => {
  const found = occupancy(aHall({ postedCapacity: 60, peopleNotOnMats: 2 }));
  if (!found.ok) throw new Error("a sound hall");
  expect(found.value.sentences[0]).toBe(
    "The hall’s own limit is 60 people, everybody in the room counted; it leaves 58 people on mats.",
  );
  expect(found.value.posted).toBe(60);
  expect(found.value.caution).toMatch(/never override the hall’s posted number.*fire service decide/);
});

test("HALL-44: a posted number that is not known is asked for, and exits that are not drawn are not guessed", () => {
  const found = occupancy(aHall());
  if (!found.ok) throw new Error("a sound hall");
  expect(found.value.sentences[0]).toMatch(/not known: ask for it/);
  expect(found.value.byExits).toEqual([]);
  expect(found.value.sentences.at(-1)).toBe(
    "No way out is drawn and no exit named, so nothing is said by exit width.",
  );
});

test("HALL-44: every figure says its table and how sure that is", () => {
  const found = occupancy(aHall({ postedCapacity: 60 }), [
    { label: "Front", width: 900 },
    { label: "Side", width: 750 },
  ]);
  if (!found.ok) throw new Error("a sound hall");
  // 96 m² / 4.65 = 20.6; the side door alone is 0.75 m: 60 people; both 110 + 60 = 170
  expect(found.value.sentences.slice(1)).toHaveLength(5 + 2);
  for (const sentence of found.value.sentences.slice(1)) expect(sentence).toMatch(/; .*from memory\)\.$/);
  expect(found.value.sentences[3]).toBe(
    "As a guide by floor space, exercise room: 20 people, 4.65 m² each of 96.0 m² within the walls (International Building Code (United States), 2021, table 1004.5; seen in a public occupant-load sheet, and from memory).",
  );
  expect(found.value.sentences[6]).toBe(
    "As a guide by exit width: 60 people with the widest, “Front”, out of use; 170 through all 2; 0.75 m for 60 people, 0.85 m for 110, 1.05 m for 220, more at 5 mm a person; one exit for 60 at most (Approved Document B, volume 2 (England), 2019, tables 2.2 and 2.3; from memory).",
  );
});

test("HALL-45: two leaves that meet when shut are one exit, and a zone without a leaf is none", () => {
  const keepClear = [
    door("Left leaf", 3.658, 4.572),
    door("Right leaf", 5.486, 4.572),
    { label: "Way out", outline: rectangle(0, 5, 1, 1) },
    door("Kitchen", 7, 7.8),
  ];
  expect(exitsOf(aHall({ keepClear }))).toEqual([
    { label: "Left leaf and Right leaf", width: 1828 },
    { label: "Kitchen", width: 800 },
  ]);
  const found = occupancy(aHall({ keepClear }));
  expect(found.ok && found.value.sentences.at(-1)).toMatch(
    /^Every door that is drawn was taken for a way out/,
  );
});

test("HALL-56: doors marked as ways out are the exits; before any is, those not marked as none; the sentence says which", () => {
  const marked = (wayOut: boolean | undefined, zone: ReturnType<typeof door>) =>
    wayOut === undefined ? zone : { ...zone, door: { ...zone.door, wayOut } };
  const [front, side, kitchen] = [door("Front", 1, 2.8), door("Side", 4, 4.9), door("Kitchen", 7, 7.8)];
  const told = (marks: readonly (boolean | undefined)[]) => {
    const keepClear = [front, side, kitchen].map((zone, index) => marked(marks[index], zone));
    const found = occupancy(aHall({ keepClear }));
    if (!found.ok) throw new Error(JSON.stringify(found.problems));
    return [found.value.exits.map((it) => it.label).join(), found.value.sentences.at(-1)?.split(",")[0]];
  };
  const drawn = "Every door that is drawn was taken for a way out";
  expect(told([undefined, undefined, undefined])).toEqual(["Front,Side,Kitchen", drawn]);
  const left = "Every door that is not marked as no way out was taken for a way out";
  expect(told([undefined, undefined, false])).toEqual(["Front,Side", left]);
  const yes = "The doors that are marked as ways out were taken";
  expect(told([true, undefined, false])).toEqual(["Front", yes]);
  expect(told([false, false, false])).toEqual(["", "No way out is drawn and no exit named"]);
});

test("HALL-45: an exit without a sensible width is told", () => {
  const found = occupancy(aHall(), [
    { label: "Front", width: 900 },
    { label: "Side", width: 0.9 },
    { label: "", width: Number.NaN },
  ]);
  expect(found.ok ? [] : found.problems.map((it) => [it.code, it.place, it.says])).toEqual([
    ["exit-width", "exits[1].width", "The exit “Side” is 0.00 m wide."],
    ["exit-width", "exits[2].width", "Exit 3 has no width."],
  ]);
});

test("HALL-45: the floor that is free leaves out what stands on it once, however it overlaps or reaches outside", () => {
  const room: Polygon = rectangleAt([0, 0], 10, 11);
  // a stage of 10 × 1, a piano half on it (2 × 1 more), a cupboard of which 1 × 3 is in the room
  const shapes = [rectangleAt([0, 10], 10, 1), rectangleAt([4, 9], 2, 2), rectangleAt([-1, 2], 2, 3)];
  expect(freeArea(room, shapes)).toBeCloseTo(110 - 10 - 2 - 3, 9);
  // a slanting shape: the triangle below the diagonal of the room
  const half: Polygon = [
    [0, 0],
    [10, 0],
    [10, 11],
  ];
  expect(freeArea(room, [half])).toBeCloseTo(55, 9);
});

test("HALL-45: the free floor of squares is as many as nothing stands on", () => {
  const box = tuple(
    integer({ min: -3, max: 12 }),
    integer({ min: -3, max: 12 }),
    integer({ min: 1, max: 6 }),
    integer({ min: 1, max: 6 }),
  );
  assert(
    property(array(box, { maxLength: 6 }), integer({ min: 0, max: 359 }), (boxes, degrees) => {
      let squares = 0;
      for (let x = 0; x < 10; x++)
        for (let y = 0; y < 10; y++)
          if (
            !boxes.some(
              ([left, low, wide, deep]) => x >= left && x < left + wide && y >= low && y < low + deep,
            )
          )
            squares++;
      const [cosine, sine] = [Math.cos(degrees), Math.sin(degrees)];
      const turned = (polygon: Polygon): Polygon =>
        polygon.map(([x, y]) => [x * cosine - y * sine, x * sine + y * cosine] as const);
      const shapes = boxes.map(([x, y, wide, deep]) => turned(rectangleAt([x, y], wide, deep)));
      expect(freeArea(turned(rectangleAt([0, 0], 10, 10)), shapes)).toBeCloseTo(squares, 6);
    }),
  );
});
