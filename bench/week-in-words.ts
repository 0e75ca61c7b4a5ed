import type { WeekRecord } from "./week-measure.ts";

export function weekInWords(records: readonly WeekRecord[], peers: string): string {
  return [
    "c: crowded into the evenings",
    "",
    "week   columns  rows   classes   best a year   to proof   both curves   points   peers",
    ...records.map(lineOf),
    "",
    `${records.filter(({ proven }) => proven).length} of ${records.length} proven; slowest to proof ` +
      `${Math.max(...records.map(({ msToProof }) => msToProof))} ms, slowest curves ` +
      `${Math.max(...records.map(({ msCurves }) => msCurves))} ms. ${peers}`,
  ].join("\n");
}

function lineOf(it: WeekRecord): string {
  const peers = it.peers.map(({ name, value, ms, sameValue }) => {
    if (value === null) return `${name}: none in ${ms} ms`;
    return `${name}: ${sameValue ? "same" : `${value} INSTEAD`} in ${ms} ms`;
  });
  return [
    `${it.seed}${it.crowded ? " c" : ""}`.padEnd(7),
    String(it.columns).padStart(7),
    String(it.rows).padStart(6),
    String(it.classes).padStart(10),
    `${it.value === null ? "none" : (it.value / 100).toFixed(2)}${it.proven ? "" : "?"}`.padStart(14),
    `${it.msToProof} ms`.padStart(11),
    `${it.msCurves} ms`.padStart(14),
    `${it.points.classes} + ${it.points.evenings}`.padStart(9),
    `   ${peers.length === 0 ? "none" : peers.join("; ")}`,
  ].join("");
}
