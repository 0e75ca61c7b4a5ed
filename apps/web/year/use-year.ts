import { type YearQuestion, yearQuestion, type YearQuestionInput } from "#app/views";
import type { Problem, Result } from "#core/words";
import { useMemo } from "react";
import { useWorkerAnswer } from "../prices/use-worker-answer.ts";
import { today } from "../words/dates.ts";
import type { YearJob, YearReply } from "./year-worker.ts";

export type UsedYear = {
  readonly question: YearQuestion;
  /** the answer to this plan, or the last good one there was */
  readonly reply: YearReply | null;
  readonly problems: readonly Problem[];
  /** what is shown belongs to an earlier plan */
  readonly old: boolean;
  readonly failure: string | null;
};

/** The year of a plan, worked out beside the page. */
export function useYear(
  plan: YearQuestionInput["plan"],
  { practice, classes, halls }: Omit<YearQuestionInput, "plan" | "today">,
): UsedYear {
  const asked = useMemo(() => {
    const question = yearQuestion({ practice, plan, classes, halls, today: today() });
    const job: YearJob = { document: question.document };
    return { question, job };
  }, [plan, practice, classes, halls]);
  const { answer, old, failure } = useWorkerAnswer<Result<YearReply>>(startYearWorker, asked.job);
  return useMemo(
    () => ({
      question: asked.question,
      reply: answer?.ok === true ? answer.value : null,
      problems: answer === null || answer.ok ? [] : answer.problems,
      old,
      failure,
    }),
    [asked, answer, old, failure],
  );
}

function startYearWorker(): Worker {
  return new Worker(new URL("./year-worker.ts", import.meta.url), { type: "module" });
}
