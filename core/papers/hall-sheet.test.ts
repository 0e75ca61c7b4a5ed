import {
  arrangedPlan,
  arrangements,
  type DoorSwing,
  doorSwing,
  type KeepClear,
  matPlan,
  type PlacedMat,
  type SetOut,
  setOutInWords,
} from "#core/hall";
import { aHall, aHallSheet } from "#testing";
import { expect, test } from "vitest";
import type { HallSheet } from "./hall-sheet-types.ts";

type Corners = [number, number][];

function box(x: number, y: number, width: number, depth: number): Corners {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ];
}

function itemsOf(sheet: HallSheet, title: string): readonly string[] {
  const section = sheet.sections.find((it) => it.title === title);
  if (section === undefined) throw new Error(`no section ${title}`);
  return section.items;
}

const noLines: SetOut = {
  toTheCentimetre: true,
  linesFrom: "",
  matsFrom: "",
  matsAlongEdge: false,
  lengthLies: "left to right",
  string: null,
  lines: [],
  sentences: [],
};

const everything = (sheet: HallSheet): string =>
  [...sheet.lead, ...sheet.sections.flatMap((it) => it.items)].join("\n");

test("PAPER-1: the posted number stands first, with who of it is not on a mat", () => {
  const hall = aHall({ postedCapacity: 60, peopleNotOnMats: 2 });
  expect(aHallSheet(hall).lead[0]).toBe(
    "The hall’s posted number is 60 people: 58 on mats and 2 beside them.",
  );
});

test("PAPER-1: a posted number that is not known has to be asked for", () => {
  expect(aHallSheet(aHall()).lead[0]).toBe(
    "The hall’s posted number is not known: ask how many people may be in the room.",
  );
});

test("PAPER-1: a posted number of 1 leaves nobody on a mat", () => {
  expect(aHallSheet(aHall({ postedCapacity: 1, peopleNotOnMats: 3 })).lead[0]).toBe(
    "The hall’s posted number is 1 person: 0 on mats and 3 beside them.",
  );
});

test("PAPER-2: how many mats are drawn, how, and that no plan of the kind has more", () => {
  // 7 m across: ⌊(7 + 0.5) / 1.11⌋ = 6; 11 m deep: ⌊(11 + 0.3) / 2.13⌋ = 5; 30. Turned: 3 × 10 = 30 too
  expect(aHallSheet(aHall()).lead).toEqual([
    "The hall’s posted number is not known: ask how many people may be in the room.",
    "30 mats of 1.83 m by 0.61 m are drawn, in straight lines. No plan in straight lines has more.",
  ]);
});

test("PAPER-2: a plan that is not proven says how many more there could be at best", () => {
  const hall = aHall();
  const plan = { ...arrangedPlan(hall, "lines"), bound: 32, proven: false };
  expect(aHallSheet(hall, { plan }).lead[1]).toContain(
    "Not proven to be the most: at best 32 could fit in straight lines.",
  );
});

test("PAPER-2: where fewer may come than mats are drawn, it says how many to lay and why", () => {
  // 20 posted less the teacher is 19; the insurer's 24 is more
  const hall = aHall({ postedCapacity: 20 });
  expect(aHallSheet(hall, { limits: { insurerCap: 24 } }).lead.at(-1)).toBe(
    "Lay no more than 19 of them: the posted number sets it.",
  );
  expect(aHallSheet(hall, { limits: { insurerCap: 19, matsOwned: 19 } }).lead.at(-1)).toBe(
    "Lay no more than 19 of them: the posted number, the number of mats there are and the insurer’s cap set it.",
  );
});

test("PAPER-2: a floor without a mat says so", () => {
  const sheet = aHallSheet(aHall({ outline: box(0, 0, 1.5, 1.5) }));
  expect(sheet.lead[1]).toMatch(/^No mat of 1\.83 m by 0\.61 m is drawn\. /);
  expect(itemsOf(sheet, "Laying the mats")[0]).toBe("There is no mat to set out.");
});

test.each(arrangements)("PAPER-3: a plan of %s has its whole set-out on the sheet", (arrangement) => {
  const hall = aHall({ teacher: { outline: box(0, 9.5, 8, 2.5) } });
  const plan = arrangedPlan(hall, arrangement, { steps: 5 });
  const said = itemsOf(aHallSheet(hall, { plan }), "Laying the mats");
  const setOut = setOutInWords(plan, "metric");
  for (const [index, sentence] of setOut.entries()) {
    const [head = ""] = sentence.split(" First mat ");
    expect(said[index]?.startsWith(head)).toBe(true);
    if (said[index] !== sentence) expect(said[index]).toMatch(/ The mats as in line \d+\.$/);
  }
  expect(said.length).toBe(setOut.length + 2);
});

