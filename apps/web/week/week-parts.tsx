import { chosenRow, rejectedRow, tieSentences, timesInWords, type WeekWriter, weekDrawing } from "#app/views";
import type { PartLine } from "#core/price";
import type { WeekHead } from "#core/week";
import type { PracticeDocument } from "#core/words";
import { ProblemList } from "../parts/problem-list.tsx";
import { Show } from "../parts/show.tsx";
import { Working } from "../parts/working.tsx";
import { ChosenTable, RejectedList } from "./class-tables.tsx";
import { CurvePart } from "./curve-part.tsx";
import { DayList } from "./day-list.tsx";
import type { UsedWeek } from "./use-week.ts";
import { WeekAnswer } from "./week-answer.tsx";
import { WeekPicture } from "./week-picture.tsx";
import { WeekProgress } from "./week-progress.tsx";

type Props = {
  readonly week: UsedWeek;
  readonly called: string;
  readonly practice: PracticeDocument;
  readonly write: WeekWriter;
  readonly money: (major: number) => string;
  readonly tries: {
    readonly without: (id: string) => void;
    readonly withOne: (id: string) => void;
    readonly atMost: (by: "classes" | "evenings", count: number) => void;
  };
};

/** All that is answered of a week, the answer first. */
export function WeekParts({ week, called, practice, write, money, tries }: Props) {
  const { found, document, problems } = week;
  const { locale } = practice;
  const head = found.week;
  const says = (text: string) => timesInWords(text, locale);
  return (
    <>
      <section className="part" aria-labelledby="best">
        <h2 id="best" className="part-title">
          {called}
        </h2>
        <WeekAnswer week={week} says={says} />
        {head === null ? null : <Ties head={head} write={write} />}
        <WeekProgress {...week} held={problems.length > 0} />
        {head === null || head.days.length === 0 ? null : (
          <>
            <WeekPicture
              drawing={weekDrawing(head, document)}
              locale={locale}
              called={`${called} as a picture`}
            />
            <DayList drawing={weekDrawing(head, document)} locale={locale} called="The week day by day" />
            <WeekWorking lines={head.working} />
          </>
        )}
      </section>
      {head === null || head.chosen.length === 0 ? null : (
        <section className="part" aria-labelledby="each">
          <h2 id="each" className="part-title">
            What each class does for it
          </h2>
          <ChosenTable
            rows={found.chosen.map((line) => chosenRow(line, isPromised(week, line.id), write))}
            without={tries.without}
          />
        </section>
      )}
      {head === null || document.candidates.length <= head.chosen.length ? null : (
        <section className="part" aria-labelledby="rest">
          <h2 id="rest" className="part-title">
            What is not in it, and what each lacks
          </h2>
          {found.rejected.length === 0 ? <p className="soft">Not worked out yet.</p> : null}
          <RejectedList
            rows={found.rejected
              .map((line) => rejectedRow(line, write))
              .map((row) => ({ ...row, says: says(row.says) }))}
            withOne={tries.withOne}
          />
        </section>
      )}
      {head === null ? null : (
        <section className="part" aria-labelledby="curves">
          <h2 id="curves" className="part-title">
            Income against classes and evenings
          </h2>
          {found.target === null ? null : (
            <p className="answer">{found.target.sentences.map(says).join(" ")}</p>
          )}
          <CurvePart
            by="classes"
            points={found.classes}
            week={head}
            write={write}
            money={money}
            tryCount={(count) => tries.atMost("classes", count)}
          />
          <CurvePart
            by="evenings"
            points={found.evenings}
            week={head}
            write={write}
            money={money}
            tryCount={(count) => tries.atMost("evenings", count)}
          />
        </section>
      )}
      {found.problem === null ? null : (
        <ProblemList problems={[{ ...found.problem, says: says(found.problem.says) }]} announce={false} />
      )}
    </>
  );
}

function isPromised({ document }: UsedWeek, id: string): boolean {
  return document.candidates.some((it) => it.id === id && it.fixed);
}

function Ties({ head, write }: { readonly head: WeekHead; readonly write: WeekWriter }) {
  const ties = tieSentences(head, write);
  if (ties.length === 0) return null;
  return (
    <ul>
      {ties.map((tie) => (
        <li key={tie}>{tie}</li>
      ))}
    </ul>
  );
}

const headings: Readonly<Record<string, string>> = {
  classes: "What the classes bring a year",
  travel: "The ways",
  left: "What is left",
};

function WeekWorking({ lines }: { readonly lines: readonly PartLine[] }) {
  return (
    <Show summary="Show the working">
      {Object.entries(headings).map(([part, caption]) => (
        <Working key={part} caption={caption} lines={lines.filter((line) => line.part === part)} />
      ))}
    </Show>
  );
}
