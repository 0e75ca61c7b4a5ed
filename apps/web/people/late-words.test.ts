import { expect, test } from "vitest";
import { lateWords } from "./late-words.ts";

test("lateness is a count in words, with what was let go", () => {
  expect(lateWords({ times: 0, waived: 0 }, "en-GB")).toBe("Never gave a place up too late.");
  expect(lateWords({ times: 1, waived: 1 }, "en-GB")).toBe(
    "Gave a place up too late once, and nothing was charged.",
  );
  expect(lateWords({ times: 1, waived: 0 }, "en-US")).toBe("Gave a spot up too late once.");
  expect(lateWords({ times: 2, waived: 0 }, "en-GB")).toBe("Gave a place up too late twice.");
  expect(lateWords({ times: 3, waived: 1 }, "en-GB")).toBe(
    "Gave a place up too late 3 times; 1 of them was let go.",
  );
});
