import type { FitRecord } from "./fit-measure.ts";

export type FitSummary = {
  readonly halls: number;
  readonly proven: number;
  readonly faults: number;
  /** of the medians of the halls: the middle one and the greatest */
  readonly medianMs: number;
  readonly slowestMedianMs: number;
  readonly worstMs: number;
  readonly worstHall: string;
  readonly peer: {
    readonly halls: number;
    readonly planMore: number;
    readonly same: number;
    readonly planFewer: number;
    readonly medianMs: number;
    readonly worstMs: number;
  };
};

export function summariseFits(fits: readonly FitRecord[]): FitSummary {
  const medians = sortedNumbers(fits.map((fit) => fit.medianMs));
  const slowest = fits.reduce<FitRecord | undefined>(
    (held, fit) => (held === undefined || fit.worstMs > held.worstMs ? fit : held),
    undefined,
  );
  return {
    halls: fits.length,
    proven: fits.filter((fit) => fit.proven).length,
    faults: fits.reduce((sum, fit) => sum + fit.faults, 0),
    medianMs: middle(medians),
    slowestMedianMs: medians.at(-1) ?? 0,
    worstMs: slowest?.worstMs ?? 0,
    worstHall: slowest?.hall ?? "",
    peer: peerSummary(fits),
  };
}

function peerSummary(fits: readonly FitRecord[]): FitSummary["peer"] {
  const pairs = fits.flatMap(({ count, peer }) =>
    peer === null ? [] : [{ gain: count - peer.count, ms: peer.ms }],
  );
  const times = sortedNumbers(pairs.map((pair) => pair.ms));
  return {
    halls: pairs.length,
    planMore: pairs.filter((pair) => pair.gain > 0).length,
    same: pairs.filter((pair) => pair.gain === 0).length,
    planFewer: pairs.filter((pair) => pair.gain < 0).length,
    medianMs: middle(times),
    worstMs: times.at(-1) ?? 0,
  };
}

function sortedNumbers(values: readonly number[]): readonly number[] {
  return values.toSorted((a, b) => a - b);
}

function middle(sorted: readonly number[]): number {
  return sorted[sorted.length >> 1] ?? 0;
}
