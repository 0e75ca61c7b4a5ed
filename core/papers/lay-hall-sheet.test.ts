import { arrangedPlan, doorSwing, type Hall, matPlan, wallsOf } from "#core/hall";
import { aHall, aHallSheet, randomHalls } from "#testing";
import { assert, constantFrom, property } from "fast-check";
import { expect, test } from "vitest";
import { layHallSheet } from "./lay-hall-sheet.ts";
import type { Mark, Paper, TextMark } from "./paper-types.ts";
import { textWidth } from "./text-width.ts";

type Corners = [number, number][];

function box(x: number, y: number, width: number, depth: number): Corners {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ];
}

function marksOf(paper: Paper): readonly Mark[] {
  return paper.pages.flatMap(({ parts }) => parts.flatMap((it) => it.marks));
}

function figureOf(paper: Paper): readonly Mark[] {
  return paper.pages.flatMap(({ parts }) =>
    parts.filter((it) => it.role === "figure").flatMap((it) => it.marks),
  );
}

function textsOf(marks: readonly Mark[]): readonly TextMark[] {
  return marks.filter((mark) => mark.kind === "text");
}

/** The words of the whole paper but the drawing's, without the breaks of lines. */
function wordsOf(paper: Paper): string {
  const said = paper.pages.flatMap(({ parts }) =>
    parts.filter((it) => it.role !== "figure").map((it) => it.says),
  );
  return said.join(" ");
}

/** The walls: the one shape with so thick an edge and no fill. */
function wallsOnPaper(paper: Paper): readonly (readonly [number, number])[] {
  const walls = figureOf(paper).find((mark) => mark.kind === "shape" && mark.width === 0.8);
  if (walls === undefined || walls.kind !== "shape") throw new Error("no walls are drawn");
  return walls.points;
}

const stage = { label: "Stage", outline: box(0, 10.5, 8, 1.5) };
const strip = { outline: box(0, 8.5, 8, 2) };

test("PAPER-8: a wall’s length on the paper times the scale is its length, on A4 in metres and on Letter in feet", () => {
  for (const [units, size, scales] of [
    ["metric", "a4", [50, 75, 100, 125]],
    ["feet", "letter", [48, 64, 96, 128]],
  ] as const) {
    const hall = aHall({ teacher: strip });
    const paper = layHallSheet(aHallSheet(hall, { units }), size);
    expect(scales).toContain(paper.scale);
    const points = wallsOnPaper(paper);
    for (const [index, wall] of wallsOf(hall.outline).entries()) {
      const [a = [0, 0], b = [0, 0]] = [points[index], points[(index + 1) % points.length]];
      expect(Math.hypot(b[0] - a[0], b[1] - a[1]) * (paper.scale ?? 0)).toBeCloseTo(wall.length, 6);
    }
  }
});

test("PAPER-8: every mat is drawn to the scale", () => {
  const paper = layHallSheet(aHallSheet(aHall()), "a4");
  const mats = figureOf(paper).filter(
    (mark) => mark.kind === "shape" && mark.fill === "paper" && mark.width === 0.3 && mark.dash === undefined,
  );
  const sides = mats.map((mark) => {
    const [a = [0, 0], b = [0, 0], c = [0, 0]] = mark.kind === "shape" ? mark.points : [];
    return [Math.hypot(b[0] - a[0], b[1] - a[1]), Math.hypot(c[0] - b[0], c[1] - b[1])].map((it) =>
      Math.round(it * (paper.scale ?? 0)),
    );
  });
  // 30 mats of 0.61 × 1.83 m; the thirty-first is the one in the key, 3.2 × 7 mm
  expect(sides.filter(([a, b]) => a === 610 && b === 1830).length).toBe(30);
});

