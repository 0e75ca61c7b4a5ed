import type { HallSheet, SheetSection } from "./hall-sheet-types.ts";
import type { Block } from "./text-flow.ts";
import { unfigured } from "./wall-marks.ts";

/** Title, what stands under it, and the lead: across the whole page. Sizes in points. */
export function headBlocks({ title, under, lead }: HallSheet): readonly Block[] {
  const [posted = "", ...others] = lead;
  return [
    { role: "title", text: title, size: 19, weight: "bold", before: 0 },
    ...under.map((text): Block => ({ role: "paragraph", text, size: 10, weight: "regular", before: 0 })),
    { role: "paragraph", text: posted, size: 12, weight: "bold", before: 1.5 },
    ...others.map(
      // how many to lay where that is fewer than are drawn must not be missed
      (text, index): Block => ({
        role: "paragraph",
        text,
        size: 10.5,
        weight: index === 0 ? "regular" : "bold",
        before: 0.6,
      }),
    ),
  ];
}

/** The sections as they flow through the columns, in type of so many points. */
export function sectionBlocks(sheet: HallSheet, size: number, ratio: number): readonly Block[] {
  return withShortWalls(sheet, ratio).flatMap(({ title, items, blanks = [] }) => [
    { role: "heading", text: title, size: size + 1, weight: "bold", before: 2.6 } as const,
    ...items.map(
      (text) => ({ role: "item", text, size, weight: "regular", before: 0.7, hanging: 2.5 }) as const,
    ),
    ...blanks.map(
      (text) => ({ role: "item", text, size, weight: "regular", before: 2.4, blank: true }) as const,
    ),
  ]);
}

/** More than these would be a list that nobody looks at. */
const MOST_WALLS = 24;

/** Walls without a figure on the drawing have theirs among the words, before what the hall decides. */
function withShortWalls(sheet: HallSheet, ratio: number): readonly SheetSection[] {
  const walls = unfigured(sheet.hall, ratio, sheet.units);
  if (walls.length === 0) return sheet.sections;
  const unit = sheet.units === "metric" ? ", in metres" : "";
  const listed = walls.slice(0, MOST_WALLS).join("; ");
  const more = walls.length > MOST_WALLS ? `; and ${walls.length - MOST_WALLS} more, as they are drawn` : "";
  const section = {
    title: "Walls too short for a figure",
    items: [`Corner to corner${unit}: ${listed}${more}.`],
  };
  return [...sheet.sections.slice(0, -2), section, ...sheet.sections.slice(-2)];
}
