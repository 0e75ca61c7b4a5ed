import type { HallSheet } from "./hall-sheet-types.ts";
import { paperSizes } from "./paper-size.ts";
import type { PaperSize } from "./paper-types.ts";
import { headBlocks } from "./sheet-blocks.ts";
import { blockHeight, type Column } from "./text-flow.ts";

/** An upright or a lying page: where its head, its body and its foot stand, in millimetres. */
export type PageForm = {
  readonly lying: boolean;
  readonly width: number;
  readonly height: number;
  readonly head: Column;
  readonly body: Column;
  readonly foot: Column;
};

/** Printers leave up to 6 mm of paper bare; a hole punch takes 12. */
const MARGIN = 13;
const FOOT = 6;
const GAP = 6;

export function pageForms(sheet: HallSheet, size: PaperSize): readonly [PageForm, PageForm] {
  const { width, height } = paperSizes[size];
  return [pageForm(sheet, width, height, false), pageForm(sheet, height, width, true)];
}

function pageForm(sheet: HallSheet, width: number, height: number, lying: boolean): PageForm {
  const inner = width - 2 * MARGIN;
  const heights = headBlocks(sheet).map(
    (it, index) => blockHeight(it, inner) + (index === 0 ? 0 : it.before),
  );
  const headHeight = heights.reduce((sum, it) => sum + it, 0) + 0.01;
  const bodyTop = MARGIN + headHeight + 4;
  const footTop = height - MARGIN - FOOT + 2;
  return {
    lying,
    width,
    height,
    head: { left: MARGIN, top: MARGIN, width: inner, height: headHeight },
    body: { left: MARGIN, top: bodyTop, width: inner, height: footTop - 3 - bodyTop },
    foot: { left: MARGIN, top: footTop, width: inner, height: FOOT },
  };
}

export type Round = { readonly figure: Column; readonly columns: readonly Column[] };

/** No column is narrower: a line would hold too few words. */
const NARROWEST = 56;

/** Where the drawing stands and where words have room: under it, or to its right and under it. Null where it does not fit. */
export function columnsRound(
  { body, lying }: PageForm,
  drawing: { readonly width: number; readonly height: number },
  place: "beside" | "above",
): Round | null {
  if (drawing.width > body.width || drawing.height > body.height) return null;
  const under = body.height - drawing.height - 3;
  const underTop = body.top + drawing.height + 3;
  if (place === "above") {
    const figure = { ...body, height: drawing.height };
    const below = { left: body.left, top: underTop, width: body.width, height: Math.max(0, under) };
    return { figure, columns: inColumns(below, lying ? 3 : 2) };
  }
  const width = body.width - drawing.width - GAP;
  if (width < NARROWEST) return null;
  const figure = { left: body.left, top: body.top, width: drawing.width, height: drawing.height };
  const right = { left: body.left + drawing.width + GAP, top: body.top, width, height: body.height };
  const below = { left: body.left, top: underTop, width: drawing.width, height: Math.max(0, under) };
  return {
    figure,
    columns: [...inColumns(right, width > 150 ? 2 : 1), ...inColumns(below, drawing.width > 130 ? 2 : 1)],
  };
}

/** Side by side; none where not even a heading and a line would fit. */
export function inColumns(box: Column, count: number): readonly Column[] {
  if (box.height < 14) return [];
  const width = (box.width - GAP * (count - 1)) / count;
  return Array.from({ length: count }, (_, index) => ({
    ...box,
    left: box.left + index * (width + GAP),
    width,
  }));
}
