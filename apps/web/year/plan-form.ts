import type { PlanDocument } from "#app/ports";
import { yearPlanOf } from "#app/views";
import type { YearPlan } from "#core/year";
import type { CurrencyCode, PracticeDocument, Problem } from "#core/words";
import { useMemo } from "react";
import type { Keeper } from "../drafts/keeper.ts";
import type { Opened } from "../drafts/use-draft.ts";
import type { Form } from "../fields/form.tsx";

export type ChangePlan = (recipe: (before: YearPlan) => YearPlan) => void;

/** The kept plan and how to change it. */
export function usePlan({ keeper, draft }: Opened<PlanDocument>, practice: PracticeDocument) {
  const { locale } = practice;
  const plan = useMemo(() => yearPlanOf(draft.document, { locale }), [draft.document, locale]);
  const change: ChangePlan = (recipe) =>
    keeper.change((before) => ({ ...recipe(yearPlanOf(before, { locale })), format: "hallful/year-plan@1" }));
  return { plan, change };
}

/** The form over a plan: its only figure that is a guess, the sick allowance, is always one. */
export function yearForm(
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
    isGuess: null,
    setGuess: () => undefined,
  };
}

type Hall = YearPlan["halls"][number];

const SILENT: Omit<Hall, "id"> = { closed: { days: [], text: "" }, polling: false, booked: [], mine: [] };

export function hallOf({ halls }: YearPlan, id: string): Hall {
  return halls.find((it) => it.id === id) ?? { id, ...SILENT };
}

export function withHall(plan: YearPlan, id: string, part: Partial<Omit<Hall, "id">>): YearPlan {
  const next = { ...hallOf(plan, id), ...part };
  const known = plan.halls.some((it) => it.id === id);
  return {
    ...plan,
    halls: known ? plan.halls.map((it) => (it.id === id ? next : it)) : [...plan.halls, next],
  };
}

type Run = YearPlan["runs"][number];

export function runOf({ runs }: YearPlan, id: string): Run {
  return runs.find((it) => it.class === id) ?? { class: id, publicHolidays: false, schoolHolidays: true };
}

export function withRun(plan: YearPlan, id: string, part: Partial<Omit<Run, "class">>): YearPlan {
  const next = { ...runOf(plan, id), ...part };
  return { ...plan, runs: [...plan.runs.filter((it) => it.class !== id), next] };
}
