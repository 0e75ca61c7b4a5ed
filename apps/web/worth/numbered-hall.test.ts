import { hallFromDocument, hallDocumentSchema } from "#core/hall";
import { expect, test } from "vitest";
import { numberedHall } from "./numbered-hall.ts";

const read = hallFromDocument(
  hallDocumentSchema.parse({
    name: "Salt Loft",
    outline: [
      [0, 0],
      [8, 0],
      [8, 12],
    ],
    mat: { length: 1.83, width: 0.61 },
    gaps: { side: 0.5, end: 0.3, wall: 0.5 },
  }),
);
if (!read.ok) throw new Error(JSON.stringify(read.problems));
const hall = read.value;

test("numbers of people are taken from the document, and what is none of them is left out", () => {
  expect(numberedHall(hall, { postedCapacity: 60, peopleNotOnMats: 2 })).toMatchObject({
    postedCapacity: 60,
    peopleNotOnMats: 2,
  });
  expect(numberedHall(hall, { postedCapacity: -5, peopleNotOnMats: 1.5 })).toMatchObject({
    postedCapacity: undefined,
    peopleNotOnMats: 1,
  });
});
