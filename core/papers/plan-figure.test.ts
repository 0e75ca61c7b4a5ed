import { arrangedPlan, doorSwing, matPlan, wallsOf } from "#core/hall";
import { aHall, aHallSheet, figureOf, textsOf, wordsOfPaper } from "#testing";
import { expect, test } from "vitest";
import { layHallSheet } from "./lay-hall-sheet.ts";
import type { Paper } from "./paper-types.ts";

type Corners = [number, number][];

function box(x: number, y: number, width: number, depth: number): Corners {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ];
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
  expect(wordsOfPaper(paper)).toContain("Corner to corner, in metres: D–E 0.20; F–G 0.20.");
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