test("PAPER-8: the scale stands beside its bar, and the bar is as long as it says", () => {
  const paper = layHallSheet(aHallSheet(aHall()), "a4");
  const says = textsOf(figureOf(paper)).map((it) => it.text);
  // in one line or, where the drawing is narrow, in two
  expect(says.filter((it) => it.endsWith(`Scale 1:${paper.scale} on A4, printed at 100 %`)).length).toBe(1);
  const [length] = says.flatMap((it) => /^(\d+) m(\. Scale|$)/.exec(it)?.[1] ?? []);
  const quarters = figureOf(paper).filter((mark) => mark.kind === "shape" && mark.width === 0.2);
  const xs = quarters.flatMap((mark) => (mark.kind === "shape" ? mark.points.map(([x]) => x) : []));
  expect(quarters.length).toBe(4);
  expect(((Math.max(...xs) - Math.min(...xs)) * (paper.scale ?? 0)) / 1000).toBeCloseTo(Number(length), 6);
});

test("PAPER-9: every mark is ink on paper, and what stays, moves, is clear and is the teacher’s have lines of their own", () => {
  const hall = aHall({
    fixtures: [stage, { label: "Chairs", outline: box(0, 0, 1, 2), movable: true }],
    keepClear: [{ label: "Way out", outline: box(7, 0, 1, 1.5) }],
    teacher: strip,
  });
  const paper = layHallSheet(aHallSheet(hall), "a4");
  const dashes = new Set(
    figureOf(paper).flatMap((mark) => (mark.kind === "text" ? [] : [JSON.stringify(mark.dash ?? [])])),
  );
  // whole lines; the edges of what moves, of what stays clear and of the teacher's zone; the dots in what stays clear
  expect(dashes.size).toBe(5);
  const key = textsOf(figureOf(paper)).map((it) => it.text);
  for (const says of ["mat, the bar at the head", "stays", "can be moved", "keep clear", "teacher"])
    expect(key).toContain(says);
});

test("PAPER-10: a wall has its length on the drawing, or among the words where it is too short", () => {
  // a bay 0.20 m deep: at 1:100 its sides are 2 mm long
  const outline: Corners = [
    [0, 0],
    [8, 0],
    [8, 12],
    [5, 12],
    [5, 12.2],
    [3, 12.2],
    [3, 12],
    [0, 12],
  ];
  const paper = layHallSheet(aHallSheet(aHall({ outline })), "a4");
  const drawn = textsOf(figureOf(paper)).map((it) => it.text);
  expect(drawn).toContain("back wall 8.00");
  expect(drawn).not.toContain("0.20");
  expect(wordsOf(paper)).toContain("Corner to corner, in metres: D–E 0.20; F–G 0.20.");
});

test("PAPER-10: the corner that a set-out is measured from has its letter", () => {
  const hall = aHall({ axis: 30 });
  const sheet = aHallSheet(hall);
  const corner = /from corner ([A-D]),/.exec(sheet.sections[0]?.items[0] ?? "")?.[1];
  const drawn = textsOf(figureOf(layHallSheet(sheet, "a4"))).map((it) => it.text);
  expect(drawn).toContain(corner);
});

test("PAPER-11: the chain begins at the wall with the figures of the set-out", () => {
  const drawn = textsOf(figureOf(layHallSheet(aHallSheet(aHall({ teacher: strip })), "a4"))).map(
    (it) => it.text,
  );
  const { setOut } = matPlan(aHall({ teacher: strip }));
  const [line, next] = setOut.lines;
  for (const figure of [line?.first, line?.from, (next?.from ?? 0) - (line?.from ?? 0)])
    expect(drawn).toContain(((figure ?? 0) / 1000).toFixed(2));
});

test("PAPER-11: where lines begin at a slant no chain crosses a mat to the wall", () => {
  const outline: Corners = [
    [0, 0],
    [12, 1],
    [13, 9],
    [5, 12],
    [-1, 8],
  ];
  const hall = aHall({ outline, axis: 30 });
  const plan = matPlan(hall);
  const drawn = textsOf(figureOf(layHallSheet(aHallSheet(hall), "a4"))).map((it) => it.text);
  // lines are measured from a corner: that distance is on no wall, so only the list has it
  expect(plan.setOut.linesFrom).toMatch(/^corner/);
  expect(drawn).not.toContain(((plan.setOut.lines[0]?.from ?? 0) / 1000).toFixed(2));
});

test("PAPER-12: every mat has its number once, as the words count", () => {
  const numbers = textsOf(figureOf(layHallSheet(aHallSheet(aHall()), "a4"))).map((it) => it.text);
  const { lines } = matPlan(aHall()).setOut;
  const expected = lines.flatMap((line, row) => line.centres.map((_, place) => `${row + 1}.${place + 1}`));
  expect(expected.length).toBe(30);
  for (const number of expected) expect(numbers.filter((it) => it === number).length).toBe(1);
});

