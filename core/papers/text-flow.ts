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

/** Fills one column after another. A heading stays with what follows it; a block is only broken where a whole column is too short for it. */
export function flowText(blocks: readonly Block[], columns: readonly Column[]): Flowed {
  const parts: PaperPart[] = [];
  let [at, y] = [0, 0];
  for (const [index, block] of blocks.entries()) {
    for (;;) {
      const column = columns[at];
      if (column === undefined) return { parts, rest: blocks.slice(index) };
      const top = y === 0 ? 0 : y + block.before;
      const height = blockHeight(block, column.width);
      const next = block.role === "heading" ? blocks[index + 1] : undefined;
      const following = next === undefined ? 0 : next.before + blockHeight(next, column.width);
      // at the top of a column a heading may stand before something too long for the rest of it
      const after = y === 0 ? Math.min(following, column.height / 2) : following;
      if (top + height + after <= column.height) {
        parts.push(blockPart(block, column, top));
        y = top + height;
        break;
      }
      if (y === 0 && height > column.height) {
        const { now, later } = brokenBlock(block, column);
        if (now !== null) parts.push(blockPart(now, column, 0));
        const rest = [...(later === null ? [] : [later]), ...blocks.slice(index + 1)];
        const flowed = flowText(rest, columns.slice(at + 1));
        return { parts: [...parts, ...flowed.parts], rest: flowed.rest };
      }
      [at, y] = [at + 1, 0];
    }
  }
  return { parts, rest: [] };
}

function lineHeight({ size }: Block): number {
  return size * MM_PER_POINT * LINE;
}

function linesOf({ text, size, weight, hanging = 0 }: Block, width: number): readonly string[] {
  const [first = "", ...others] = brokenText(boundFigures(text), width, size, weight);
  if (others.length === 0 || hanging === 0) return [first, ...others];
  return [first, ...brokenText(others.join(" "), width - hanging, size, weight)];
}

/** As many lines as the column has room for, and the rest as a block of its own. */
function brokenBlock(block: Block, column: Column): { now: Block | null; later: Block | null } {
  const lines = linesOf(block, column.width);
  const room = Math.floor(column.height / lineHeight(block) + 1e-9);
  const part = (some: readonly string[]): Block | null =>
    some.length === 0 ? null : { ...block, text: some.join(" ") };
  return { now: part(lines.slice(0, room)), later: part(lines.slice(room)) };
}

function blockPart(block: Block, { left, top, width }: Column, from: number): PaperPart {
  const { role, text, size, weight, hanging = 0, blank = false } = block;
  const height = lineHeight(block);
  const base = (line: number): number => top + from + line * height + BASE * size * MM_PER_POINT;
  const marks = linesOf(block, width).map(
    (line, index): Mark => ({
      kind: "text",
      text: line,
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