test("PAPER-3: a line with the same mats as an earlier one names it", () => {
  const said = itemsOf(aHallSheet(aHall({ teacher: { outline: box(0, 9.5, 8, 2.5) } })), "Laying the mats");
  expect(said.slice(1, 3)).toEqual([
    "Line 1: 2.76 m from the front wall. First mat starts 0.92 m from the left wall; then centres every 1.11 m; 6 mats.",
    "Line 2: 5.02 m from the front wall. The mats as in line 1.",
  ]);
});

test("PAPER-4: doors with their width and wall, zones with their size, and a way 0.90 m wide", () => {
  // one mat in a room of 4 × 5 m, so that nothing is in the way
  const room = aHall({ outline: box(0, 0, 4, 5), gaps: { side: 1, end: 1, wall: 1.5 } });
  const door = doorSwing(room.outline, {
    wall: 0,
    hingeAt: 1000,
    width: 900,
    reaches: "on",
    label: "Street door",
  });
  const zone = {
    label: "Way out",
    outline: [
      [3000, 4000],
      [4000, 4000],
      [4000, 5000],
      [3000, 5000],
    ] as const,
  };
  const sheet = aHallSheet({ ...room, keepClear: [door, zone] });
  expect(itemsOf(sheet, "Doors and ways out")).toEqual([
    "D1 Street door: 0.90 m wide, in the back wall. Keep its swing clear.",
    "K1 Way out: keep clear 1.00 m wide and 1.00 m deep at the front right.",
    "A door’s width is that of its leaf; the clear opening is less. Which doors are fire exits the hall says.",
    "Every mat has a way 0.90 m wide to a door. Keep it so.",
  ]);
  expect(sheet.inTheWay).toEqual([]);
  const marked = (wayOut: boolean): KeepClear => ({ ...door, door: { ...swingOf(door), wayOut } });
  expect(itemsOf(aHallSheet({ ...room, keepClear: [marked(true)] }), "Doors and ways out")).toEqual([
    "D1 Street door: 0.90 m wide, in the back wall; marked as a way out in an emergency. Keep its swing clear.",
    "A door’s width is that of its leaf; the clear opening is less. Which doors are ways out was marked by whoever drew the hall; the hall says which are fire exits.",
    "Every mat has a way 0.90 m wide to a door. Keep it so.",
  ]);
  expect(itemsOf(aHallSheet({ ...room, keepClear: [marked(false)] }), "Doors and ways out")).toEqual([
    "D1 Street door: 0.90 m wide, in the back wall; marked as not a way out. Keep its swing clear.",
    "A door’s width is that of its leaf; the clear opening is less. No door that is drawn is marked as a way out: find every way out before anything is laid.",
  ]);
});

function swingOf({ door }: KeepClear): DoorSwing {
  if (door === undefined) throw new Error("a zone without a leaf");
  return door;
}

test("PAPER-4: where mats leave no way they are named and drawn with a thick edge", () => {
  // 2.63 m across with 0.40 m to the walls holds one mat of 1.83 m from side to side: who lies behind it must cross it
  const hall = aHall({ outline: box(0, 0, 2.63, 4), gaps: { side: 0.5, end: 0.3, wall: 0.4 }, axis: 0 });
  const door = doorSwing(hall.outline, { wall: 0, hingeAt: 900, width: 900, reaches: "on" });
  const across: PlacedMat[] = [1.6, 2.71].map((y) => ({ centre: [1315, y * 1000], angle: 0 }));
  const plan = { ...matPlan(hall), mats: across.slice(0, 2), count: 2, setOut: noLines };
  const sheet = aHallSheet({ ...hall, keepClear: [door] }, { plan });
  expect(sheet.inTheWay).toEqual([0]);
  expect(itemsOf(sheet, "Doors and ways out").at(-1)).toBe(
    "1 of 2 mats has no way 0.50 m wide to a door: mat 2. In the way, drawn with a thick edge: mat 1. 1 of 2 have one 0.90 m wide. Whether that will do the hall and the fire service decide.",
  );
});

test("PAPER-4: a width that was set is the one that is looked for, and the mats in it are named", () => {
  // six mats side by side, 0.50 m apart, each a way of 0.50 m; none of 1 m leaves between them
  const hall = aHall({ outline: box(0, 0, 8, 4) });
  const door = doorSwing(hall.outline, { wall: 0, hingeAt: 900, width: 900, reaches: "on" });
  const doored = { ...hall, keepClear: [door] };
  const unset = aHallSheet(doored);
  const set = aHallSheet(doored, { wayWidth: 1000 });
  expect(itemsOf(unset, "Doors and ways out").at(-1)).toMatch(
    /^Every mat has a way 0\.50 m wide to a door, /,
  );
  expect(unset.inTheWay).toEqual([]);
  expect(itemsOf(set, "Doors and ways out").at(-1)).toMatch(
    / have no way 1\.00 m wide to a door: .* In the way, /,
  );
  expect(set.inTheWay.length).toBeGreaterThan(0);
});

