import type { Programme } from "#kernels/search";

/** The programme in the LP format that command-line solvers read; a row between two bounds is written as two. */
export function programmeAsLp({ columns, rows }: Programme): string {
  const gains = columns.flatMap(({ gain }, at) => (gain === 0 ? [] : [[gain, at] as const]));
  const told = rows.flatMap((row, at) => {
    const sum = terms(row.columns.map((column, term) => [row.values?.[term] ?? 1, column] as const));
    if (row.least === row.most) return [` r${at}: ${sum} = ${row.least}`];
    return [
      ...(Number.isFinite(row.least) ? [` l${at}: ${sum} >= ${row.least}`] : []),
      ...(Number.isFinite(row.most) ? [` m${at}: ${sum} <= ${row.most}`] : []),
    ];
  });
  const bounds = columns.map(({ least, most }, at) =>
    Number.isFinite(most) ? ` ${least} <= c${at} <= ${most}` : ` c${at} >= ${least}`,
  );
  const whole = columns.flatMap(({ whole }, at) => (whole === true ? [` c${at}`] : []));
  return [
    "Maximize",
    ` gain: ${terms(gains)}`,
    "Subject To",
    ...told,
    "Bounds",
    ...bounds,
    "Generals",
    ...whole,
    "End",
    "",
  ].join("\n");
}

type Term = readonly [number, number];

/** "+ 3 c0 - 1 c4" */
function terms(parts: readonly Term[]): string {
  return parts.map(([value, at]) => `${value < 0 ? "-" : "+"} ${Math.abs(value)} c${at}`).join(" ");
}
