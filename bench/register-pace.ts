export type Pace = {
  readonly count: number;
  readonly perSecond: number;
  /** milliseconds from asking to the answer */
  readonly median: number;
  readonly p99: number;
};

/** Of rounds that each hold the milliseconds of every action, and last those of the whole round. */
export function paceOf(rounds: readonly (readonly number[])[]): Pace {
  const times = rounds.flatMap((round) => round.slice(0, -1)).toSorted((one, other) => one - other);
  const whole = rounds.reduce((sum, round) => sum + (round.at(-1) ?? 0), 0);
  return {
    count: times.length,
    perSecond: Math.round((1000 * times.length) / whole),
    median: rounded(percentile(times, 0.5)),
    p99: rounded(percentile(times, 0.99)),
  };
}

/** The smallest time that is not less than the share of all of them. */
function percentile(sorted: readonly number[], share: number): number {
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? 0;
}

function rounded(milliseconds: number): number {
  return Math.round(milliseconds * 100) / 100;
}
