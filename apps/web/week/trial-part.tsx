import { compareWeeks, weekDrawing, type WeekWriter } from "#app/views";
import type { PracticeDocument } from "#core/words";
import { CompareWeeks } from "./compare-weeks.tsx";
import type { UsedWeek } from "./use-week.ts";
import { WeekPicture } from "./week-picture.tsx";

type Props = {
  readonly present: UsedWeek;
  readonly tried: UsedWeek;
  readonly practice: PracticeDocument;
  readonly write: WeekWriter;
};

/** The present week and the one on trial side by side. */
export function TrialPart({ present, tried, practice, write }: Props) {
  const [now, then] = [present.found.week, tried.found.week];
  return (
    <section className="part" aria-labelledby="trial">
      <h2 id="trial" className="part-title">
        What if
      </h2>
      {now === null || then === null || tried.old || tried.problems.length > 0 ? (
        <p className="answer" data-withheld>
          {waitingWords(present, tried)}
        </p>
      ) : (
        <>
          <CompareWeeks comparison={compareWeeks(now, then, write)} />
          <div className="week-beside">
            <WeekPicture
              drawing={weekDrawing(now, present.document)}
              locale={practice.locale}
              called="The present week"
            />
            <WeekPicture
              drawing={weekDrawing(then, tried.document)}
              locale={practice.locale}
              called="The week on trial"
            />
          </div>
        </>
      )}
    </section>
  );
}

function waitingWords(present: UsedWeek, tried: UsedWeek): string {
  if (tried.problems.length > 0)
    return "The week on trial is not worked out: something in it cannot be used.";
  if (tried.found.problem !== null && !tried.old) return tried.found.problem.says;
  if (present.problems.length > 0 || present.found.problem !== null)
    return "There is no present week to set it beside.";
  return "Working it out …";
}
