import type { ArrangementRow } from "#core/hall";
import { formatLength } from "#core/words";
import { textTable } from "./text-table.ts";

/** The ways to lay mats side by side; what a column means is said below it. */
export function arrangementsTable(rows: readonly ArrangementRow[]): string {
  const head = ["", "mats", "at most", "cannot see", "beside", "behind", "nearest", "no way out"];
  return textTable([head, ...rows.map(cellsOf)]);
}

function cellsOf({
  arrangement,
  count,
  bound,
  proven,
  sight,
  between,
  way,
}: ArrangementRow): readonly string[] {
  return [
    arrangement,
    String(count),
    proven ? "proven" : String(bound),
    sight === null ? "–" : String(sight.hidden.length),
    length(between.side),
    length(between.end),
    length(between.any),
    way.ok ? String(way.value.stuck.length) : "–",
  ];
}

function length(millimetres: number | null): string {
  return millimetres === null ? "–" : formatLength(millimetres, "metric");
}
