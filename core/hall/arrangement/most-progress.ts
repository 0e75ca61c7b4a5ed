import type { MostRun } from "#kernels/packing";

export type MostProgress = {
  readonly count: number;
  readonly bound: number;
  readonly proven: boolean;
  /** nothing more to do: the plan is proven to be the most */
  readonly finished: boolean;
  /** taken so far */
  readonly steps: number;
  /** "24 mats so far, and no more than 26 can fit." */
  readonly sentence: string;
  /** what the search does now, in a sentence */
  readonly whatItIsDoing: string;
};

/** A run in figures and in words. */
export function mostProgress({ plan, steps, finished, axes, axesSettled }: MostRun): MostProgress {
  const { count, bound, proven } = plan;
  return {
    count,
    bound,
    proven,
    finished,
    steps,
    sentence: proven
      ? `${matsSaid(count)}, and no more can fit.`
      : `${matsSaid(count)} so far, and no more than ${bound} can fit.`,
    whatItIsDoing: finished ? "Done: it is proven." : doing(bound - count, axes, axesSettled),
  };
}

export function matsSaid(count: number): string {
  return `${count} ${count === 1 ? "mat" : "mats"}`;
}

function doing(open: number, axes: number, settled: number): string {
  const looked = `Looking for ${open === 1 ? "one mat" : `up to ${open} mats`} more, and for a proof that there is none`;
  if (axes < 2) return `${looked}.`;
  return `${looked}, along ${axes} wall directions; ${settled === 0 ? "none" : settled} of them ${settled === 1 ? "is" : "are"} settled.`;
}
