import type { FitRecord } from "./fit-measure.ts";
import type { FitSummary } from "./fit-summary.ts";

export function fitInWords(fits: readonly FitRecord[], summary: FitSummary): string {
  const { peer } = summary;
  return [
    "hall                     corners  mats  bound        median     worst    scan: mats       time",
    ...fits.map(lineOf),
    "",
    `${summary.proven} of ${summary.halls} plans proven; ${summary.faults} faults found by the checker.`,
    `The middle hall takes ${summary.medianMs} ms, the slowest run ${summary.worstMs} ms (${summary.worstHall}).`,
    `Against the scan: more mats in ${peer.planMore}, the same in ${peer.same}, fewer in ${peer.planFewer}` +
      ` of ${peer.halls}; the scan takes ${peer.medianMs} ms in the middle, ${peer.worstMs} ms at worst.`,
  ].join("\n");
}

function lineOf(fit: FitRecord): string {
  const scan =
    fit.peer === null
      ? "-".padStart(12)
      : `${String(fit.peer.count).padStart(12)} ${`${fit.peer.ms} ms`.padStart(14)}` +
        (fit.peer.step === 1 ? "" : `  every ${fit.peer.step} mm`);
  return [
    fit.hall.padEnd(24),
    String(fit.corners).padStart(8),
    String(fit.count).padStart(6),
    `${fit.bound}${fit.proven ? "" : " not proven"}`.padStart(6),
    `${fit.medianMs} ms`.padStart(14),
    `${fit.worstMs} ms`.padStart(10),
    scan,
  ].join("");
}
