import { expect, test } from "vitest";
import { doorSwing } from "../door-swing.ts";
import type { FloorDraft } from "../floor-draft.ts";
import { rectangleAt } from "../floor-shapes.ts";
import { rectangleFloor } from "../floor-start.ts";
import { replacedOutline } from "./replaced-outline.ts";

const room = rectangleFloor(8000, 12_000);
const before: FloorDraft = {
  outline: room,
  fixtures: [
    { label: "Stage", outline: rectangleAt([0, 10_000], 8000, 2000), movable: false },
    { label: "Piano", outline: rectangleAt([7000, 500], 900, 600), movable: true },
  ],
  keepClear: [doorSwing(room, { wall: 1, hingeAt: 3000, width: 900, reaches: "on", label: "Way in" })],
  teacher: { outline: rectangleAt([3000, 8500], 2000, 1500) },
};

test("HALL-55: a hall measured from another corner is lettered like the old one, and its door follows its wall", () => {
  // walked from B: 12.05 m first, then 8.10 m
  const { draft, gone, followed, loose } = replacedOutline(before, rectangleFloor(12_050, 8100));
  expect(draft.outline).toEqual(rectangleFloor(8100, 12_050));
  expect({ gone, followed, loose }).toEqual({ gone: [], followed: ["Way in"], loose: [] });
  // the wall B–C stands 0.10 m further right now
  expect(draft.keepClear[0]?.door?.hinge).toEqual([8100, 3000]);
});

test("HALL-55: walked the other way round it is the same hall", () => {
  const { draft } = replacedOutline(before, rectangleFloor(8100, 12_050).toReversed());
  expect(draft.outline).toEqual(rectangleFloor(8100, 12_050));
});

test("HALL-55: what would lie wholly outside is named and taken away, the rest stays", () => {
  // 6 m wide and 8 m deep: the stage from 10 m on and the teacher from 8.5 m on are outside, and so is the piano
  // from 7 m on
  const { draft, gone, followed } = replacedOutline(before, rectangleFloor(6000, 8000));
  expect(gone).toEqual(["Stage", "Piano", "the teacher’s zone"]);
  expect(draft).toMatchObject({ fixtures: [], teacher: null });
  expect(followed).toEqual(["Way in"]);
});

test("HALL-55: a floor with other walls leaves doors where they were drawn and says so", () => {
  const bay = [...rectangleFloor(9000, 12_000), [-500, 6000] as const];
  const { followed, loose } = replacedOutline(before, bay);
  expect({ followed, loose }).toEqual({ followed: [], loose: ["Way in"] });
});

test("HALL-55: a hall without a floor takes the outline as it is", () => {
  const empty: FloorDraft = { outline: [], fixtures: [], keepClear: [], teacher: null };
  expect(replacedOutline(empty, room)).toEqual({
    draft: { ...empty, outline: room },
    gone: [],
    followed: [],
    loose: [],
  });
});
