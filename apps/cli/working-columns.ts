import type { WorkingLine } from "#core/price";

/** A sum as it is done on paper: words on the left, the figures, the amounts under one another. */
export function workingColumns(lines: readonly WorkingLine[], widths: ColumnWidths): string {
  return lines
    .flatMap((line) =>
      line.total === true ? [rule(widths), written(line, widths)] : [written(line, widths)],
    )
    .map((line) => `${line.trimEnd()}\n`)
    .join("");
}

export type ColumnWidths = { readonly label: number; readonly sum: number; readonly amount: number };

export function columnWidths(lines: readonly WorkingLine[]): ColumnWidths {
  const widest = (of: (line: WorkingLine) => string) => Math.max(0, ...lines.map((line) => of(line).length));
  return { label: widest((it) => it.label), sum: widest((it) => it.sum), amount: widest((it) => it.amount) };
}

function written(line: WorkingLine, { label, sum, amount }: ColumnWidths): string {
  return `  ${line.label.padEnd(label)}  ${line.sum.padEnd(sum)}  ${line.amount.padStart(amount)}`;
}

function rule({ label, sum, amount }: ColumnWidths): string {
  return `  ${" ".repeat(label)}  ${" ".repeat(sum)}  ${"-".repeat(amount)}`;
}
