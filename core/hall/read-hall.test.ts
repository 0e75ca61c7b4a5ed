import { aHallDocument, randomHalls } from "#testing";
import { anything, assert, property, record } from "fast-check";
import { expect, test } from "vitest";
import type { HallDocumentInput } from "./hall-document.ts";
import { hallToDocument } from "./hall-to-document.ts";
import { hallFromDocument, readHall } from "./read-hall.ts";

type Corners = [number, number][];

function told(instead: Partial<HallDocumentInput>): readonly string[] {
  const hall = readHall(aHallDocument(instead));
  return hall.ok ? [] : hall.problems.map(({ code, place }) => `${code} at ${place}`);
}

function firstProblem(instead: Partial<HallDocumentInput>) {
  const hall = readHall(aHallDocument(instead));
  return hall.ok ? undefined : hall.problems[0];
}

function square(x: number, y: number, side: number): Corners {
  return [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ];
}

test("HALL-2: a plain hall is read in whole millimetres, with one person not on a mat and the axis found", () => {
  const hall = readHall(aHallDocument({ fixtures: [{ label: " Piano ", outline: square(6, 1, 1.4996) }] }));
  expect(hall.ok && hall.value).toMatchObject({
    outline: [
      [0, 0],
      [8000, 0],
      [8000, 12_000],
      [0, 12_000],
    ],
    // 1.4996 m is 1500 mm to the millimetre
    fixtures: [
      {
        label: "Piano",
        movable: false,
        outline: [
          [6000, 1000],
          [7500, 1000],
          [7500, 2500],
          [6000, 2500],
        ],
      },
    ],
    mat: { length: 1830, width: 610 },
    gaps: { side: 500, end: 300, wall: 500 },
    axis: "auto",
    peopleNotOnMats: 1,
    teacher: null,
  });
});

test("HALL-3: a floor whose walls cross is told by the two walls", () => {
  const bowTie: Corners = [
    [0, 0],
    [8, 12],
    [8, 0],
    [0, 12],
  ];
  expect(firstProblem({ outline: bowTie })).toEqual({
    code: "outline-crosses-itself",
    place: "outline",
    says: "The floor crosses itself: the wall A–B meets the wall C–D.",
    next: "Move a corner of one of these walls, or put the corners in order round it.",
  });
});

test("HALL-3: a floor with a corner twice, or closed by its first corner, says which to leave out", () => {
  const closed: Corners = [...square(0, 0, 8), [0, 0]];
  expect(firstProblem({ outline: closed })).toEqual({
    code: "outline-repeated-corner",
    place: "outline[4]",
    says: "Corner E of the floor is the same as corner A.",
    next: "Leave the last one out: the outline closes by itself.",
  });
  const twice: Corners = [
    [0, 0],
    [8, 0],
    [8, 0.0004],
    [8, 8],
  ];
  expect(told({ outline: twice })).toEqual(["outline-repeated-corner at outline[2]"]);
});

test("HALL-3: a floor needs three corners that are not on one line, and has at most five hundred, a shape on it two hundred", () => {
  expect(told({ outline: [] })).toContain("not-drawn at outline");
  // a floor without corners is nowhere, so it is not far away either
  expect(told({ outline: [] })).not.toContain("floor-far-away at outline");
  expect(
    told({
      outline: [
        [0, 0],
        [8, 0],
      ],
    }),
  ).toEqual(["outline-corners at outline"]);
  expect(
    told({
      outline: [
        [0, 0],
        [8, 0],
        [4, 0],
      ],
    }),
  ).toEqual(["outline-flat at outline"]);
  const many = Array.from({ length: 501 }, (_, index): [number, number] => {
    const turn = (index / 501) * 2 * Math.PI;
    return [10 * Math.cos(turn), 10 * Math.sin(turn)];
  });
  expect(told({ outline: many })).toEqual(["outline-corners at outline"]);
  expect(told({ outline: many.slice(1) })).toEqual([]);
  // what stands on the floor has fewer: 201 are one too many
  const pillar = many
    .filter((_, index) => index % 5 < 2)
    .map(([x, y]): [number, number] => [4 + x / 10, 6 + y / 10]);
  expect(pillar).toHaveLength(201);
  expect(told({ fixtures: [{ label: "Pillar", outline: pillar }] })).toEqual([
    "outline-corners at fixtures[0].outline",
  ]);
  expect(told({ fixtures: [{ label: "Pillar", outline: pillar.slice(1) }] })).toEqual([]);
});

test("HALL-4: less than a square metre, more than 200 m and corners from a map are slips of the unit", () => {
  // 0.99 × 0.99 = 0.98 m²
  expect(told({ outline: square(0, 0, 0.99) })).toContain("floor-too-small at outline");
  expect(told({ outline: square(0, 0, 200.1) })).toEqual(["floor-too-large at outline"]);
  expect(told({ outline: square(0, 0, 200) })).toEqual([]);
  expect(told({ outline: square(10_001, 0, 8) })).toEqual(["floor-far-away at outline"]);
  expect(
    told({
      outline: [
        [0, 0],
        [1e300, 0],
        [0, 1e300],
      ],
    }),
  ).toContain("floor-too-large at outline");
});

test("HALL-5: a fixture, a zone or the teacher wholly outside the floor is told, one partly outside is not", () => {
  const outside = square(8, 0, 1);
  expect(
    told({
      fixtures: [
        { label: "Piano", outline: square(7.5, 0, 1) },
        { label: "Stage", outline: outside },
      ],
      keepClear: [{ label: "Way out", outline: square(-3, 4, 2) }],
      teacher: { outline: square(3, 12.5, 2) },
    }),
  ).toEqual([
    "shape-outside at fixtures[1].outline",
    "shape-outside at keepClear[0].outline",
    "shape-outside at teacher.outline",
  ]);
});