test("PAPER-4: a width that no way can have is told, and the usual one looked for", () => {
  const hall = aHall({ outline: box(0, 0, 4, 5), gaps: { side: 1, end: 1, wall: 1.5 } });
  const door = doorSwing(hall.outline, { wall: 0, hingeAt: 1000, width: 900, reaches: "on" });
  const items = itemsOf(aHallSheet({ ...hall, keepClear: [door] }, { wayWidth: 50 }), "Doors and ways out");
  expect(items.slice(-2)).toEqual([
    "A way 0.05 m wide was asked for. Ask for a way from 0.30 m to 5.00 m wide.",
    "Every mat has a way 0.90 m wide to a door. Keep it so.",
  ]);
});

test("PAPER-4: without a door it says that the ways out have to be found", () => {
  expect(itemsOf(aHallSheet(aHall()), "Doors and ways out")).toEqual([
    "No door is drawn: find every way out before anything is laid.",
  ]);
});

test("PAPER-5: what stands on the floor has the letters of the drawing, alike things together", () => {
  const hall = aHall({
    fixtures: [
      { label: "Stage", outline: box(0, 10, 8, 2) },
      { label: "Pillar", outline: box(2, 5, 0.4, 0.4) },
      { label: "Pillar", outline: box(6, 5, 0.4, 0.4) },
      { label: "Chairs", outline: box(0, 0, 1, 2), movable: true },
    ],
  });
  expect(itemsOf(aHallSheet(hall), "On the floor")).toEqual([
    "a Stage: 8.00 m wide and 2.00 m deep; stays, at the front.",
    "b, c Pillar: 0.40 m wide and 0.40 m deep; stays.",
    "d Chairs: 1.00 m wide and 2.00 m deep; can be moved, at the back left.",
  ]);
});

test("PAPER-5: a place for a wheelchair has the number that the hall gives it, and its way is told with it", () => {
  const hall = aHall();
  const zones = [
    {
      label: "Place for a wheelchair",
      outline: box(500, 9000, 1500, 2000),
      place: { number: 2, part: "bay" as const },
    },
    { label: "Way to it", outline: box(500, 1000, 900, 8000), place: { number: 2, part: "way" as const } },
  ];
  const sheet = aHallSheet({ ...hall, keepClear: zones });
  expect(sheet.named.keepClear).toEqual(["P2", ""]);
  expect(itemsOf(sheet, "Doors and ways out")[0]).toBe(
    "P2 Place for a wheelchair: 1.50 m wide and 2.00 m deep at the front left. Keep it and its way to a door, dotted too, clear of mats.",
  );
});

test("PAPER-5: a name longer than any hall’s is shortened in the title", () => {
  const { title } = aHallSheet(aHall({ name: "Hall ".repeat(100) }));
  expect([title.length, title.endsWith("…")]).toEqual([120, true]);
});

test("PAPER-5: more than ten kinds of things are run together, none left out", () => {
  const fixtures = Array.from({ length: 28 }, (_, index) => ({
    label: `Thing ${index}`,
    outline: box(0.2 + (index % 7), 1 + Math.floor(index / 7) * 2, 0.3, 0.3),
    movable: index % 2 === 1,
  }));
  const items = itemsOf(aHallSheet(aHall({ fixtures })), "On the floor");
  expect(items.length).toBe(2);
  expect(items[0]).toMatch(/^Stays, width by depth: a Thing 0 0\.30 × 0\.30 m; c Thing 2 0\.30 × 0\.30 m; /);
  // 26 letters, then aa and ab
  expect(items[1]).toMatch(/ab Thing 27 0\.30 × 0\.30 m\.$/);
  for (const { label } of fixtures) expect(items.join(" ")).toContain(`${label} 0.30`);
});

test("PAPER-6: what the sheet does not decide names who does", () => {
  const words = itemsOf(aHallSheet(aHall()), "What this sheet does not decide").join(" ");
  for (const who of ["the hall", "fire risk assessment", "local code", "fire service", "insurer", "doctor"])
    expect(words).toContain(who);
});

test("PAPER-7: it says when it was made and from what, and for which class", () => {
  const sheet = aHallSheet(aHall(), { className: "Tuesday evening", address: "Barn Lane, Marlsford" });
  expect(sheet.under).toEqual(["Tuesday evening", "Barn Lane, Marlsford"]);
  expect(sheet.foot).toBe("Made on 25 November 2026 from version 3 of its measures.");
});

test("PAPER-7: in feet no length is in metres", () => {
  const hall = aHall({
    fixtures: [{ label: "Stage", outline: box(0, 10, 8, 2) }],
    keepClear: [{ label: "Way out", outline: box(0, 0, 1, 1) }],
  });
  const door = doorSwing(hall.outline, { wall: 0, hingeAt: 4000, width: 914, reaches: "on" });
  const words = everything(aHallSheet({ ...hall, keepClear: [...hall.keepClear, door] }, { units: "feet" }));
  expect(words).not.toMatch(/\d m\b|metres/);
  expect(words).toContain("Feet and inches are to the nearest quarter inch.");
  expect(words).toContain("3 ft 0 in wide");
});
