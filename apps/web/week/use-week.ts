import { atPlan, type OwnClassRow, weekQuestion, type WeekQuestionInput } from "#app/views";
import { readWeek, type WeekDocument, type WeekPlan, type WeekStep } from "#core/week";
import type { Problem } from "#core/words";
import { useMemo } from "react";
import { currencyOf } from "../hall/hall-form.ts";
import { useSettled } from "../measuring/use-settled.ts";
import { moneyWords } from "../words/money-words.ts";
import type { StepList } from "../worth/step-list.ts";
import { useSteps } from "../worth/use-steps.ts";
import { type WeekSoFar, weekSoFar } from "./week-found.ts";
import type { WeekJob } from "./week-worker.ts";

/** Everything around a plan that its week rests on. */
export type WeekAround = Pick<WeekQuestionInput, "practice" | "classes" | "halls">;

export type UsedWeek = {
  readonly document: WeekDocument;
  readonly own: readonly OwnClassRow[];
  /** what keeps the week from being answered, at places of the plan */
  readonly problems: readonly Problem[];
  readonly found: WeekSoFar;
  /** what is shown belongs to an earlier question */
  readonly old: boolean;
  readonly state: StepList<unknown, unknown>["state"] | null;
  readonly total: number | null;
  readonly told: number;
  readonly stop: () => void;
  readonly goOn: () => void;
};

/** The best week of a plan, worked out beside the page piece by piece; null asks nothing. */
export function useWeek(plan: WeekPlan | null, around: WeekAround): UsedWeek | null {
  const { practice, classes, halls } = around;
  const asked = useMemo(() => {
    if (plan === null) return null;
    const money = moneyIn(practice);
    const { document, own } = weekQuestion({ practice, plan, classes, halls, money });
    const read = readWeek(document);
    const problems = read.ok ? [] : atPlan(read.problems, plan, document);
    return { document, own, problems, job: read.ok ? { document, locale: practice.locale } : null };
  }, [plan, practice, classes, halls]);
  const job = asked?.job ?? null;
  const steps = useSteps<WeekJob, WeekStep>(startWeekWorker, useSettled(job));
  const { list } = steps;
  const found = useMemo(() => weekSoFar(list?.items ?? []), [list]);
  if (asked === null) return null;
  return {
    document: asked.document,
    own: asked.own,
    problems: asked.problems,
    found,
    old: list !== null && list.job !== job,
    state: list?.state ?? null,
    total: list?.total ?? null,
    told: list?.items.length ?? 0,
    stop: steps.stop,
    goOn: steps.goOn,
  };
}

/** Writes exact amounts in the money of the practice. */
export function moneyIn({ currency, locale }: WeekAround["practice"]): WeekQuestionInput["money"] {
  const code = currencyOf(currency);
  return (exact) => moneyWords(exact, code, locale);
}

function startWeekWorker(): Worker {
  return new Worker(new URL("./week-worker.ts", import.meta.url), { type: "module" });
}
