import type { PartLine, WorkingLine } from "#core/price";
import { columnWidths, workingColumns } from "./working-columns.ts";

/** The sums of one part of an answer, under what they are called. */
export type SheetPart = { readonly heading: string; readonly lines: readonly WorkingLine[] };

/** The answer first, a sentence to a line; then the sums behind it, all in the same columns. */
export function answerSheet(sentences: readonly string[], parts: readonly SheetPart[]): string {
  const widths = columnWidths(parts.flatMap(({ lines }) => lines));
  const told = sentences.map((it) => `${it}\n`).join("");
  const sums = parts
    .filter(({ lines }) => lines.length > 0)
    .map(({ heading, lines }) => `\n${heading}\n${workingColumns(lines, widths)}`);
  return `${told}${sums.join("")}`;
}

/** The lines of each part in turn, headed as `called` says. */
export function partsOf(lines: readonly PartLine[], called: (part: string) => string): readonly SheetPart[] {
  const parts = [...new Set(lines.map(({ part }) => part))];
  return parts.map((part) => ({ heading: called(part), lines: lines.filter((it) => it.part === part) }));
}
