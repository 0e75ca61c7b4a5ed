import { layHallSheet, MM_PER_POINT, type Paper, textWidth } from "#core/papers";
import { aHall, aHallSheet, readPdf, wordsOfPage } from "#testing";
import { OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import { expect, test } from "vitest";
import { pdfPapers } from "./pdf-papers.ts";

type Corners = [number, number][];

const strip: Corners = [
  [0, 9.5],
  [8, 9.5],
  [8, 12],
  [0, 12],
];

function aPaper(): Paper {
  const hall = aHall({ teacher: { outline: strip }, postedCapacity: 60 });
  return layHallSheet(aHallSheet(hall, { address: "Barn Lane, Marlsford" }), "a4");
}

test("the PDF is one page of A4 with the title, the language and the day it was made", async () => {
  const read = await readPdf(await pdfPapers().pdf(aPaper()));
  expect(read.numPages).toBe(1);
  const { width, height } = (await read.getPage(1)).getViewport({ scale: 1 });
  // 210 × 297 mm in points of 1/72 in
  expect([width, height].map((it) => Math.round(it * 10) / 10)).toEqual([595.3, 841.9]);
  const { info } = await read.getMetadata();
  expect(info).toMatchObject({
    Title: "Hall sheet: Tithe Barn Hall",
    Language: "en-GB",
    CreationDate: "D:20261125120000Z",
  });
});

test("in feet on Letter it is one page of 8 1/2 by 11 in", async () => {
  const paper = layHallSheet(aHallSheet(aHall(), { units: "feet", locale: "en-US" }), "letter");
  const read = await readPdf(await pdfPapers().pdf(paper));
  const { width, height } = (await read.getPage(1)).getViewport({ scale: 1 });
  expect([width, height].map(Math.round).toSorted((a, b) => a - b)).toEqual([612, 792]);
  expect(read.numPages).toBe(1);
});

test("every word of the sheet can be read from the PDF", async () => {
  const hall = aHall({ teacher: { outline: strip }, postedCapacity: 60 });
  const sheet = aHallSheet(hall, { address: "Barn Lane, Marlsford" });
  const read = await readPdf(await pdfPapers().pdf(layHallSheet(sheet, "a4")));
  const words = await wordsOfPage(read, 1);
  for (const says of [sheet.title, ...sheet.under, ...sheet.lead, sheet.foot]) expect(words).toContain(says);
  for (const { title, items } of sheet.sections)
    for (const says of [title, ...items]) expect(words).toContain(says);
});

test("a wall of 8 m is 8 m over the scale long in the PDF", async () => {
  const paper = aPaper();
  const page = await (await readPdf(await pdfPapers().pdf(paper))).getPage(1);
  const { fnArray, argsArray } = await page.getOperatorList();
  // paths come as [operation, [points], bounds]; the walls are the path as wide and as high as the hall
  const boxes = fnArray.flatMap((operation, index): readonly (readonly [number, number])[] => {
    if (operation !== OPS.constructPath) return [];
    const path: unknown = argsArray[index];
    const bounds: unknown = Array.isArray(path) ? path[2] : null;
    if (!(bounds instanceof Float32Array)) return [];
    const [left = 0, bottom = 0, right = 0, top = 0] = bounds;
    return [[right - left, top - bottom]];
  });
  const inHall = (points: number): number => (points * MM_PER_POINT * (paper.scale ?? 0)) / 1000;
  const walls = boxes.filter(
    ([width, height]) => Math.abs(inHall(width) - 8) < 0.001 && Math.abs(inHall(height) - 12) < 0.001,
  );
  expect(walls.length).toBe(1);
});

test("a screen reader hears title, headings and lists in their order, and the drawing in words", async () => {
  const page = await (await readPdf(await pdfPapers().pdf(aPaper()))).getPage(1);
  const tree = await page.getStructTree();
  const roles: string[] = [];
  const alts: string[] = [];
  const visit = (node: object): void => {
    if ("role" in node) roles.push(String(node.role));
    if ("alt" in node) alts.push(String(node.alt));
    if ("children" in node && Array.isArray(node.children)) for (const child of node.children) visit(child);
  };
  visit(tree);
  expect(roles.filter((it) => it === "H1").length).toBe(1);
  expect(roles.filter((it) => it === "Figure").length).toBe(1);
  // laying the mats, doors, what it does not decide, to fill in
  expect(roles.filter((it) => it === "H2").length).toBe(4);
  expect(roles.filter((it) => it === "L").length).toBe(4);
  expect(roles.indexOf("H1")).toBeLessThan(roles.indexOf("Figure"));
  expect(roles.filter((it) => it === "LBody").length).toBeGreaterThan(12);
  expect(alts[0]).toContain("Plan of Tithe Barn Hall from above, scale 1:");
});

test("the same paper is the same file", async () => {
  const [one, other] = [await pdfPapers().pdf(aPaper()), await pdfPapers().pdf(aPaper())];
  expect(Buffer.compare(Buffer.from(one), Buffer.from(other))).toBe(0);
});

test("PAPER-16: the widths that lines are broken by are those of the face in the file", async () => {
  const text = "Line 1: 2.76 m from the front wall; ½ × 3 “Łódź” – Žižkov’s hall";
  const paper: Paper = {
    ...aPaper(),
    pages: [
      {
        parts: (["regular", "bold"] as const).map((weight, index) => ({
          role: "paragraph",
          says: text,
          marks: Array.from(text).map((letter, at) => ({
            kind: "text",
            text: letter === " " ? "n" : letter,
            // each on a line of its own, so that the reader keeps them apart
            at: [20 + index * 100, 20 + at * 4 + index * 2],
            size: 20,
            weight,
            anchor: "start",
            turn: 0,
          })),
        })),
      },
    ],
  };
  const content = await (await (await readPdf(await pdfPapers().pdf(paper))).getPage(1)).getTextContent();
  const drawn = content.items.flatMap((it) => ("str" in it && it.str.trim() !== "" ? [it] : []));
  expect(drawn.length).toBe(2 * Array.from(text).length);
  for (const [index, it] of drawn.entries()) {
    const weight = index < drawn.length / 2 ? "regular" : "bold";
    expect(it.width * MM_PER_POINT).toBeCloseTo(textWidth(it.str, 20, weight), 2);
  }
});

test("letters of other alphabets are written as a question mark, and nothing else is lost", async () => {
  const paper = layHallSheet(aHallSheet(aHall({ name: "Зал Hall" })), "a4");
  const words = await wordsOfPage(await readPdf(await pdfPapers().pdf(paper)), 1);
  expect(words).toContain("??? Hall");
});
