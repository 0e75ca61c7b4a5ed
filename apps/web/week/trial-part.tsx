import { compareWeeks, type WeekDrawing, weekDrawing, type WeekWriter } from "#app/views";
import type { PracticeDocument } from "#core/words";
import { CompareWeeks } from "./compare-weeks.tsx";
import { DayList } from "./day-list.tsx";
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
            <Side
              drawing={weekDrawing(now, present.document)}
              called="The present week"
              practice={practice}
            />
            <Side
              drawing={weekDrawing(then, tried.document)}
              called="The week on trial"
              practice={practice}
            />
          </div>
        </>
      )}
    </section>
  );
}

type SideProps = {
  readonly drawing: WeekDrawing;
  readonly called: string;
  readonly practice: PracticeDocument;
};

/** One of the two weeks as a picture, and the same in words under it. */
function Side({ drawing, called, practice: { locale } }: SideProps) {
  return (
    <div className="stack-close">
      <WeekPicture drawing={drawing} locale={locale} called={called} />
      <DayList drawing={drawing} locale={locale} called={`${called}, day by day`} />
    </div>
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
