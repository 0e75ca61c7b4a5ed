import { expect, test } from "vitest";
import { lShapedFloor } from "./floor-start.ts";
import { onFloor } from "./on-floor.ts";

test("the missing corner of an L is not on the floor", () => {
  const outline = lShapedFloor({ width: 10_000, depth: 8000, cutWidth: 4000, cutDepth: 3000 });
  // the corner from 6000 to 10000 across and from 5000 to 8000 up is missing
  expect(onFloor({ outline }, [5900, 7000])).toBe(true);
  expect(onFloor({ outline }, [6100, 7000])).toBe(false);
  expect(onFloor({ outline }, [9000, 4900])).toBe(true);
});
