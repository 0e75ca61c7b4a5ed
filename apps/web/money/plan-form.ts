import type { PlanDocument } from "#app/ports";
import { type MoneyPlan, moneyPlanSchema } from "#core/cash";
import { type CurrencyCode, type Problem, readDocument } from "#core/words";
import { useMemo } from "react";
import type { Keeper } from "../drafts/keeper.ts";
import type { Opened } from "../drafts/use-draft.ts";
import type { Form } from "../fields/form.tsx";
import { withGuess } from "../fields/with-guess.ts";

export type ChangePlan = (recipe: (before: MoneyPlan) => MoneyPlan) => void;

/** What the practice keeps as its money, read; an empty plan where it cannot be. */
export function planOf(document: PlanDocument): MoneyPlan {
  const read = readDocument(moneyPlanSchema, document);
  return read.ok ? read.value.value : moneyPlanSchema.parse({});
}

/** The kept plan and how to change it. */
export function usePlan({ keeper, draft }: Opened<PlanDocument>): {
  readonly plan: MoneyPlan;
  readonly change: ChangePlan;
} {
  const plan = useMemo(() => planOf(draft.document), [draft.document]);
  const change: ChangePlan = (recipe) =>
    keeper.change((before) => ({ ...recipe(planOf(before)), format: "hallful/money-plan@1" }));
  return { plan, change };
}

/** The form over a plan. Its guesses stand by ids, "work.plum.perSession", so that no row shifts them. */
export function useMoneyForm(
  plan: MoneyPlan,
  change: ChangePlan,
  keeper: Pick<Keeper<PlanDocument>, "type" | "dropTyped">,
  typed: Form["typed"],
  currency: CurrencyCode,
  problems: readonly Problem[],
): Form {
  return {
    currency,
    typed,
    type: keeper.type,
    dropTyped: keeper.dropTyped,
    problems,
    isGuess: (path) => plan.guesses.includes(path),
    setGuess: (path, guess) => change((before) => withGuess(before, path, guess)),
  };
}
