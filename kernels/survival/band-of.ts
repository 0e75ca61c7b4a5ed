import type { Fitted } from "./fitted.ts";

export type Band = { readonly low: number; readonly high: number };

/**
 * What a figure worked out from fitted parameters may be, since the parameters are only fitted: by its slope in
 * each logarithm (the delta method). A "share" is bent so that it stays between 0 and 1, an "amount" above 0.
 * `deviates` is half the band in standard normal deviates.
 */
export function bandOf(
  fitted: Fitted<readonly number[]>,
  figureAt: (parameters: readonly number[]) => number,
  kind: "share" | "amount",
  deviates: number,
): Band {
  const bend = kind === "share" ? logit : Math.log;
  const unbend = kind === "share" ? logistic : Math.exp;
  const logs = fitted.parameters.map((value) => Math.log(value));
  const at = (moved: readonly number[]): number => bend(figureAt(moved.map((log) => Math.exp(log))));
  const middle = at(logs);
  // a share of exactly 0 or 1, or an amount of 0, is one for all parameters
  if (!Number.isFinite(middle)) return { low: unbend(middle), high: unbend(middle) };
  const slopes = logs.map(
    (_, index) => (at(stepped(logs, index, STEP)) - at(stepped(logs, index, -STEP))) / (2 * STEP),
  );
  const half = deviates * Math.sqrt(Math.max(0, quadratic(slopes, fitted.spread)));
  return Number.isFinite(half)
    ? { low: unbend(middle - half), high: unbend(middle + half) }
    : { low: 0, high: kind === "share" ? 1 : Number.MAX_VALUE };
}

const STEP = 1e-4;

function stepped(logs: readonly number[], index: number, by: number): readonly number[] {
  return logs.map((log, other) => (other === index ? log + by : log));
}

function quadratic(slopes: readonly number[], spread: readonly (readonly number[])[]): number {
  return slopes.reduce(
    (sum, slope, row) =>
      sum + slope * slopes.reduce((inner, other, column) => inner + other * (spread[row]?.[column] ?? 0), 0),
    0,
  );
}

function logit(share: number): number {
  return Math.log(share) - Math.log1p(-share);
}

function logistic(value: number): number {
  return 1 / (1 + Math.exp(-value));
}
