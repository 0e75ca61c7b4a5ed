import type { PriceSheet } from "#app/views";
import type { PracticeDocument } from "#core/words";
import { useMemo } from "react";
import type { Draft } from "../drafts/draft.ts";
import { NumberField } from "../fields/number-field.tsx";
import { CoursesAnswer } from "../prices/courses-answer.tsx";
import type { WorkerAnswer } from "../prices/use-worker-answer.ts";
import { LadderAnswer } from "../prices/ladder-answer.tsx";
import { ShowWorking } from "../parts/working.tsx";
import { wholeMoney } from "../words/money-words.ts";
import type { ClassPart } from "./class-part.ts";
import { HeadsPlot } from "./heads-plot.tsx";
import { HeadsTable } from "./heads-table.tsx";
import { MixFields } from "./mix-fields.tsx";
import { PartAnswer } from "./part-answer.tsx";
import { PartWorking } from "./part-working.tsx";
import { PriceFields } from "./price-fields.tsx";
import { SheetSection } from "./sheet-section.tsx";
import type { ClassAnswers } from "./use-class-answers.ts";

type Props = ClassPart & {
  readonly practice: PracticeDocument;
  readonly answers: ClassAnswers;
  readonly asked: WorkerAnswer<PriceSheet>;
  readonly typed: Draft<unknown>["typed"];
};

/** Who pays for the room, and what an ordinary evening leaves. */
export function PriceSection({ document, change, practice, answers, asked, typed }: Props) {
  const { prices, ordinary } = answers.sheet;
  const { ladder, courses } = asked.answer ?? {};
  const rows = ordinary.kind === "ready" ? ordinary.rows : null;
  const { currency, locale } = practice;
  // drawn again when an answer is another, not at every key
  const plot = useMemo(
    () =>
      rows === null ? null : <HeadsPlot rows={rows} money={(major) => wholeMoney(major, currency, locale)} />,
    [rows, currency, locale],
  );
  const table = useMemo(() => (rows === null ? null : <HeadsTable rows={rows} />), [rows]);
  const same = prices.kind !== "ready" && ordinary.kind !== "ready";
  return (
    <SheetSection
      id="prices"
      title="Prices"
      answer={
        <>
          <PartAnswer part={prices} typed={typed} fields={["prices", "mix", "costs.perHead"]} />
          <LadderAnswer asked={asked} />
          <CoursesAnswer part={courses} />
          {same ? null : <PartAnswer part={ordinary} typed={typed} fields={["heads", "prices", "mix"]} />}
        </>
      }
      picture={plot}
      working={
        <>
          <PartWorking parts={[prices, ordinary, ladder, courses].filter((it) => it !== undefined)} />
          {table === null ? null : (
            <ShowWorking summary="Show the table by the number of people">{table}</ShowWorking>
          )}
        </>
      }
      inputs={
        <>
          <PriceFields document={document} change={change} />
          <MixFields document={document} change={change} />
          <NumberField
            path="heads"
            label="People on an ordinary evening"
            help="On mats, in an ordinary week; 9.5 is allowed"
            unit="people"
            range={{ least: 0, most: 1000 }}
            guessable
            value={document.heads}
            put={(heads) => change({ heads })}
          />
        </>
      }
    />
  );
}