test("PAPER-12: mats without lines are numbered through", () => {
  const hall = aHall({ outline: box(0, 0, 6, 6) });
  const plan = arrangedPlan(hall, "most", { steps: 5 });
  const numbers = textsOf(figureOf(layHallSheet(aHallSheet(hall, { plan }), "a4"))).map((it) => it.text);
  for (let mat = 1; mat <= plan.count; mat++) expect(numbers).toContain(String(mat));
});

test("PAPER-4: the ways that the words tell of are drawn, from mats to a door, and stand in the key", () => {
  const room = aHall({ gaps: { side: 0.5, end: 0.3, wall: 0.5 } });
  const door = doorSwing(room.outline, { wall: 0, hingeAt: 3000, width: 1000, reaches: "on" });
  const sheet = aHallSheet({ ...room, keepClear: [door] });
  expect(sheet.sections[1]?.items.at(-1)).toMatch(/^Every mat has a way 0\.50 m wide to a door/);
  // each way begins in the middle of its mat
  const begun = sheet.ways.filter(([from]) =>
    sheet.plan.mats.some(({ centre }) => centre[0] === from[0] && centre[1] === from[1]),
  );
  expect(begun.length).toBe(sheet.plan.count);
  // and some end at the shut leaf, from 3 to 4 m along the wall, half a way's width short of it
  const ends = sheet.ways.map(([, to]) => to).filter(([x, y]) => x > 2900 && x < 4100 && y < 300);
  expect(ends.length).toBeGreaterThan(0);
  const paper = layHallSheet(sheet, "a4");
  expect(textsOf(figureOf(paper)).map((it) => it.text)).toContain("way to a door");
  // one in the key beside them
  const drawn = figureOf(paper).filter((mark) => mark.kind === "line" && mark.width === 0.18);
  expect(drawn.length).toBe(sheet.ways.length + 1);
});

test("PAPER-13: the name of a door and that of the zone round it do not lie on one another", () => {
  const hall = aHall({ keepClear: [{ label: "Way out", outline: box(1, 0, 1.2, 1.2) }] });
  const door = doorSwing(hall.outline, {
    wall: 0,
    hingeAt: 1100,
    width: 1000,
    reaches: "on",
    label: "Fire exit",
  });
  const paper = layHallSheet(aHallSheet({ ...hall, keepClear: [...hall.keepClear, door] }), "a4");
  const [zone, leaf] = ["K1", "D1"].map((name) =>
    textsOf(figureOf(paper)).find((it) => it.text.startsWith(name)),
  );
  if (zone === undefined || leaf === undefined) throw new Error("a name is missing");
  expect(Math.abs(zone.at[1] - leaf.at[1]) >= 2 || Math.abs(zone.at[0] - leaf.at[0]) >= 4).toBe(true);
});

