import { randomHalls } from "#testing";
import { array, assert, integer, oneof, property, record, constantFrom, constant } from "fast-check";
import { expect, test } from "vitest";
import { doorSwing } from "./door-swing.ts";
import { addCorner, moveCorner, removeCorner } from "./floor-corners.ts";
import type { FloorDraft, ShapeRef } from "./floor-draft.ts";
import { canRedo, canUndo, historyOf, redo, takeStep, undo } from "./floor-history.ts";
import {
  addFixture,
  addKeepClear,
  moveShape,
  placeTeacher,
  rectangleAt,
  removeShape,
  resizeShape,
} from "./floor-shapes.ts";
import { moveWall, setWallLength } from "./floor-walls.ts";
import { teacherStrip } from "./teacher-strip.ts";

type Operation = (draft: FloorDraft) => FloorDraft;

const floor = { kind: "floor" } as const;
const millimetres = integer({ min: -30_000, max: 30_000 });
const lengths = integer({ min: 0, max: 30_000 });
const which = integer({ min: 0, max: 1000 });

/** Every operation of the editor, on a corner, wall or shape that the draft has. */
const operations = oneof(
  record({ at: which, x: millimetres, y: millimetres }).map(
    ({ at, x, y }): Operation =>
      (draft) =>
        moveCorner(draft, floor, at % draft.outline.length, [x, y]),
  ),
  which.map(
    (at): Operation =>
      (draft) =>
        addCorner(draft, floor, at % draft.outline.length),
  ),
  which.map(
    (at): Operation =>
      (draft) =>
        removeCorner(draft, floor, at % draft.outline.length),
  ),
  record({ at: which, by: millimetres }).map(
    ({ at, by }): Operation =>
      (draft) =>
        moveWall(draft, floor, at % draft.outline.length, by),
  ),
  record({ at: which, length: lengths }).map(
    ({ at, length }): Operation =>
      (draft) =>
        setWallLength(draft, floor, at % draft.outline.length, length),
  ),
  record({ x: millimetres, y: millimetres }).map(
    ({ x, y }): Operation =>
      (draft) =>
        addFixture(draft, { label: "Piano", outline: rectangleAt([x, y], 1500, 700), movable: true }),
  ),
  record({ at: which, hingeAt: lengths, reaches: constantFrom("on" as const, "back" as const) }).map(
    ({ at, hingeAt, reaches }): Operation =>
      (draft) =>
        addKeepClear(
          draft,
          doorSwing(draft.outline, { wall: at % draft.outline.length, hingeAt, width: 900, reaches }),
        ),
  ),
  which.map(
    (at): Operation =>
      (draft) =>
        placeTeacher(draft, teacherStrip(draft.outline, at % draft.outline.length)),
  ),
  record({ at: which, x: millimetres, y: millimetres }).map(
    ({ at, x, y }): Operation =>
      (draft) =>
        moveShape(draft, someShape(draft, at), [x, y]),
  ),
  record({ at: which, width: lengths, depth: lengths }).map(
    ({ at, width, depth }): Operation =>
      (draft) =>
        resizeShape(draft, someShape(draft, at), width, depth),
  ),
  which.map(
    (at): Operation =>
      (draft) =>
        removeShape(draft, someShape(draft, at)),
  ),
  constant<Operation>((draft) => draft),
);

function someShape(draft: FloorDraft, at: number): ShapeRef {
  const all: readonly ShapeRef[] = [
    floor,
    ...draft.fixtures.map((_, index) => ({ kind: "fixture", index }) as const),
    ...draft.keepClear.map((_, index) => ({ kind: "keepClear", index }) as const),
    ...(draft.teacher === null ? [] : [{ kind: "teacher" } as const]),
  ];
  return all[at % all.length] ?? floor;
}

function corners(draft: FloorDraft): readonly number[] {
  const shapes = [
    draft,
    ...draft.fixtures,
    ...draft.keepClear,
    ...(draft.teacher === null ? [] : [draft.teacher]),
  ];
  return shapes.flatMap((shape) => shape.outline.flat());
}

test("HALL-20: whatever is done to a floor, undoing it all gives the floor at the start, and redoing the end", () => {
  assert(
    property(randomHalls(), array(operations, { maxLength: 12 }), (hall, done) => {
      const { outline, fixtures, keepClear, teacher } = hall;
      const start: FloorDraft = { outline, fixtures, keepClear, teacher };
      const written = JSON.stringify(start);
      const end = done.reduce(
        (history, operation) => takeStep(history, operation(history.present)),
        historyOf(start),
      );
      let history = end;
      while (canUndo(history)) history = undo(history);
      expect(history.present).toBe(start);
      expect(JSON.stringify(start)).toBe(written);
      while (canRedo(history)) history = redo(history);
      expect(history.present).toBe(end.present);
    }),
  );
});

test("HALL-26: whatever is done to a floor, every corner is a whole millimetre and three corners stay", () => {
  assert(
    property(randomHalls(), array(operations, { maxLength: 12 }), (hall, done) => {
      const end = done.reduce<FloorDraft>((draft, operation) => operation(draft), hall);
      expect(corners(end).filter((at) => !Number.isSafeInteger(at) || Object.is(at, -0))).toEqual([]);
      expect(end.outline.length).toBeGreaterThanOrEqual(3);
    }),
  );
});
