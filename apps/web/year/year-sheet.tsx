import type { PlanDocument } from "#app/ports";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { PracticeDocument } from "#core/words";
import { useDeferredValue, useMemo } from "react";
import type { Opened } from "../drafts/use-draft.ts";
import type { Listed } from "../drafts/use-practice.ts";
import { FormOf } from "../fields/form.tsx";
import { currencyOf } from "../hall/hall-form.ts";
import { ProblemList } from "../parts/problem-list.tsx";
import { ClassDates } from "./class-dates.tsx";
import { HolidayList } from "./holiday-list.tsx";
import { usePlan, yearForm } from "./plan-form.ts";
import { TakeAway } from "./take-away.tsx";
import { useYear } from "./use-year.ts";
import { YearInputs } from "./year-inputs.tsx";
import { YearMonths } from "./year-months.tsx";
import { YearWords } from "./year-words.tsx";

type Props = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly classes: readonly Listed<ClassDocument>[];
  readonly halls: readonly Listed<HallDocument>[];
  readonly opened: Opened<PlanDocument>;
};

/** The answer first, the picture, every date; then what it rests on. */
export function YearSheet({ practiceId, practice, classes, halls, opened }: Props) {
  const { plan, change } = usePlan(opened, practice);
  const around = useMemo(() => ({ practice, classes, halls }), [practice, classes, halls]);
  const year = useYear(useDeferredValue(plan), around);
  const { reply, problems, question } = year;
  const form = yearForm(opened.keeper, opened.draft.typed, currencyOf(practice.currency), problems);
  return (
    <FormOf form={form}>
      <section className="part" aria-labelledby="weeks">
        <h2 id="weeks" className="part-title">
          The weeks you teach
        </h2>
        <YearWords year={year} />
        {problems.length === 0 ? null : <ProblemList problems={problems} announce={false} />}
      </section>
      {reply === null ? null : (
        <>
          <section className="part year-picture" aria-labelledby="picture">
            <h2 id="picture" className="part-title">
              The year as a picture
            </h2>
            <YearMonths picture={reply.picture} old={year.old} />
            <TakeAway
              practiceId={practiceId}
              practice={practice}
              document={question.document}
              picture={reply.picture}
              plan={plan}
              change={change}
            />
          </section>
          <section className="part" aria-labelledby="dates">
            <h2 id="dates" className="part-title">
              Every date
            </h2>
            <ClassDates json={reply.json} practice={practice} plan={plan} change={change} />
            <HolidayList json={reply.json} locale={practice.locale} />
          </section>
        </>
      )}
      <YearInputs
        practice={practice}
        plan={plan}
        change={change}
        question={question}
        json={reply?.json ?? null}
      />
    </FormOf>
  );
}