test("HALL-5: a shape that covers the floor, or runs from wall to wall, is on it", () => {
  const strip: Corners = [
    [0, 10],
    [8, 10],
    [8, 12],
    [0, 12],
  ];
  expect(
    told({ teacher: { outline: strip }, keepClear: [{ label: "All", outline: square(-5, -5, 30) }] }),
  ).toEqual([]);
});

test("HALL-5: a fixture must be a shape by itself and have a name", () => {
  expect(
    firstProblem({
      fixtures: [
        {
          label: "  ",
          outline: [
            [1, 1],
            [2, 1],
          ],
        },
      ],
    }),
  ).toMatchObject({
    code: "label-empty",
    place: "fixtures[0].label",
    says: "The fixture number 1 has no name.",
  });
  expect(
    told({
      fixtures: [
        {
          label: "Line",
          outline: [
            [1, 1],
            [2, 1],
            [3, 1],
          ],
        },
      ],
    }),
  ).toEqual(["outline-flat at fixtures[0].outline"]);
  expect(
    firstProblem({
      fixtures: [
        {
          label: "Stage",
          outline: [
            [1, 1],
            [3, 3],
            [3, 1],
            [1, 3],
          ],
        },
      ],
    })?.says,
  ).toBe("The fixture “Stage” crosses itself: the side A–B meets the side C–D.");
});

test("HALL-6: a mat has at least 0.20 m each way and is not larger than the floor", () => {
  expect(told({ mat: { length: 0, width: -1 } })).toEqual([
    "mat-size at mat.length",
    "mat-size at mat.width",
  ]);
  // the longest line across 8 × 12 m is √(64 + 144) = 14.42 m
  expect(told({ mat: { length: 14.42, width: 0.6 } })).toEqual([]);
  expect(told({ mat: { length: 14.43, width: 0.6 } })).toEqual(["mat-larger-than-floor at mat"]);
  // 10 × 10 m is more than the 96 m² of the floor
  expect(told({ mat: { length: 10, width: 10 } })).toEqual(["mat-larger-than-floor at mat"]);
});

test("HALL-6: a floor with the area of more than twenty thousand mats with their gaps is a slip of the unit", () => {
  // 200 × 200 = 40,000 m²; 1.6 × 1.25 = 2 m² a mat: exactly 20,000; with 1.24 m 20,161
  const gaps = { side: 0.5, end: 0.3, wall: 0 };
  const outline = square(0, 0, 200);
  expect(told({ outline, gaps, mat: { length: 1.3, width: 0.75 } })).toEqual([]);
  expect(told({ outline, gaps, mat: { length: 1.3, width: 0.74 } })).toEqual(["mats-too-many at mat"]);
});

test("HALL-7: gaps are between nothing and five metres", () => {
  expect(told({ gaps: { side: -0.1, end: 5, wall: 5.001 } })).toEqual([
    "gap-negative at gaps.side",
    "gap-too-wide at gaps.wall",
  ]);
});

test("HALL-8: how the length has to lie is an angle too, and settles the axis of lines", () => {
  expect(told({ lengthAlong: 361 })).toEqual(["axis-out-of-range at lengthAlong"]);
  expect(told({ lengthAlong: 90, axis: 30 })).toEqual([]);
});

test("HALL-8: people are whole numbers, and an axis is an angle", () => {
  expect(told({ postedCapacity: 59.5, peopleNotOnMats: -1, axis: 361 })).toEqual([
    "axis-out-of-range at axis",
    "posted-capacity at postedCapacity",
    "people-not-on-mats at peopleNotOnMats",
  ]);
  expect(told({ postedCapacity: 0, peopleNotOnMats: 0, axis: -45 })).toEqual([]);
});

test("HALL-9: all that is wrong is told at once, in the order of the document", () => {
  expect(
    told({
      name: " ",
      outline: square(0, 0, 0.5),
      gaps: { side: -1, end: 0, wall: 0 },
      mat: { length: 2, width: 0 },
    }),
  ).toEqual([
    "hall-name-empty at name",
    "floor-too-small at outline",
    "mat-size at mat.width",
    "gap-negative at gaps.side",
  ]);
  expect(told({ axis: Number.NaN, outline: [[0, Number.NaN]] })).toEqual([
    "document-not-a-number at outline[0][1]",
    "document-not-a-number at axis",
  ]);
});

test("HALL-10: a hall written to a document and read again is the same hall", () => {
  assert(
    property(randomHalls(), (hall) => {
      const notes = { address: "Mill Lane, Marlsford", currency: "GBP" };
      const document = hallToDocument(hall, notes);
      expect(document).toMatchObject(notes);
      expect(hallFromDocument(document)).toEqual({ ok: true, value: hall });
      expect(readHall(JSON.parse(JSON.stringify(document)))).toEqual({ ok: true, value: hall });
    }),
  );
});

test("HALL-9: no document makes the reader throw", () => {
  const odd = record({
    outline: anything(),
    mat: anything(),
    gaps: anything(),
    teacher: anything(),
    axis: anything(),
  });
  assert(
    property(odd, (parts) => {
      const hall = readHall({ ...aHallDocument(), ...parts });
      expect(hall.ok || hall.problems.length > 0).toBe(true);
    }),
  );
});
