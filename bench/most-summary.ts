import type { MostRecord } from "./most-measure.ts";

export type MostSummary = {
  readonly halls: number;
  readonly proven: number;
  readonly provenShare: number;
  /** halls with one mat or none between count and bound, and the greatest difference */
  readonly withinOne: number;
  readonly greatestGap: number;
  readonly bestWithinSecond: number;
  readonly faults: number;
  readonly matsMoreThanLines: number;
  readonly msLongestStep: number;
  readonly peer: {
    readonly halls: number;
    /** models too large to be passed */
    readonly tooLarge: number;
    readonly solved: number;
    /** both sides proven on halls of one axis: who was sooner */
    readonly searchSooner: number;
    readonly peerSooner: number;
  };
};

export function summariseMost(records: readonly MostRecord[]): MostSummary {
  const gaps = records.map(({ count, bound }) => bound - count);
  return {
    halls: records.length,
    proven: records.filter((each) => each.proven).length,
    provenShare: records.filter((each) => each.proven).length / Math.max(1, records.length),
    withinOne: gaps.filter((gap) => gap <= 1).length,
    greatestGap: Math.max(0, ...gaps),
    bestWithinSecond: records.filter((each) => each.msToBest <= 1000).length,
    faults: records.reduce((sum, each) => sum + each.faults, 0),
    matsMoreThanLines: records.reduce((sum, { count, lines }) => sum + count - lines, 0),
    msLongestStep: Math.max(0, ...records.map((each) => each.msLongestStep)),
    peer: peerSummary(records),
  };
}

function peerSummary(records: readonly MostRecord[]): MostSummary["peer"] {
  const peers = records.flatMap(({ peer }) => (peer === null ? [] : [peer]));
  const both = records.filter(({ proven, axes, peer }) => proven && axes === 1 && peer?.outcome === "best");
  return {
    halls: peers.length,
    tooLarge: records.length - peers.length,
    solved: peers.filter((peer) => peer.outcome === "best").length,
    searchSooner: both.filter(({ msInAll, peer }) => msInAll <= (peer?.ms ?? 0)).length,
    peerSooner: both.filter(({ msInAll, peer }) => msInAll > (peer?.ms ?? 0)).length,
  };
}
