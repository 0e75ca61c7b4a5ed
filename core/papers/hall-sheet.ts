// Example: Tithe Barn Hall says first that 60 people may be in the room, then that 24 mats are drawn, and last who decides.
// Invariant: whatever the drawing shows stands in words too, and what the hall decides is never said as ours.
import { placeOfMat, setOutInWords, waysToDoors } from "#core/hall";
import type { Point } from "#kernels/geometry";
import { formatLength } from "#core/words";
import type { HallSheet, HallSheetInput, SheetSection } from "./hall-sheet-types.ts";
import { leadWords } from "./lead-words.ts";
import { sameAgain } from "./same-again.ts";
import { shapeNames } from "./shape-names.ts";
import { standingWords } from "./standing-words.ts";
import { wayWords } from "./way-words.ts";

/**
 * What the hall sheet says: a paper from which anybody can lay the mats of any plan. Lengths come in millimetres and
 * are said in the units of the sheet. `layHallSheet` puts it on pages.
 */
export function hallSheet(input: HallSheetInput): HallSheet {
  const { hall, plan, units, locale, madeOn, madeFrom } = input;
  const named = shapeNames(hall);
  const ways = wayWords(input, named);
  return {
    title: shortened(hall.name, 120),
    under: [input.className ?? "", input.address ?? ""]
      .filter((it) => it.trim() !== "")
      .map((it) => shortened(it, 240)),
    lead: leadWords(input),
    hall,
    plan,
    inTheWay: ways.inTheWay,
    ways: ways.width === 0 ? [] : pieces(waysToDoors(hall, plan, ways.width)),
    named,
    sections: [
      {
        title: "Laying the mats",
        items: [...laying(input), ...numberWords(input), gapWords(input)],
      },
      { title: "Doors and ways out", items: ways.items },
      ...standing(standingWords(hall, named, units)),
      undecided(input),
      toFillIn,
    ],
    foot: `Made on ${madeOn.words} from ${madeFrom}.`,
    units,
    locale,
    madeOn: madeOn.iso,
  };
}

/** The ways of neighbours run together: each piece of them once. */
function pieces(lines: readonly (readonly Point[])[]): readonly (readonly [Point, Point])[] {
  const found = new Map<string, readonly [Point, Point]>();
  for (const line of lines)
    for (const [index, to] of line.entries()) {
      const from = line[index - 1];
      if (from !== undefined) found.set(JSON.stringify([from, to]), [from, to]);
    }
  return [...found.values()];
}

/** A name longer than any hall's would push the plan off the page. */
function shortened(text: string, most: number): string {
  const letters = Array.from(text.trim().replace(/\s+/g, " "));
  return letters.length <= most ? letters.join("") : `${letters.slice(0, most - 1).join("")}…`;
}

/** A paper in feet has no figures in metres to send the reader to. */
function laying({ plan, units }: HallSheetInput): readonly string[] {
  return sameAgain(setOutInWords(plan, units)).map((it) =>
    it.replace("; the figures in metres are exact", ""),
  );
}

function numberWords({ plan }: HallSheetInput): readonly string[] {
  if (plan.count === 0) return [];
  const row = plan.arrangement === "round" ? "ring" : "line";
  return placeOfMat(plan, 0).line > 0
    ? [`On the plan 2.3 is mat 3 of ${row} 2; the filled bar is the head end.`]
    : ["Mats are numbered on the plan; the filled bar is the head end."];
}

function gapWords({ hall, plan, units }: HallSheetInput): string {
  const said = (millimetres: number): string => formatLength(millimetres, units);
  const { side, end, wall } = hall.gaps;
  const least = `Everywhere at least ${said(side)} between long sides, ${said(end)} between head and foot, ${said(wall)} to walls and what stands there.`;
  return plan.count === 0 ? `The plan was made for these gaps: ${least}` : least;
}

function standing(items: readonly string[]): readonly SheetSection[] {
  return items.length === 0 ? [] : [{ title: "On the floor", items }];
}

function undecided({ locale }: HallSheetInput): SheetSection {
  const code = locale === "en-US" ? "the local building and fire code" : "the local code";
  return {
    title: "What this sheet does not decide",
    items: [
      `How many people may be in the room, and which doors are exits: the hall, its fire risk assessment, ${code} and the fire service.`,
      "What is insured, and for how many: the insurer.",
      "Who should take part: each person, with a doctor where health is in doubt.",
      "The hall as it is today: if a wall, a door or furniture is not where it is drawn, measure again.",
    ],
  };
}

const toFillIn: SheetSection = {
  title: "To fill in at the hall",
  items: [],
  blanks: ["Assembly point", "Extinguishers", "First-aid box", "Whom to call"],
};
