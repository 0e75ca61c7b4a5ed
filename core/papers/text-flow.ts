// Example: a heading of 10 pt and a sentence of two lines take 4.4 + 2 × 4.4 mm of a column.
// Invariant: nothing is left out; what no column has room for is handed back, to go on elsewhere.
import { boundFigures } from "./bound-figures.ts";
import type { Mark, PaperPart, PaperRole, Weight } from "./paper-types.ts";
import { brokenText, MM_PER_POINT, textWidth } from "./text-width.ts";

/** A place for text on a page, in millimetres from the top left corner of the page. */
export type Column = {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
};

export type Block = {
  readonly role: Extract<PaperRole, "title" | "heading" | "paragraph" | "item">;
  readonly text: string;
  readonly size: number;
  readonly weight: Weight;
  /** millimetres above it, but for the first in a column */
  readonly before: number;
  /** later lines stand in by so much */
  readonly hanging?: number;
  /** a line to write on follows the words, to the end of the column */
  readonly blank?: boolean;
};

export type Flowed = { readonly parts: readonly PaperPart[]; readonly rest: readonly Block[] };

const LINE = 1.26;
/** Of the line, from its top to the base line: face 984 up and 316 down, in 1.26 em. */
const BASE = 0.95;

/** How high a block is in a column so wide. */
export function blockHeight(block: Block, width: number): number {
  return linesOf(block, width).length * lineHeight(block);
}

/** A block of more lines than this may be broken between columns, this many of its lines at least before the break. */
const LONG = 8;
const TOGETHER = 3;

/**
 * Fills one column after another. A heading stays with what follows it; only a long block is broken, or one that a
 * whole column is too short for.
 */
export function flowText(blocks: readonly Block[], columns: readonly Column[]): Flowed {
  const parts: PaperPart[] = [];
  const waiting = [...blocks];
  let [at, y] = [0, 0];
  for (;;) {
    const [block, ...after] = waiting;
    if (block === undefined) return { parts, rest: [] };
    const column = columns[at];
    if (column === undefined) return { parts, rest: waiting };
    const top = y === 0 ? 0 : y + block.before;
    const { now, later } = brokenBlock(block, column, top);
    const whole =
      later === null &&
      top + blockHeight(block, column.width) + followed(block, after, column) <= column.height;
    if (now !== null && (whole || mayBreak(block, column, y))) {
      parts.push(blockPart(now, column, top));
      waiting.splice(0, 1, ...(later === null ? [] : [later]));
      y = top + blockHeight(now, column.width);
      if (later === null) continue;
    }
    [at, y] = [at + 1, 0];
  }
}

/** What has to follow a heading in its column: what comes next, or its beginning where it is long; all lines to write on. */
function followed(block: Block, after: readonly Block[], column: Column): number {
  const [next] = after;
  if (block.role !== "heading" || next === undefined) return 0;
  const end = after.findIndex((it) => it.blank !== true);
  const blanks = after.slice(0, end < 0 ? after.length : end);
  if (blanks.length > 0)
    return blanks.reduce((sum, it) => sum + it.before + blockHeight(it, column.width), 0);
  const lines = linesOf(next, column.width).length;
  return next.before + (lines > LONG ? TOGETHER : lines) * lineHeight(next);
}

function mayBreak(block: Block, column: Column, y: number): boolean {
  const lines = linesOf(block, column.width).length;
  const tooLong = y === 0 && lines * lineHeight(block) > column.height;
  const room = Math.floor((column.height - y - block.before) / lineHeight(block));
  return tooLong || (lines > LONG && room >= TOGETHER);
}

function lineHeight({ size }: Block): number {
  return size * MM_PER_POINT * LINE;
}

function linesOf({ text, size, weight, hanging = 0 }: Block, width: number): readonly string[] {
  const [first = "", ...others] = brokenText(boundFigures(text), width, size, weight);
  if (others.length === 0 || hanging === 0) return [first, ...others];
  return [first, ...brokenText(others.join(" "), width - hanging, size, weight)];
}

/** As many lines as the column has room for below `top`, and the rest as a block of its own. */
function brokenBlock(block: Block, column: Column, top: number): { now: Block | null; later: Block | null } {
  const lines = linesOf(block, column.width);
  const room = Math.max(0, Math.floor((column.height - top) / lineHeight(block) + 1e-9));
  if (lines.length <= room) return { now: block, later: null };
  const part = (some: readonly string[]): Block | null =>
    some.length === 0 ? null : { ...block, text: some.join(" ").replaceAll("\u00A0", " "), before: 0 };
  return { now: part(lines.slice(0, room)), later: part(lines.slice(room)) };
}

function blockPart(block: Block, { left, top, width }: Column, from: number): PaperPart {
  const { role, text, size, weight, hanging = 0, blank = false } = block;
  const height = lineHeight(block);
  const base = (line: number): number => top + from + line * height + BASE * size * MM_PER_POINT;
  const lines = linesOf(block, width);
  const marks = lines.map(
    (line, index): Mark => ({
      kind: "text",
      // a space at its end, or whoever hears the paper read hears the words of two lines as one
      text: index + 1 < lines.length ? `${line} ` : line,
      at: [left + (index === 0 ? 0 : hanging), base(index)],
      size,
      weight,
      anchor: "start",
      turn: 0,
    }),
  );
  const from0 = left + textWidth(text, size, weight) + 1.5;
  const rule: Mark = {
    kind: "line",
    points: [
      [from0, base(0) + 0.6],
      [left + width, base(0) + 0.6],
    ],
    width: 0.2,
  };
  return { role, says: text, marks: blank && from0 < left + width ? [...marks, rule] : marks };
}
