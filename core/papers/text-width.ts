import { boldWidths, type LetterWidths, regularWidths } from "./letter-widths.ts";
import type { Weight } from "./paper-types.ts";

/** A point is 1/72 in: 25.4 / 72 mm. */
export const MM_PER_POINT = 25.4 / 72;

/** How wide a text is, in millimetres, without the little that kerning takes away; a letter that is not known takes an em. */
export function textWidth(text: string, size: number, weight: Weight): number {
  const widths = known[weight];
  let ems = 0;
  for (const letter of text) ems += widths.get(letter) ?? 1000;
  return (ems / 1000) * size * MM_PER_POINT;
}

/** Whether the face has the letter at all. */
export function isWritable(letter: string): boolean {
  return known.regular.has(letter);
}

const known: Readonly<Record<Weight, ReadonlyMap<string, number>>> = {
  regular: byLetter(regularWidths),
  bold: byLetter(boldWidths),
};

function byLetter(widths: LetterWidths): ReadonlyMap<string, number> {
  return new Map(
    Object.entries(widths).flatMap(([width, letters]) =>
      Array.from(letters).map((letter) => [letter, Number(width)] as const),
    ),
  );
}

/**
 * The text broken into lines no wider than so many millimetres. A word that is wider than a line by itself is broken
 * between letters. Always at least one line.
 */
export function brokenText(text: string, width: number, size: number, weight: Weight): readonly string[] {
  const wide = (piece: string): number => textWidth(piece, size, weight);
  const space = wide(" ");
  const lines: string[] = [];
  let [line, length] = ["", 0];
  for (const word of text.split(" ").filter((it) => it !== "")) {
    const needed = wide(word);
    if (line !== "" && length + space + needed <= width) {
      [line, length] = [`${line} ${word}`, length + space + needed];
      continue;
    }
    if (line !== "") lines.push(line);
    const pieces = needed <= width ? [word] : brokenWord(word, width, wide);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? "";
    length = pieces.length === 1 ? needed : wide(line);
  }
  return [...lines, line];
}

function brokenWord(word: string, width: number, wide: (piece: string) => number): readonly string[] {
  const pieces: string[] = [];
  let [piece, length] = ["", 0];
  for (const letter of word) {
    const needed = wide(letter);
    if (piece !== "" && length + needed > width) {
      pieces.push(piece);
      [piece, length] = ["", 0];
    }
    [piece, length] = [piece + letter, length + needed];
  }
  return [...pieces, piece];
}
