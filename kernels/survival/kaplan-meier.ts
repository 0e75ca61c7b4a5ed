/** How long one person (or `people` alike) was watched, and whether the end was seen or only the watching ended. */
export type Watched = { readonly time: number; readonly ended: boolean; readonly people?: number };

/** One time at which somebody was seen to end. Shares lie between 0 and 1. */
export type SurvivalStep = {
  readonly time: number;
  /** still there just before it */
  readonly atRisk: number;
  readonly ended: number;
  /** the share that goes on past it */
  readonly survival: number;
  /** Greenwood's; 0 once nobody is left, where the formula has no value */
  readonly standardError: number;
  readonly low: number;
  readonly high: number;
};

/**
 * The product-limit curve (E. Kaplan and P. Meier, 1958), with Greenwood's variance and a band on the
 * log(−log) scale, which never leaves 0 to 1. `deviates` is half the band in standard normal deviates: 1.2816
 * for four in five, 1.96 for nineteen in twenty. Where an end and the end of watching fall together, the end
 * is first, as is usual. Times from 0, people above 0; throws on anything else.
 */
export function kaplanMeier(watched: readonly Watched[], deviates: number): readonly SurvivalStep[] {
  const times = byTime(watched);
  let atRisk = times.reduce((sum, it) => sum + it.ended + it.unseen, 0);
  let survival = 1;
  let sum = 0;
  const steps: SurvivalStep[] = [];
  for (const { time, ended, unseen } of times) {
    if (ended > 0) {
      // a difference of whole numbers, so that the last to end leaves exactly nobody
      survival *= (atRisk - ended) / atRisk;
      sum += ended / (atRisk * (atRisk - ended));
      steps.push({ time, atRisk, ended, survival, ...bandAt(survival, sum, deviates) });
    }
    atRisk -= ended + unseen;
  }
  return steps;
}

type AtTime = { readonly time: number; ended: number; unseen: number };

function byTime(watched: readonly Watched[]): readonly AtTime[] {
  const times = new Map<number, AtTime>();
  for (const { time, ended, people = 1 } of watched) {
    if (!(time >= 0 && Number.isFinite(time))) throw new RangeError(`time: ${time}`);
    if (!(people > 0 && Number.isFinite(people))) throw new RangeError(`people: ${people}`);
    const at = times.get(time) ?? { time, ended: 0, unseen: 0 };
    times.set(time, at);
    if (ended) at.ended += people;
    else at.unseen += people;
  }
  return [...times.values()].sort((a, b) => a.time - b.time);
}

function bandAt(survival: number, sum: number, deviates: number) {
  // nobody left: ln S has no value, and the curve itself says all there is
  if (survival <= 0) return { standardError: 0, low: 0, high: 0 };
  const root = Math.sqrt(sum);
  const middle = Math.log(-Math.log(survival));
  const half = (deviates * root) / -Math.log(survival);
  return {
    standardError: survival * root,
    low: Math.exp(-Math.exp(middle + half)),
    high: Math.exp(-Math.exp(middle - half)),
  };
}

/** The step that holds at a time: the last one not after it; undefined before the first. */
export function stepAt(steps: readonly SurvivalStep[], time: number): SurvivalStep | undefined {
  return steps.findLast((step) => step.time <= time);
}
