import { type DrawingScale, drawingScales } from "./drawing-scale.ts";
import type { HallSheet } from "./hall-sheet-types.ts";
import { columnsRound, inColumns, type PageForm } from "./page-forms.ts";
import type { Mark, Paper, PaperPage, PaperPart, PaperSize } from "./paper-types.ts";
import { figureMarks, figureSize } from "./plan-figure.ts";
import { planFigureWords } from "./plan-figure-words.ts";
import { headBlocks, sectionBlocks } from "./sheet-blocks.ts";
import { type Block, type Column, flowText } from "./text-flow.ts";
import { textWidth } from "./text-width.ts";

/** One way of putting the whole sheet on one page. */
export type PagePlan = {
  readonly form: PageForm;
  readonly scale: DrawingScale;
  readonly typeSize: number;
  readonly figure: Column;
  readonly words: readonly PaperPart[];
  readonly worth: number;
};

type Laid = Pick<Paper, "width" | "height" | "scale" | "typeSize" | "pages">;

export function onePage(sheet: HallSheet, size: PaperSize, plan: PagePlan): Laid {
  const { form, scale, typeSize, figure, words } = plan;
  const parts = [
    ...headParts(sheet, form),
    figurePart(sheet, size, scale, figure),
    ...words,
    ...footParts(form, sheet.foot, 1, 1),
  ];
  return { width: form.width, height: form.height, scale: scale.ratio, typeSize, pages: [{ parts }] };
}

/** Of the body of the first page, at most so much for the drawing where the words do not fit on one. */
const DRAWING_SHARE = 0.55;
const GOING_ON_SIZE = 9;

/** The drawing with what words fit on the first page, upright; the others on as many as it takes. */
export function severalPages(sheet: HallSheet, size: PaperSize, form: PageForm): Laid {
  const scale = largestFitting(sheet, form);
  const round = columnsRound(form, figureSize(sheet, scale), "above") ?? { figure: form.body, columns: [] };
  const pages: PaperPart[][] = [];
  let { parts, rest } = flowText(sectionBlocks(sheet, GOING_ON_SIZE, scale.ratio), round.columns);
  pages.push([...headParts(sheet, form), figurePart(sheet, size, scale, round.figure), ...parts]);
  while (rest.length > 0) {
    const head = { role: "paragraph", text: sheet.title, size: 12, weight: "bold", before: 0 } as const;
    const body = { ...form.body, top: form.head.top + 8, height: form.foot.top - form.head.top - 11 };
    ({ parts, rest } = flowText(rest, inColumns(body, 2)));
    pages.push([...flowText([head], [{ ...form.head, height: 8 }]).parts, ...parts]);
  }
  return {
    width: form.width,
    height: form.height,
    scale: scale.ratio,
    typeSize: GOING_ON_SIZE,
    pages: pages.map((page, index): PaperPage => {
      const says = index + 1 < pages.length ? `${sheet.foot} It goes on on page ${index + 2}.` : sheet.foot;
      return { parts: [...page, ...footParts(form, says, index + 1, pages.length)] };
    }),
  };
}

function largestFitting(sheet: HallSheet, { body }: PageForm): DrawingScale {
  const scales = drawingScales(sheet.units);
  const fits = scales.find((scale) => {
    const { width, height } = figureSize(sheet, scale);
    return width <= body.width && height <= body.height * DRAWING_SHARE;
  });
  const smallest = fits ?? scales.at(-1);
  if (smallest === undefined) throw new Error("there is no scale to draw at");
  return smallest;
}

function figurePart(sheet: HallSheet, size: PaperSize, scale: DrawingScale, box: Column): PaperPart {
  return {
    role: "figure",
    says: planFigureWords(sheet, scale),
    marks: figureMarks(sheet, scale, size, [box.left, box.top], box.width),
  };
}

/** Title and lead, and a rule under them. */
function headParts(sheet: HallSheet, form: PageForm): readonly PaperPart[] {
  const { left, top, width, height } = form.head;
  return [
    ...flowText(headBlocks(sheet), [form.head]).parts,
    frame([rule(left, top + height + 1.5, width, 0.35)]),
  ];
}

function footParts({ foot }: PageForm, says: string, page: number, pages: number): readonly PaperPart[] {
  const size = 8;
  const count = `Page ${page} of ${pages}`;
  const at: readonly [number, number] = [
    foot.left + foot.width - textWidth(count, size, "regular"),
    foot.top + 4,
  ];
  const block: Block = { role: "paragraph", text: says, size, weight: "regular", before: 0 };
  const room = { ...foot, top: foot.top + 1.2, width: foot.width - 24, height: 8 };
  const number: Mark = { kind: "text", text: count, at, size, weight: "regular", anchor: "start", turn: 0 };
  return [frame([rule(foot.left, foot.top, foot.width, 0.2), number]), ...flowText([block], [room]).parts];
}

function frame(marks: readonly Mark[]): PaperPart {
  return { role: "frame", says: "", marks };
}

function rule(left: number, y: number, width: number, thick: number): Mark {
  return {
    kind: "line",
    points: [
      [left, y],
      [left + width, y],
    ],
    width: thick,
  };
}
