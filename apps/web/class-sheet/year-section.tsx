import { type PracticeDocument, word } from "#core/words";
import { useMemo } from "react";
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
  const months = year.kind === "ready" && year.months.length > 0 ? year.months : null;
  const hire = word("hire", practice.locale);
  const table = useMemo(
    () => (months === null ? null : <MonthTable months={months} hire={hire} />),
    [months, hire],
  );
  return (
    <SheetSection
      id="year"
      title="The year"
      answer={<PartAnswer part={year} typed={typed} fields={["year", "heads", "prices", "mix"]} />}
      picture={table}
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
