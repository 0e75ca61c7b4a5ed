import { describe, expect, it } from "vitest";
import {
  addFixture,
  addKeepClear,
  doorSwing,
  floorDraft,
  gapPresets,
  matPresets,
  rectangleAt,
  rectangleFloor,
} from "#core/hall";
import type { FloorPart } from "./floor-part.ts";
import { dragged, handleKey, nudged } from "./handle.ts";
import { handleName } from "./handle-name.ts";
import { handleReadout, isThere } from "./handle-readout.ts";

const floor = { kind: "floor" } as const;
const room: FloorPart = {
  ...floorDraft(rectangleFloor(8000, 12_000)),
  mat: matPresets.standard,
  gaps: gapPresets.usual,
  axis: "auto",
};

describe("dragged", () => {
  it("puts a corner on the centimetre nearest to where it was drawn", () => {
    // 8000 + 113 = 8113 → 8110; 0 − 67 → −70
    const part = dragged(room, { kind: "corner", shape: floor, corner: 1 }, [113, -67]);
    expect(part.outline[1]).toEqual([8110, -70]);
  });

  it("keeps a corner in line with its neighbours under a trembling hand", () => {
    // 12000 + 60 is within 100 of corner D at 12000
    const part = dragged(room, { kind: "corner", shape: floor, corner: 2 }, [700, 60], 100);
    expect(part.outline[2]).toEqual([8700, 12_000]);
  });

  it("moves a wall only out or in, however the pointer strays along it", () => {
    const part = dragged(room, { kind: "wall", shape: floor, wall: 1 }, [500, 3000]);
    expect(part.outline).toEqual(rectangleFloor(8500, 12_000));
  });

  it("takes the doors of a wall along with it", () => {
    const withDoor = {
      ...room,
      ...addKeepClear(room, doorSwing(room.outline, { wall: 1, hingeAt: 2000, width: 900, reaches: "on" })),
    };
    const part = dragged(withDoor, { kind: "wall", shape: floor, wall: 1 }, [500, 0]);
    expect(part.keepClear[0]?.door?.hinge).toEqual([8500, 2000]);
  });

  it("slides a door along its wall and not off it", () => {
    const withDoor = {
      ...room,
      ...addKeepClear(room, doorSwing(room.outline, { wall: 0, hingeAt: 2000, width: 900, reaches: "on" })),
    };
    const door = { kind: "shape", shape: { kind: "keepClear", index: 0 } } as const;
    expect(dragged(withDoor, door, [304, 900]).keepClear[0]?.door?.hinge).toEqual([2300, 0]);
    // 8000 − 900 is as far as the leaf can go
    expect(dragged(withDoor, door, [9000, 0]).keepClear[0]?.door?.hinge).toEqual([7100, 0]);
  });
});

describe("nudged", () => {
  const leaning: FloorPart = {
    ...room,
    outline: [
      [0, 0],
      [8000, 6000],
      [8000, 12_000],
      [0, 12_000],
    ],
  };

  it("moves a leaning wall by the whole step of the arrow", () => {
    // the wall A–B runs 4 : 3, outwards is (0.6, −0.8): down by 100 is 100 out, and A goes down by 100 ÷ 0.8 = 125
    const part = nudged(leaning, { kind: "wall", shape: floor, wall: 0 }, [0, -100]);
    expect(part.outline[0]).toEqual([0, -125]);
  });

  it("leaves a wall where it is under an arrow along it", () => {
    expect(nudged(room, { kind: "wall", shape: floor, wall: 0 }, [100, 0])).toBe(room);
  });
});

describe("handleName", () => {
  const withPiano = {
    ...room,
    ...addFixture(room, { label: "Piano", outline: rectangleAt([500, 1000], 1500, 700), movable: true }),
  };

  it("tells a corner by its letter and its place", () => {
    expect(handleName(room, { kind: "corner", shape: floor, corner: 2 }, "metric")).toBe(
      "Corner C, 8.00 m, 12.00 m",
    );
  });

  it("tells a wall by its corners and its length, a thing by its name, size and place", () => {
    expect(handleName(room, { kind: "wall", shape: floor, wall: 3 }, "metric")).toBe("Wall D–A, 12.00 m");
    const piano = { kind: "shape", shape: { kind: "fixture", index: 0 } } as const;
    expect(handleName(withPiano, piano, "metric")).toBe("Piano, 1.50 m by 0.70 m, at 0.50 m, 1.00 m");
  });

  it("reads out the walls that a corner changes", () => {
    expect(handleReadout(room, { kind: "corner", shape: floor, corner: 0 }, "metric")).toBe(
      "Corner A, 0.00 m, 0.00 m. D–A 12.00 m, A–B 8.00 m.",
    );
  });

  it("has nothing to read out for what was removed", () => {
    const gone = { kind: "shape", shape: { kind: "fixture", index: 0 } } as const;
    expect(isThere(withPiano, gone)).toBe(true);
    expect(handleReadout(room, gone, "metric")).toBe("");
  });
});

describe("handleKey", () => {
  it("differs for the wall and the corner of one number and for two things", () => {
    const keys = [
      handleKey({ kind: "wall", shape: floor, wall: 1 }),
      handleKey({ kind: "corner", shape: floor, corner: 1 }),
      handleKey({ kind: "shape", shape: { kind: "fixture", index: 1 } }),
      handleKey({ kind: "shape", shape: { kind: "keepClear", index: 1 } }),
      handleKey({ kind: "wall", shape: { kind: "fixture", index: 1 }, wall: 1 }),
    ];
    expect(new Set(keys).size).toBe(5);
  });
});
