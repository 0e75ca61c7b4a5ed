import type { ChosenJson, PointJson, RejectedJson, TargetJson, WeekHead, WeekStep } from "#core/week";
import type { Problem } from "#core/words";

/** What has been answered of a week so far. */
export type WeekSoFar = {
  readonly problem: Problem | null;
  readonly week: WeekHead | null;
  /** nothing better will take the place of the week */
  readonly sure: boolean;
  readonly chosen: readonly ChosenJson[];
  readonly rejected: readonly RejectedJson[];
  readonly classes: readonly PointJson[] | null;
  readonly evenings: readonly PointJson[] | null;
  readonly target: { readonly target: TargetJson; readonly sentences: readonly string[] } | null;
};

const nothing: WeekSoFar = {
  problem: null,
  week: null,
  sure: false,
  chosen: [],
  rejected: [],
  classes: null,
  evenings: null,
  target: null,
};

/** The pieces put together, in whatever order they came. */
export function weekSoFar(steps: readonly WeekStep[]): WeekSoFar {
  return steps.reduce(withStep, nothing);
}

function withStep(found: WeekSoFar, step: WeekStep): WeekSoFar {
  switch (step.kind) {
    case "none":
      return { ...found, problem: step.problem };
    case "week":
      return { ...found, week: step.week, sure: step.sure };
    case "chosen":
      return { ...found, chosen: [...found.chosen, step.line] };
    case "rejected":
      return { ...found, rejected: [...found.rejected, step.line] };
    case "curve":
      return { ...found, [step.by]: step.points };
    case "target":
      return { ...found, target: step };
  }
}
