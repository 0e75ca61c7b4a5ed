import { hallFromDocument, hallDocumentSchema } from "#core/hall";
import { expect, test } from "vitest";
import { type MostFound, mostSearch } from "./most-search.ts";

/** 6 × 9 m, with a pillar off the middle so that lines alone do not settle it. */
const read = hallFromDocument(
  hallDocumentSchema.parse({
    name: "Salt Loft",
    outline: [
      [0, 0],
      [6, 0],
      [6, 9],
      [0, 9],
    ],
    fixtures: [
      {
        label: "Pillar",
        outline: [
          [2, 4],
          [2.5, 4],
          [2.5, 4.5],
          [2, 4.5],
        ],
      },
    ],
    mat: { length: 1.83, width: 0.61 },
    gaps: { side: 0.5, end: 0.3, wall: 0.5 },
  }),
);
if (!read.ok) throw new Error(JSON.stringify(read.problems));
const hall = read.value;

test("a plan is told at once, and later ones never have fewer mats nor a higher bound", async () => {
  const found: MostFound[] = [];
  await new Promise<void>((done) => {
    mostSearch(hall, (it) => {
      found.push(it);
      if (it.search.state !== "goes on") done();
    });
    expect(found).toHaveLength(1);
  });
  const counts = found.map((it) => it.plan.count);
  expect(counts).toEqual(counts.toSorted((a, b) => a - b));
  const bounds = found.map((it) => it.plan.bound);
  expect(bounds).toEqual(bounds.toSorted((a, b) => b - a));
  const last = found.at(-1);
  expect(last?.search.state).toBe("finished");
  expect(last?.plan.proven).toBe(true);
});

test("a search that rests keeps its plan, says so, and goes on when asked", async () => {
  const found: MostFound[] = [];
  await new Promise<void>((done) => {
    const search = mostSearch(hall, (it) => {
      found.push(it);
      if (it.search.state === "finished") done();
    });
    search.rest();
    expect(found.map((it) => it.search.state)).toEqual(["goes on", "rests"]);
    expect(found[1]?.plan).toEqual(found[0]?.plan);
    search.goOn();
  });
  expect(found.map((it) => it.search.state).slice(0, 3)).toEqual(["goes on", "rests", "goes on"]);
  expect(found.at(-1)?.plan.proven).toBe(true);
});

test("a search that is left tells nothing more", async () => {
  const found: MostFound[] = [];
  const search = mostSearch(hall, (it) => found.push(it));
  search.leave();
  await new Promise((wait) => setTimeout(wait, 600));
  expect(found).toHaveLength(1);
});