/** How far every mark reaches, in millimetres. */
function reachOf(paper: Paper) {
  const points = marksOf(paper).flatMap((mark) => {
    if (mark.kind !== "text") return mark.points;
    // the space at the end of a line leaves no ink
    const width = textWidth(mark.text.trimEnd(), mark.size, mark.weight);
    const before = mark.anchor === "start" ? 0 : mark.anchor === "middle" ? width / 2 : width;
    if (mark.turn !== 0) return [mark.at];
    return [
      [mark.at[0] - before, mark.at[1]],
      [mark.at[0] - before + width, mark.at[1]],
    ] as const;
  });
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

test("PAPER-14: any hall goes inside the margins, in type of 8 pt or more, and loses no word", () => {
  const sizes = constantFrom(["a4", "metric"] as const, ["letter", "feet"] as const);
  assert(
    property(randomHalls(), sizes, (hall: Hall, [size, units]) => {
      const sheet = aHallSheet(hall, { units });
      const paper = layHallSheet(sheet, size);
      const { left, right, top, bottom } = reachOf(paper);
      // a hair less than the 13 mm margin, for the thickness of lines
      expect(Math.min(left, top, paper.width - right, paper.height - bottom)).toBeGreaterThan(12.5);
      expect(paper.typeSize).toBeGreaterThanOrEqual(8);
      const words = wordsOf(paper);
      for (const says of [...sheet.lead, ...sheet.sections.flatMap((it) => [it.title, ...it.items])])
        expect(words).toContain(says);
    }),
    { numRuns: 60 },
  );
}, 60_000);

test("PAPER-14: a long hall lies or stands on one page, whichever shows it larger", () => {
  const long = layHallSheet(aHallSheet(aHall({ outline: box(0, 0, 7, 36) })), "a4");
  const wide = layHallSheet(aHallSheet(aHall({ outline: box(0, 0, 36, 7) })), "a4");
  expect([long.width, long.height, long.pages.length]).toEqual([210, 297, 1]);
  expect([wide.width, wide.height, wide.pages.length]).toEqual([297, 210, 1]);
});

test("PAPER-14: 15 lines of mats go on one page", () => {
  // 33 m deep: ⌊(32 + 0.3) / 2.13⌋ = 15 lines
  const hall = aHall({ outline: box(0, 0, 8, 33) });
  const paper = layHallSheet(aHallSheet(hall), "a4");
  expect(matPlan(hall).setOut.lines.length).toBe(15);
  expect(paper.pages.length).toBe(1);
});

test("PAPER-15: words that do not fit go on on a second page, which the first one says, and none is lost", () => {
  const fixtures = Array.from({ length: 160 }, (_, index) => ({
    label: `Bench with a long name, kept for the choir, number ${index}`,
    outline: box(0.2 + (index % 16) * 0.45, 0.5 + Math.floor(index / 16), 0.2, 0.3),
  }));
  const sheet = aHallSheet(aHall({ fixtures }));
  const paper = layHallSheet(sheet, "a4");
  expect(paper.pages.length).toBeGreaterThan(1);
  const first = paper.pages[0]?.parts.map((it) => it.says).join(" ") ?? "";
  expect(first).toContain("It goes on on page 2.");
  // the foot of each page stands between the pieces of the list
  const list = paper.pages.flatMap(({ parts }) =>
    parts.filter((it) => it.role === "item").map((it) => it.says),
  );
  for (const { label } of fixtures) expect(list.join(" ").includes(label)).toBe(true);
});

test("PAPER-16: no line is wider than its column, and no figure is parted from its unit", () => {
  const hall = aHall({ fixtures: [stage], teacher: strip });
  const paper = layHallSheet(aHallSheet(hall, { units: "feet" }), "letter");
  const lines = paper.pages.flatMap(({ parts }) =>
    parts.filter((it) => it.role === "item").flatMap((it) => textsOf(it.marks)),
  );
  expect(lines.length).toBeGreaterThan(20);
  for (const { text } of lines) {
    expect(text.trimEnd()).not.toMatch(/\d$|\bft$/);
  }
});

test("PAPER-14: what stands half outside the walls is cut off where the drawing ends", () => {
  const hall = aHall({ fixtures: [{ label: "Lean-to", outline: box(-30, 5, 32, 2) }] });
  const { left } = reachOf(layHallSheet(aHallSheet(hall), "a4"));
  expect(left).toBeGreaterThan(12.5);
});

test("PAPER-16: the lines of a sentence, heard one after the other, are the sentence", () => {
  const paper = layHallSheet(aHallSheet(aHall({ fixtures: [stage], teacher: strip })), "a4");
  const said = paper.pages.flatMap(({ parts }) =>
    parts.filter((it) => it.role === "item" || it.role === "paragraph"),
  );
  expect(said.filter((it) => textsOf(it.marks).length > 1).length).toBeGreaterThan(5);
  for (const { says, marks } of said) {
    const heard = textsOf(marks).map((it) => it.text);
    // spaces that bind are heard as plain ones
    expect(heard.join("").replaceAll("\u00A0", " ")).toBe(says);
  }
});

test("PAPER-17: the same sheet gives the same paper", () => {
  const hall = aHall({ fixtures: [stage], teacher: strip });
  expect(layHallSheet(aHallSheet(hall), "a4")).toEqual(layHallSheet(aHallSheet(hall), "a4"));
});
