import { aCommit, aWrite } from "#testing";
import { expect, test } from "vitest";
import { mergedWrites } from "./merged-writes.ts";

test("two writes that follow each other are one, with the state of the last", () => {
  const one = aCommit("action-one", { streams: [aWrite("session/b", 3), aWrite("person/a", 0)] });
  const other = aCommit("action-two", { streams: [aWrite("session/b", 4, { events: ["x", "y"] })] });
  // 3 → 4 → 6
  expect(mergedWrites([one, other])).toEqual([
    { stream: "person/a", from: 0, upto: 1, belongs: "tuesday", sort: "", state: { count: 1 } },
    { stream: "session/b", from: 3, upto: 6, belongs: "tuesday", sort: "", state: { count: 6 } },
  ]);
});

test("two writes of which the second does not begin where the first ended are not one", () => {
  const writes = [3, 3].map((from) => aCommit(`action-${from}`, { streams: [aWrite("session/b", from)] }));
  expect(mergedWrites(writes)).toBeUndefined();
});
