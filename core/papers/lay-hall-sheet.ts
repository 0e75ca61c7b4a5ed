// Example: a hall of 8.20 by 13.40 m goes on one A4 page at 1:75, its words in 9.5 pt beside the drawing.
// Invariant: a page never loses a word; if the words do not fit beside and below the drawing they go on on the next.
import { type DrawingScale, drawingScales } from "./drawing-scale.ts";
import type { HallSheet } from "./hall-sheet-types.ts";
import { columnsRound, type PageForm, pageForms } from "./page-forms.ts";
import { onePage, type PagePlan, severalPages } from "./page-parts.ts";
import { figureSize } from "./plan-figure.ts";
import { sectionBlocks } from "./sheet-blocks.ts";
import type { Paper, PaperPart, PaperSize } from "./paper-types.ts";
import { type Column, flowText } from "./text-flow.ts";

/** Points, the largest first; under 8 pt words are not read in a dim hall. */
const LEAST_TYPE = 8;
const typeSizes = [10, 9.5, 9, 8.5, LEAST_TYPE];

/**
 * The sheet on paper: one page, upright or lying, with the drawing at the largest scale of a ruler that leaves room
 * for the words in at least 8 pt. A drawing twice as large is worth as much as 3 pt of type. Where no scale
 * leaves room, the words go on on further pages.
 */
export function layHallSheet(sheet: HallSheet, size: PaperSize): Paper {
  const forms = pageForms(sheet, size);
  const [best] = forms.flatMap((form) => plansOf(sheet, form)).toSorted((a, b) => b.worth - a.worth);
  const laid = best === undefined ? severalPages(sheet, size, forms[0]) : onePage(sheet, size, best);
  return { title: `Hall sheet: ${sheet.title}`, language: sheet.locale, size, madeOn: sheet.madeOn, ...laid };
}

function plansOf(sheet: HallSheet, form: PageForm): readonly PagePlan[] {
  return drawingScales(sheet.units).flatMap((scale) =>
    (["beside", "above"] as const).flatMap((place) => planAt(sheet, form, scale, place)),
  );
}

/** With the largest type that fits; none where 8 pt do not. */
function planAt(
  sheet: HallSheet,
  form: PageForm,
  scale: DrawingScale,
  place: "beside" | "above",
): readonly PagePlan[] {
  const round = columnsRound(form, figureSize(sheet, scale), place);
  if (round === null) return [];
  // most scales that are too large fail here at once
  if (wordsAt(sheet, round.columns, scale, LEAST_TYPE) === null) return [];
  for (const typeSize of typeSizes) {
    const words = wordsAt(sheet, round.columns, scale, typeSize);
    if (words === null) continue;
    const worth = (typeSize - LEAST_TYPE) / 3 - Math.log2(scale.ratio) + (form.lying ? 0 : 0.05);
    return [{ form, scale, typeSize, figure: round.figure, words, worth }];
  }
  return [];
}

/** Null where they do not fit. */
function wordsAt(
  sheet: HallSheet,
  columns: readonly Column[],
  scale: DrawingScale,
  typeSize: number,
): readonly PaperPart[] | null {
  const { parts, rest } = flowText(sectionBlocks(sheet, typeSize, scale.ratio), columns);
  return rest.length > 0 ? null : parts;
}
