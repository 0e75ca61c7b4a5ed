import { type PracticeDocument, word } from "#core/words";
import type { Draft } from "../drafts/draft.ts";
import type { ClassPart } from "./class-part.ts";
import { MonthTable } from "./month-table.tsx";
import { PartAnswer } from "./part-answer.tsx";
import { PartWorking } from "./part-working.tsx";
import { SheetSection } from "./sheet-section.tsx";
import type { ClassAnswers } from "./use-class-answers.ts";
import { YearFields } from "./year-fields.tsx";

type Props = ClassPart & {
  readonly practice: PracticeDocument;
  readonly answers: ClassAnswers;
  readonly typed: Draft<unknown>["typed"];
};

/** What a year of the class's real dates leaves. */
export function YearSection({ document, change, practice, answers, typed }: Props) {
  const { year } = answers.sheet;
  return (
    <SheetSection
      id="year"
      title="The year"
      answer={<PartAnswer part={year} typed={typed} fields={["year", "heads", "prices", "mix"]} />}
      picture={
        year.kind === "ready" && year.months.length > 0 ? (
          <MonthTable months={year.months} hire={word("hire", practice.locale)} />
        ) : null
      }
      working={
        <PartWorking parts={[year]}>
          {year.kind === "ready" && year.lost.length > 0 ? (
            <div>
              <h3>Dates that are lost</h3>
              <ul className="list-plain small">
                {year.lost.map((it) => (
                  <li key={it.date}>{it.says}</li>
                ))}
              </ul>
            </div>
          ) : null}
        </PartWorking>
      }
      inputs={<YearFields document={document} change={change} locale={practice.locale} />}
    />
  );
}
