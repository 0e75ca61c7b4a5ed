import { readDocument } from "#core/words";
import { expect, test } from "vitest";
import { arrangedPlan } from "./arrangement/arranged-plan.ts";
import { hallDocumentSchema } from "./hall-document.ts";
import { hallToDocument } from "./hall-to-document.ts";
import { readHall } from "./read-hall.ts";

const old = {
  name: "Quarry Rooms",
  outline: [
    [0, 0],
    [6, 0],
    [6, 9],
    [0, 9],
  ],
  keepClear: [
    {
      label: "Way out",
      outline: [
        [0, 0],
        [1, 0],
        [1, 1],
      ],
    },
  ],
  mat: { length: 1.83, width: 0.61 },
  gaps: { side: 0.5, end: 0.3, wall: 0.5 },
};

test("HALL-70: a document from before arrangements, ways and places reads as it did, and gains no field", () => {
  const parsed = hallDocumentSchema.parse(old);
  expect([parsed.arrangement, parsed.wayWidth, parsed.keepClear[0]?.place]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
  const read = readHall(old);
  expect(read.ok && Object.keys(read.value.keepClear[0] ?? {})).toEqual(["label", "outline"]);
});

test("HALL-70: the arrangement, the width of the ways and the parts of a place come back from a written document", () => {
  const [zone] = old.keepClear;
  const given = {
    ...old,
    keepClear: [{ ...zone, place: { number: 1, part: "bay" } }],
    arrangement: "staggered",
    wayWidth: 1.05,
  };
  const parsed = hallDocumentSchema.parse(given);
  const read = readHall(given);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const written = hallToDocument(read.value, { arrangement: parsed.arrangement, wayWidth: parsed.wayWidth });
  expect(written).toMatchObject({ arrangement: "staggered", wayWidth: 1.05 });
  expect(written.keepClear[0]?.place).toEqual({ number: 1, part: "bay" });
});

test("HALL-70: the width of the middle and the centre of rings are read, used by the plan, and written back", () => {
  const read = readHall({ ...old, middleWidth: 2.5, ringCentre: [2.5, 6] });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const facing = arrangedPlan(read.value, "facing");
  expect(facing.arrangement === "facing" && facing.middleWidth).toBe(2500);
  const round = arrangedPlan(read.value, "round");
  expect(round.arrangement === "round" && round.centre).toEqual([2500, 6000]);
  expect(hallToDocument(read.value, {})).toMatchObject({ middleWidth: 2.5, ringCentre: [2.5, 6] });
  expect(readHall(hallToDocument(read.value, {}))).toEqual(read);
  const plain = readHall(old);
  if (!plain.ok) throw new Error(JSON.stringify(plain.problems));
  expect(Object.keys(hallToDocument(plain.value, {}))).not.toContain("middleWidth");
});

test.each([
  [{ middleWidth: 0.2 }, "middle-width", "middleWidth"],
  [{ middleWidth: 21 }, "middle-width", "middleWidth"],
  [{ ringCentre: [30, 6] }, "ring-centre-outside", "ringCentre"],
])("HALL-70: %j is told with what to do, and the mats are not laid", (given, code, place) => {
  const read = readHall({ ...old, ...given });
  expect(read.ok ? [] : read.problems.map((it) => [it.code, it.place])).toEqual([[code, place]]);
});

test("HALL-70: the centre of rings may lie on a wall", () => {
  expect(readHall({ ...old, ringCentre: [0, 6] }).ok).toBe(true);
});

test("HALL-70: an arrangement that nobody knows is told with those that there are", () => {
  const read = readDocument(hallDocumentSchema, { ...old, arrangement: "spiral" });
  expect(read.ok).toBe(false);
  if (read.ok) return;
  const [problem] = read.problems;
  expect([problem?.code, problem?.place]).toEqual(["document-choice", "arrangement"]);
  expect(problem?.next).toContain("staggered");
});
