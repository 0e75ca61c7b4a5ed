import { atMoneyPlan, moneyQuestion, type MoneyQuestionInput, type OwnMoneyRow } from "#app/views";
import type { MoneyJson, MoneyPlan, YearMoneyDocument } from "#core/cash";
import type { Problem, Result } from "#core/words";
import { useMemo } from "react";
import { currencyOf } from "../hall/hall-form.ts";
import { useWorkerAnswer } from "../prices/use-worker-answer.ts";
import { moneyWords } from "../words/money-words.ts";
import { today } from "../words/dates.ts";
import type { MoneyJob } from "./money-worker.ts";

export type UsedMoney = {
  readonly document: YearMoneyDocument;
  readonly own: readonly OwnMoneyRow[];
  readonly nothing: boolean;
  /** the answer to this plan, or the last one there was; null where there is none */
  readonly json: MoneyJson | null;
  /** what keeps this plan from being answered, at places of the plan */
  readonly problems: readonly Problem[];
  /** what is shown belongs to an earlier plan */
  readonly old: boolean;
  readonly failure: string | null;
};

/** The money of a plan, worked out beside the page. */
export function useMoney(
  plan: MoneyPlan,
  {
    practice,
    classes,
    halls,
  }: Pick<MoneyQuestionInput, "classes" | "halls"> & { practice: MoneyJob["practice"] },
): UsedMoney {
  const asked = useMemo(() => {
    const { currency, locale } = practice;
    const money: MoneyQuestionInput["money"] = (exact) => moneyWords(exact, currencyOf(currency), locale);
    const question = moneyQuestion({ practice, plan, classes, halls, today: today(), money });
    const job: MoneyJob | null = question.nothing
      ? null
      : { document: question.document, practice: { currency, locale } };
    return { question, job };
  }, [plan, practice, classes, halls]);
  const { answer, old, failure } = useWorkerAnswer<Result<MoneyJson>>(startMoneyWorker, asked.job);
  return useMemo(() => {
    const { document, own, nothing } = asked.question;
    const problems = answer === null || answer.ok ? [] : atMoneyPlan(answer.problems, plan, document);
    const json = answer?.ok === true && !nothing ? answer.value : null;
    return { document, own, nothing, json, problems, old, failure };
  }, [asked, answer, old, failure, plan]);
}

function startMoneyWorker(): Worker {
  return new Worker(new URL("./money-worker.ts", import.meta.url), { type: "module" });
}
