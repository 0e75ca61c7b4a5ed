import { array, assert, constantFrom, property } from "fast-check";
import { expect, test } from "vitest";
import { doorInWall } from "../door-in-wall.ts";
import { doorSwing } from "../door-swing.ts";
import { doorsFollow } from "../doors-follow.ts";
import { floorDraft } from "../floor-draft.ts";
import { moveShape, rectangleAt } from "../floor-shapes.ts";
import { hallToDocument } from "../hall-to-document.ts";
import { readHall } from "../read-hall.ts";
import { aHall } from "#testing";
import { waysOut } from "./ways-out.ts";

const outline = rectangleAt([0, 0], 8000, 12_000);
const place = { wall: 0, hingeAt: 3000, width: 900, reaches: "on" } as const;

test("HALL-56: marks never make more doors count than without them, and one marked as none never counts", () => {
  assert(
    property(array(constantFrom(true, false, undefined), { maxLength: 6 }), (marks) => {
      const zones = marks.map((wayOut, index) =>
        doorSwing(outline, { ...place, label: String(index), ...(wayOut === undefined ? {} : { wayOut }) }),
      );
      const counted = waysOut(zones).map((it) => it.label);
      const marked = marks.flatMap((mark, index) => (mark === true ? [String(index)] : []));
      const unsaid = marks.flatMap((mark, index) => (mark === undefined ? [String(index)] : []));
      expect(counted).toEqual(marked.length > 0 ? marked : unsaid);
    }),
  );
});

test("HALL-56: a mark stays with its door: hung anew, moved, after its wall moved, written and read", () => {
  const zone = doorSwing(outline, { ...place, wayOut: false });
  const door = doorInWall(outline, zone);
  expect(door?.wayOut).toBe(false);
  const draft = { ...floorDraft(outline), keepClear: [zone] };
  expect(moveShape(draft, { kind: "keepClear", index: 0 }, [500, 0]).keepClear[0]?.door?.wayOut).toBe(false);
  const moved = { ...draft, outline: rectangleAt([0, -500], 8000, 12_500) };
  const followed = doorsFollow(draft, moved).keepClear[0]?.door;
  expect([followed?.hinge, followed?.wayOut]).toEqual([[3000, -500], false]);
  const hall = { ...aHall(), keepClear: [zone] };
  const read = readHall(hallToDocument(hall, {}));
  expect(read.ok && read.value.keepClear[0]?.door).toEqual(zone.door);
});
