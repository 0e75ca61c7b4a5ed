import type { MostRecord } from "./most-measure.ts";
import type { MostSummary } from "./most-summary.ts";

export function mostInWords(records: readonly MostRecord[], summary: MostSummary): string {
  const { peer } = summary;
  return [
    "hall                     axes  lines  most  bound          to best      in all    whole model: mats  bound      time",
    ...records.map(lineOf),
    "",
    `${summary.proven} of ${summary.halls} proven; ${summary.withinOne} within one mat of their bound, ` +
      `${summary.greatestGap} at most; ${summary.faults} faults found by the checker.`,
    `The best plan came within a second in ${summary.bestWithinSecond}; the longest step took ${summary.msLongestStep} ms; ` +
      `${summary.matsMoreThanLines} mats more than straight lines in all.`,
    `The whole model of the first axis: ${peer.solved} of ${peer.halls} solved, ${peer.tooLarge} too large or not asked. ` +
      `Where both proved a hall of one axis, the search was sooner in ${peer.searchSooner}, the whole model in ${peer.peerSooner}.`,
  ].join("\n");
}

function lineOf(each: MostRecord): string {
  const { peer } = each;
  return [
    each.hall.padEnd(24),
    `${each.axesSettled}/${each.axes}`.padStart(6),
    String(each.lines).padStart(6),
    String(each.count).padStart(6),
    `${each.bound}${each.proven ? " proven" : ""}`.padStart(12),
    `${each.msToBest} ms`.padStart(12),
    `${each.msInAll} ms`.padStart(12),
    peer === null
      ? "   -"
      : `${peer.count ?? "none"}`.padStart(14) +
        `${peer.bound ?? "none"}`.padStart(10) +
        `${peer.ms} ms`.padStart(13),
  ].join("");
}
