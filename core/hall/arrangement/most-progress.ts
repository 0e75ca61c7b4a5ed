import type { MostRun } from "#kernels/packing";

export type MostProgress = {
  readonly count: number;
  readonly bound: number;
  readonly proven: boolean;
  /** nothing more to do: proven along every direction that was tried, which is all of them but on curved floors */
  readonly finished: boolean;
  /** taken so far */
  readonly steps: number;
  /** "24 mats so far, and no more than 26 can fit." */
  readonly sentence: string;
  /** what the search does now, in a sentence */
  readonly whatItIsDoing: string;
};

/** A run in figures and in words; `over` is what is known over all wall directions. */
export function mostProgress(
  { steps, finished, axes, axesSettled }: MostRun,
  over: Pick<MostProgress, "count" | "bound" | "proven">,
): MostProgress {
  const { count, bound, proven } = over;
  return {
    count,
    bound,
    proven,
    finished,
    steps,
    sentence: proven
      ? `${matsSaid(count)}, and no more can fit.`
      : `${matsSaid(count)} so far, and no more than ${bound} can fit.`,
    whatItIsDoing: finished ? doneSays(proven) : doing(bound - count, axes, axesSettled),
  };
}

function doneSays(proven: boolean): string {
  return proven ? "Done: it is proven." : "Done: along the directions that were tried there is no more.";
}

export function matsSaid(count: number): string {
  return `${count} ${count === 1 ? "mat" : "mats"}`;
}

function doing(open: number, axes: number, settled: number): string {
  const looked = `Looking for ${open === 1 ? "one mat" : `up to ${open} mats`} more, and for a proof that there is none`;
  if (axes < 2) return `${looked}.`;
  return `${looked}, along ${axes} wall directions; ${settled === 0 ? "none" : settled} of them ${settled === 1 ? "is" : "are"} settled.`;
}
