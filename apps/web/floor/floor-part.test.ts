import { describe, expect, it } from "vitest";
import { hallDocumentSchema } from "#core/hall";
import { floorPartOf, samePart, withFloorPart } from "./floor-part.ts";
import { soundHall } from "./sound-hall.ts";

const document = hallDocumentSchema.parse({
  name: "Grange Hall",
  outline: [
    [0, 0],
    [9.14, 0],
    [9.14, 6.1],
    [0, 6.1],
  ],
  fixtures: [
    {
      label: "Piano",
      outline: [
        [0, 5],
        [1.5, 5],
        [1.5, 6.1],
        [0, 6.1],
      ],
      movable: true,
    },
  ],
  keepClear: [
    {
      label: "Door",
      outline: [
        [4, 0],
        [5, 0],
        [4, 1],
      ],
      door: { hinge: [4, 0], closed: [4.9, 0], open: [4, 0.9] },
    },
  ],
  teacher: {
    outline: [
      [3, 5],
      [6, 5],
      [6, 6.1],
      [3, 6.1],
    ],
  },
  mat: { length: 1.83, width: 0.61 },
  gaps: { side: 0.5, end: 0.3, wall: 0.5 },
  postedCapacity: 40,
  address: "Cedar Fork",
});

describe("withFloorPart", () => {
  it("gives back the document that the part came from", () => {
    expect(withFloorPart(document, floorPartOf(document))).toEqual(document);
  });

  it("keeps the middle and the centre of rings, and lets go of them where the part has none", () => {
    const set = { ...document, middleWidth: 2.5, ringCentre: [4, 3] as [number, number] };
    const part = floorPartOf(set);
    expect(part).toMatchObject({ middleWidth: 2500, ringCentre: [4000, 3000] });
    expect(withFloorPart(set, part)).toEqual(set);
    expect(withFloorPart(set, floorPartOf(document))).toEqual(document);
    expect(soundHall(set, part).hall).toMatchObject({ middleWidth: 2500, ringCentre: [4000, 3000] });
  });

  it("keeps which doors are ways out", () => {
    const [zone] = document.keepClear;
    const leaf = { hinge: [4, 0], closed: [4.9, 0], open: [4, 0.9], wayOut: false };
    const marked = hallDocumentSchema.parse({ ...document, keepClear: [{ ...zone, door: leaf }] });
    expect(floorPartOf(marked).keepClear[0]?.door?.wayOut).toBe(false);
    expect(withFloorPart(marked, floorPartOf(marked))).toEqual(marked);
  });

  it("changes the floor and leaves the name, the address and the posted number alone", () => {
    const part = { ...floorPartOf(document), teacher: null };
    const changed = withFloorPart({ ...document, postedCapacity: 35 }, part);
    expect(changed).toMatchObject({
      name: "Grange Hall",
      address: "Cedar Fork",
      postedCapacity: 35,
      teacher: null,
    });
  });
});

describe("a place for a wheelchair", () => {
  const bay = { label: "Wheelchair or chair", outline: [], place: { number: 1, part: "bay" } } as const;
  const way = { label: "Way to it", outline: [], place: { number: 1, part: "way" } } as const;

  it("counts one person more who is not on a mat, and one fewer when it goes", () => {
    // nobody has said how many: 1 is meant, the teacher
    const part = floorPartOf(document);
    const seated = withFloorPart(document, { ...part, keepClear: [...part.keepClear, bay, way] });
    expect(seated.peopleNotOnMats).toBe(2);
    expect(seated.keepClear.map((it) => it.place)).toEqual([undefined, bay.place, way.place]);
    expect(withFloorPart(seated, part).peopleNotOnMats).toBe(1);
  });

  it("is still there after another wall is moved, and counts no more", () => {
    const seated = withFloorPart(document, {
      ...floorPartOf(document),
      keepClear: [bay],
    });
    expect(withFloorPart(seated, floorPartOf(seated))).toEqual(seated);
  });
});

describe("samePart", () => {
  it("sees a corner moved by a millimetre", () => {
    const part = floorPartOf(document);
    expect(samePart(part, floorPartOf(structuredClone(document)))).toBe(true);
    expect(samePart(part, { ...part, outline: part.outline.with(0, [1, 0]) })).toBe(false);
  });
});

describe("soundHall", () => {
  it("draws mats for a hall that has no name yet and an impossible posted number", () => {
    const unnamed = { ...document, name: " ", postedCapacity: -3 };
    expect(soundHall(unnamed, floorPartOf(unnamed)).hall?.outline).toHaveLength(4);
  });

  it("tells what is wrong with a floor that crosses itself", () => {
    const part = {
      ...floorPartOf(document),
      outline: [
        [0, 0],
        [4000, 4000],
        [4000, 0],
        [0, 4000],
      ] as const,
    };
    const { hall, problems } = soundHall(document, part);
    expect(hall).toBeNull();
    expect(problems.map((it) => it.code)).toContain("outline-crosses-itself");
  });

  it("draws a number that is no number at zero instead of failing", () => {
    const broken = { ...document, mat: { length: Number.NaN, width: 0.61 } };
    expect(soundHall(broken, floorPartOf(broken)).problems.map((it) => it.place)).toContain("mat.length");
  });
});
