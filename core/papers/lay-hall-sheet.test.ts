import { type Hall, matPlan } from "#core/hall";
import { aHall, aHallSheet, marksOf, randomHalls, textsOf, wordsOfPaper } from "#testing";
import { assert, constantFrom, property } from "fast-check";
import { expect, test } from "vitest";
import { layHallSheet } from "./lay-hall-sheet.ts";
import type { Paper } from "./paper-types.ts";
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

const stage = { label: "Stage", outline: box(0, 10.5, 8, 1.5) };
const strip = { outline: box(0, 8.5, 8, 2) };

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
      const words = wordsOfPaper(paper);
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
