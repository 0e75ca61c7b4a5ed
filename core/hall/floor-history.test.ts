import { array, assert, constantFrom, integer, option, property, record } from "fast-check";
import { expect, test } from "vitest";
import { canRedo, canUndo, historyOf, LONGEST_HISTORY, redo, takeStep, undo } from "./floor-history.ts";

test("HALL-20: undo gives what was before and redo what was undone", () => {
  const history = takeStep(takeStep(historyOf("a"), "b"), "c");
  expect(undo(history).present).toBe("b");
  expect(undo(undo(history)).present).toBe("a");
  expect(redo(undo(history)).present).toBe("c");
});

test("HALL-20: the forty moves of one drag are undone at once", () => {
  let history = takeStep(historyOf(0), 1, "move corner B");
  for (let x = 2; x <= 40; x++) history = takeStep(history, x, "move corner B");
  history = takeStep(history, 41, "move corner C");
  expect(undo(history).present).toBe(40);
  expect(undo(undo(history)).present).toBe(0);
});

test("HALL-20: the same drag after an undo is a step of its own", () => {
  const dragged = takeStep(takeStep(historyOf(0), 1, "drag"), 2);
  const again = takeStep(undo(dragged), 3, "drag");
  expect(undo(again).present).toBe(1);
});

test("HALL-20: a new step ends what could be redone", () => {
  const history = takeStep(undo(takeStep(historyOf("a"), "b")), "c");
  expect(canRedo(history)).toBe(false);
  expect(redo(history)).toBe(history);
});

test("HALL-20: there is nothing to undo at the start and after a step that changed nothing", () => {
  const start = historyOf("a");
  expect(canUndo(takeStep(start, "a"))).toBe(false);
  expect(undo(start)).toBe(start);
});

test("HALL-20: only the last two hundred steps are kept", () => {
  let history = historyOf(0);
  for (let x = 1; x <= LONGEST_HISTORY + 5; x++) history = takeStep(history, x);
  // 206 values; 200 steps can be undone, so 5 is the oldest
  for (let x = 0; x <= LONGEST_HISTORY; x++) history = undo(history);
  expect(history.present).toBe(5);
});

test("HALL-20: undoing everything gives the start, and redoing everything gives the end", () => {
  const steps = array(record({ value: integer(), key: option(constantFrom("x", "y"), { nil: undefined }) }), {
    maxLength: 30,
  });
  assert(
    property(integer(), steps, (start, taken) => {
      const end = taken.reduce((history, { value, key }) => takeStep(history, value, key), historyOf(start));
      let back = end;
      while (canUndo(back)) back = undo(back);
      expect(back.present).toBe(start);
      while (canRedo(back)) back = redo(back);
      expect(back.present).toBe(end.present);
    }),
  );
});
