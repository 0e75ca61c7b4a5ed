import { hallDocumentSchema, rectangleAt } from "#core/hall";
import { expect, test } from "vitest";
import { floorPartOf, withFloorPart } from "./floor-part.ts";
import { lengthWay, turnedTo } from "./length-ways.ts";

const document = hallDocumentSchema.parse({
  name: "Salt Loft",
  outline: [
    [0, 0],
    [8, 0],
    [8, 12],
    [0, 12],
  ],
  mat: { length: 1.83, width: 0.61 },
  gaps: { side: 0.5, end: 0.3, wall: 0.5 },
});
const part = floorPartOf(document);

test("front to back is up the drawing without a teacher’s place, and along the hall where she teaches from the left", () => {
  expect(turnedTo(part, "front to back").lengthAlong).toBe(90);
  const atLeft = { ...part, teacher: { outline: rectangleAt([0, 4000], 1000, 4000) } };
  expect(turnedTo(atLeft, "front to back").lengthAlong).toBe(0);
  expect(lengthWay(turnedTo(atLeft, "left to right"))).toBe("left to right");
});

test("a length that is neither has no name, and one that was let go is nowhere in the document", () => {
  expect(lengthWay({ ...part, lengthAlong: 30 })).toBe("own");
  const turned = withFloorPart(document, turnedTo(part, "left to right"));
  expect(turned.lengthAlong).toBe(0);
  const free = withFloorPart(turned, turnedTo(floorPartOf(turned), "whichever way holds more"));
  expect(free).toEqual(document);
});
