// Newcomers 1 a week, 0.4 of them stay, a stayer comes to 0.65 of the sessions, 0.02 of the stayers stop each week.
// Always: shares lie between 0 and 1, newcomers from 0.

export type RollRates = {
  /** λ: newcomers of an ordinary week */
  readonly newcomers: number;
  /** r: the chance that a newcomer becomes one of the regulars */
  readonly stays: number;
  /** a: the chance that a regular comes to a session of an ordinary week */
  readonly attends: number;
  /** d: the share of the regulars who stop each week, on average over newcomers who stay */
  readonly leaves: number;
};

/**
 * How alike regulars are in stopping: d ~ Beta(alike, alike · (1 − d) ÷ d). At 2 some stay for years and some for a
 * fortnight; null is all the same.
 */
export type Alike = number | null;

/** Of new regulars, the share who are still there after 0, 1, 2 … weeks: S(k) = Π (β + i) ÷ (α + β + i). */
export function stayingCurve(leaves: number, alike: Alike, weeks: number): Float64Array {
  const curve = new Float64Array(weeks + 1);
  const beta = alike === null || leaves === 0 ? 0 : (alike * (1 - leaves)) / leaves;
  let still = 1;
  for (let week = 0; week <= weeks; week += 1) {
    curve[week] = still;
    still *= alike === null || leaves === 0 ? 1 - leaves : (beta + week) / (alike + beta + week);
  }
  return curve;
}

/** Weeks for which a new regular stays, on average beyond her first: Σ S(k) from k = 1; infinite if none leaves. */
export function weeksStayed(leaves: number, alike: Alike): number {
  if (leaves === 0) return Number.POSITIVE_INFINITY;
  const same = (1 - leaves) / leaves;
  return alike === null ? same : (same * alike) / (alike - 1);
}

/** Two teaching years: what a class has not come to by then, it is not worth waiting for. */
export const PLATEAU_SESSIONS = 80;

/**
 * The people who want to come in an ordinary week once the class has run for so many sessions:
 * λ(1 + a·r·Σ S(k)), k from 1 to as many. That is where it settles for whoever decides now; the limit of all time,
 * which a regular who never stops drives up without end, decides nothing.
 */
export function plateauOf(
  { newcomers, stays, attends, leaves }: RollRates,
  alike: Alike,
  sessions = PLATEAU_SESSIONS,
): number {
  const still = stayingCurve(leaves, alike, sessions);
  let weeks = 0;
  for (let week = 1; week <= sessions; week += 1) weeks += still[week] ?? 0;
  return newcomers * (1 + stays * attends * weeks);
}

/**
 * The limit of that without end: with all alike the regulars after a session are g ÷ (1 − keep), g = λr. Infinite
 * where nobody ever stops. Method: methods 5, trade F10.
 */
export function plateauLimit({ newcomers, stays, attends, leaves }: RollRates, alike: Alike): number {
  if (newcomers === 0) return 0;
  const staying = stays * attends === 0 ? 0 : stays * attends * weeksStayed(leaves, alike);
  return newcomers * (1 + staying);
}
