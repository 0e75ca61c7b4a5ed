import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { readPdf, temporaryFolder, wordsOfPage } from "#testing";
import { expect, it } from "vitest";
import { inTerminal } from "./pretend-terminal.ts";

function aFolder(hall: object = {}): string {
  const folder = temporaryFolder();
  const loft: object = JSON.parse(readFileSync(join(import.meta.dirname, "golden/loft.json"), "utf8"));
  writeFileSync(join(folder, "loft.json"), JSON.stringify({ ...loft, ...hall }));
  return folder;
}

it("writes a PDF that says what the terminal said", async () => {
  const folder = aFolder();
  const { code, out, err } = await inTerminal(["sheet", "loft.json", "--out", "loft.pdf"], { folder });
  expect([code, err]).toEqual([0, ""]);
  const read = await readPdf(readFileSync(join(folder, "loft.pdf")));
  const words = await wordsOfPage(read, 1);
  const [posted = "", mats = ""] = out.split("\n");
  expect(posted).toBe("The hall’s posted number is 40 people: 39 on mats and 1 beside them.");
  expect(words).toContain(posted);
  expect(words).toContain(mats);
  expect(words).toContain("Made on 25 November 2026 from the file loft.json.");
  expect(out).toContain(`Written to ${join(folder, "loft.pdf")}: 1 page, drawn 1:`);
});

it("a file that is there stays, unless it is to be replaced", async () => {
  const folder = aFolder();
  writeFileSync(join(folder, "loft.pdf"), "mine");
  const first = await inTerminal(["sheet", "loft.json", "--out", "loft.pdf"], { folder });
  expect([first.code, first.out]).toEqual([2, ""]);
  expect(first.err).toContain("[out-exists]");
  expect(readFileSync(join(folder, "loft.pdf"), "utf8")).toBe("mine");
  const second = await inTerminal(["sheet", "loft.json", "--out", "loft.pdf", "--replace"], { folder });
  expect(second.code).toBe(0);
  expect(readFileSync(join(folder, "loft.pdf"), "utf8").slice(0, 5)).toBe("%PDF-");
});

it("a folder that is not there is told, with what to do", async () => {
  const { code, err } = await inTerminal(["sheet", "loft.json", "--out", "nowhere/loft.pdf"], {
    folder: aFolder(),
  });
  expect(code).toBe(2);
  expect(err).toBe(
    "The file nowhere/loft.pdf stands in a folder that does not exist. (at --out) Give another name or another folder. [out-unwritable]\n",
  );
});

it("in feet it is for Letter, and every way that mats stand can be asked for", async () => {
  const folder = aFolder({ arrangement: "facing" });
  const feet = await inTerminal(["sheet", "loft.json", "--units", "feet", "--json"], { folder });
  const answer = JSON.parse(feet.out);
  expect([answer.page.width, answer.page.height].toSorted((a, b) => a - b)).toEqual([215.9, 279.4]);
  expect(answer.lead[1]).toContain("in two banks that face a clear middle");
  const staggered = await inTerminal(["sheet", "loft.json", "--arrangement", "staggered"], { folder });
  expect(staggered.out).toContain("in staggered lines");
});

it.each([
  [["--paper", "a3"], "--paper", "Did you mean a4?"],
  [["--units", "yards"], "--units", "There is: metric, feet."],
  [["--arrangement", "rounds"], "--arrangement", "Did you mean round?"],
])("%j is told with what there is", async (words, place, next) => {
  const { code, err } = await inTerminal(["sheet", "loft.json", ...words], { folder: aFolder() });
  expect(code).toBe(2);
  expect(err).toContain(`(at ${place}) ${next} [option-value-unknown]`);
});

it("letters that the PDF has not are told", async () => {
  const folder = aFolder({ name: "Зал" });
  const { out } = await inTerminal(["sheet", "loft.json", "--out", "loft.pdf"], { folder });
  expect(out).toContain("The PDF has no letter for З а л; a ? stands for each.");
});

const zoo = join(import.meta.dirname, "zoo/hall");

it.each(readdirSync(zoo))(
  "of the ugly file %s it tells the same problems as the plan, and writes nothing",
  async (file) => {
    const sheet = await inTerminal(["sheet", file, "--out", "never.pdf"], { folder: zoo });
    const fit = await inTerminal(["fit", file], { folder: zoo });
    expect([sheet.code, sheet.out]).toEqual([2, ""]);
    expect(sheet.err).toBe(fit.err);
  },
);
