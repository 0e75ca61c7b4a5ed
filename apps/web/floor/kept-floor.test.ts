import { expect, test } from "vitest";
import { canUndo, hallDocumentSchema, takeStep, undo } from "#core/hall";
import { withFloorPart } from "./floor-part.ts";
import { keptFloorOf, meetDocument } from "./kept-floor.ts";

const document = hallDocumentSchema.parse({
  name: "Tithe Barn Hall",
  outline: [
    [0, 0],
    [8, 0],
    [8, 12],
    [0, 12],
  ],
  mat: { length: 1.83, width: 0.61 },
  gaps: { side: 0.5, end: 0.3, wall: 0.5 },
});
const wider = { ...document, outline: document.outline.map(([x, y]): [number, number] => [x * 1.5, y]) };

test("a new name from elsewhere is nothing to undo on the floor", () => {
  const kept = meetDocument(keptFloorOf(document), { ...document, name: "The Barn" });
  expect(canUndo(kept.history)).toBe(false);
  expect(kept.document.name).toBe("The Barn");
});

test("a new floor from elsewhere can be undone to what she had drawn", () => {
  const kept = meetDocument(keptFloorOf(document), wider);
  expect(kept.history.present.outline[1]).toEqual([12_000, 0]);
  expect(undo(kept.history).present.outline[1]).toEqual([8000, 0]);
});

test("her own change coming back as a document is no second step", () => {
  const before = keptFloorOf(document);
  const part = { ...before.history.present, axis: 30 };
  const settled = { document, history: takeStep(before.history, part) };
  const after = meetDocument(settled, withFloorPart(document, part));
  expect(after.history).toBe(settled.history);
});

test("the same document again changes nothing", () => {
  const kept = keptFloorOf(document);
  expect(meetDocument(kept, document)).toBe(kept);
});
