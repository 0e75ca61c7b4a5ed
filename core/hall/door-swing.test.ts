import { area, containsPoint } from "#kernels/geometry";
import { assert, constantFrom, integer, property } from "fast-check";
import { expect, test } from "vitest";
import { doorSwing } from "./door-swing.ts";
import { rectangleFloor } from "./floor-start.ts";
import { teacherStrip } from "./teacher-strip.ts";

const room = rectangleFloor(8000, 12_000);

test("HALL-27: the leaf hangs at its hinge, shut along the wall and open square into the hall", () => {
  expect(doorSwing(room, { wall: 0, hingeAt: 1000, width: 900, reaches: "on" }).door).toEqual({
    hinge: [1000, 0],
    closed: [1900, 0],
    open: [1000, 900],
  });
  expect(doorSwing(room, { wall: 1, hingeAt: 3000, width: 800, reaches: "back" }).door).toEqual({
    hinge: [8000, 3000],
    closed: [8000, 2200],
    open: [7200, 3000],
  });
});

test("HALL-27: a floor drawn clockwise has its doors inside too", () => {
  const { door } = doorSwing(room.toReversed(), { wall: 0, hingeAt: 1000, width: 900, reaches: "on" });
  // reversed, the first wall runs along the top from [0, 12000] to [8000, 12000]
  expect(door?.open).toEqual([1000, 11_100]);
});

const leaningRoom = [
  [0, 0],
  [9000, 2500],
  [7000, 11_000],
  [-1500, 8000],
] as const;

test("HALL-27: the zone covers all that the leaf sweeps, and less than 3 % more", () => {
  const doors = property(
    constantFrom(room, leaningRoom, leaningRoom.toReversed()),
    integer({ min: 0, max: 3 }),
    integer({ min: 600, max: 1200 }),
    constantFrom("on" as const, "back" as const),
    (outline, wall, width, reaches) => {
      const { outline: zone, door } = doorSwing(outline, { wall, hingeAt: 3000, width, reaches });
      if (door === undefined) throw new Error("no leaf");
      const { hinge, closed, open } = door;
      for (let degrees = 1; degrees < 90; degrees++) {
        const [cosine, sine] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
        const tip = [0, 1].map(
          (axis) =>
            (hinge[axis] ?? 0) +
            ((closed[axis] ?? 0) - (hinge[axis] ?? 0)) * cosine +
            ((open[axis] ?? 0) - (hinge[axis] ?? 0)) * sine,
        );
        expect(containsPoint(zone, [tip[0] ?? 0, tip[1] ?? 0])).toBe(true);
      }
      // a quarter circle has π/4 of the square of its width
      expect(area(zone)).toBeLessThan((Math.PI / 4) * width * width * 1.03);
    },
  );
  // a door of 793 mm in the slanting wall A–B, which once swept outside its zone, is tried first
  assert(doors, { numRuns: 400, examples: [[leaningRoom, 0, 793, "back"]] });
});

test("HALL-27: the teacher's strip lies along its wall, 2.20 m deep unless told", () => {
  expect(teacherStrip(room, 2)).toEqual([
    [8000, 12_000],
    [0, 12_000],
    [0, 9800],
    [8000, 9800],
  ]);
  expect(area(teacherStrip(room, 1, 1500))).toBe(12_000 * 1500);
});
