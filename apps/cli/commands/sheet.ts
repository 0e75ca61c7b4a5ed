import { hallSheetView } from "#app/views";
import {
  type Arrangement,
  arrangedPlan,
  arrangements,
  type CapacityLimits,
  type HallDocument,
  hallDocumentSchema,
} from "#core/hall";
import { type HallSheet, missingLetters, type Paper, type PaperSize } from "#core/papers";
import { bad, good, type LengthUnits, problem, readDocument, type Result } from "#core/words";
import type { Answer, Command, Given } from "../command.ts";
import { nearest } from "../nearest.ts";
import { readCaps } from "../read-caps.ts";
import { readInput } from "../read-input.ts";
import { writeNewFile } from "../write-new-file.ts";
import type { World } from "../world.ts";

export const sheet: Command = {
  name: "sheet",
  summary: "the hall sheet: one page from which anyone can lay the mats",
  words: ["HALL.json"],
  options: {
    out: { value: "FILE.pdf", says: "write the sheet to a PDF; without it its words are printed" },
    replace: { says: "replace the PDF if it is there already" },
    paper: { value: "a4|letter", says: "what the printer holds; letter with --units feet, else a4" },
    units: { value: "metric|feet", says: "metres, or feet and inches; metric unless told" },
    arrangement: {
      value: "NAME",
      says: "how the mats stand; as HALL.json has it unless told",
    },
    "mats-owned": { value: "NUMBER", says: "mats that there are to lie on" },
    "own-cap": { value: "NUMBER", says: "the most you want" },
    "insurer-cap": { value: "NUMBER", says: "the most your insurer covers" },
  },
  details: `
HALL.json is a hall as hallful schema hall describes it, in metres; - reads
standard input. Mats can stand in lines, staggered, facing, round, or wherever
the most fit (most). The drawing is to scale: print the PDF at 100 %, and check
the scale bar with a ruler. With --json the answer has the words of the sheet,
the scale, the size of the page and the number of pages.`,
  run: async (given, world) => {
    const asked = readSheetOptions(given);
    if (!asked.ok) return asked;
    const [name = "-"] = given.words;
    const input = await readInput(name, world);
    if (!input.ok) return input;
    const read = readDocument(hallDocumentSchema, input.value);
    if (!read.ok) return read;
    const from = name === "-" ? "standard input" : `the file ${name.split(/[\\/]/).at(-1)}`;
    const answer = await sheetOf(read.value.value, from, asked.value, given, world);
    return answer.ok ? good({ ...answer.value, unused: read.value.unused }) : answer;
  },
};

type SheetAsked = {
  readonly units: LengthUnits;
  readonly size: PaperSize;
  readonly arrangement: Arrangement | null;
  readonly caps: CapacityLimits;
};

/** Problems: "option-value-unknown", "cap-unreadable". */
function readSheetOptions(given: Given): Result<SheetAsked> {
  const units = oneOf<LengthUnits>(given, "units", ["metric", "feet"], "metric");
  if (!units.ok) return units;
  const size = oneOf<PaperSize>(given, "paper", ["a4", "letter"], units.value === "feet" ? "letter" : "a4");
  if (!size.ok) return size;
  const arrangement = oneOf<Arrangement | null>(given, "arrangement", arrangements, null);
  if (!arrangement.ok) return arrangement;
  const caps = readCaps(given);
  if (!caps.ok) return caps;
  return good({
    units: units.value,
    size: size.value,
    arrangement: arrangement.value,
    caps: caps.value,
  });
}

function oneOf<Word extends string | null>(
  given: Given,
  option: string,
  words: readonly (Word & string)[],
  usual: Word,
): Result<Word> {
  const value = given.values[option];
  if (value === undefined) return good(usual);
  const found = words.find((it) => it === value.toLowerCase());
  if (found !== undefined) return good(found);
  const near = nearest(value, words);
  const next = near === undefined ? `There is: ${words.join(", ")}.` : `Did you mean ${near}?`;
  const says = `“${value.slice(0, 40)}” is nothing that --${option} knows.`;
  return bad(problem("option-value-unknown", `--${option}`, says, next));
}

async function sheetOf(
  hall: HallDocument,
  from: string,
  { units, size, arrangement, caps }: SheetAsked,
  given: Given,
  world: World,
): Promise<Result<Answer>> {
  const { matsOwned, ownCap, insurerCap } = caps;
  const view = hallSheetView({
    practice: { units, locale: units === "feet" ? "en-US" : "en-GB" },
    hall,
    forClass: {
      name: "",
      mats: null,
      matsOwned: matsOwned ?? null,
      ownCap: ownCap ?? null,
      insurerCap: insurerCap ?? null,
    },
    today: world.now().slice(0, 10),
    madeFrom: from,
    size,
    planOf: (sound, usual) => arrangedPlan(sound, arrangement ?? usual),
  });
  if (!view.ok) return view;
  const { sheet: said, paper } = view.value;
  const out = given.values["out"];
  if (out === undefined) return good({ text: inWords(said), json: sheetJson(said, paper, null) });
  const { pdfPapers } = await import("#adapters/papers");
  const written = await writeNewFile(out, await pdfPapers().pdf(paper), given.flags.has("replace"), world);
  if (!written.ok) return written;
  const pages = paper.pages.length === 1 ? "1 page" : `${paper.pages.length} pages`;
  const missing = missingLetters(paper);
  const note =
    missing.length === 0 ? "" : `The PDF has no letter for ${missing.join(" ")}; a ? stands for each.\n`;
  const text = `${said.lead.join("\n")}\nWritten to ${written.value}: ${pages}, drawn 1:${paper.scale}.\n${note}`;
  return good({ text, json: sheetJson(said, paper, written.value) });
}

function inWords({ title, under, lead, sections, foot }: HallSheet): string {
  const parts = sections.flatMap((it) => [
    "",
    it.title,
    ...it.items.map((item) => `  ${item}`),
    ...(it.blanks ?? []).map((blank) => `  ${blank}:`),
  ]);
  return `${[title, ...under, "", ...lead, ...parts, "", foot].join("\n")}\n`;
}

function sheetJson(
  { title, under, lead, sections, foot, plan }: HallSheet,
  paper: Paper,
  file: string | null,
) {
  const { width, height, scale, typeSize, pages } = paper;
  const page = { width, height, scale, typeSize, pages: pages.length };
  return { title, under, lead, mats: plan.count, sections, foot, page, file };
}
