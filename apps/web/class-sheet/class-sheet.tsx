import "../floor/floor.css";
import "../outlook/outlook.css";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { HappenedDocument } from "#core/outlook";
import type { PracticeDocument } from "#core/words";
import type { Opened } from "../drafts/use-draft.ts";
import type { Listed } from "../drafts/use-practice.ts";
import { FromAFile } from "../import/from-a-file.tsx";
import { FromRegister } from "../outlook/from-register.tsx";
import { GoingSection } from "../outlook/going-section.tsx";
import { NextSection } from "../outlook/next-section.tsx";
import { OpeningSection } from "../outlook/opening-section.tsx";
import { outlookProblems, useOutlookSheet } from "../outlook/use-outlook-sheet.ts";
import { ChangesSection } from "../prices/changes-section.tsx";
import { CurveSection } from "../prices/curve-section.tsx";
import { HigherSection } from "../prices/higher-section.tsx";
import { PassesSection } from "../prices/passes-section.tsx";
import { StudioSection } from "../prices/studio-section.tsx";
import { SureSection } from "../prices/sure-section.tsx";
import { FormOf } from "../fields/form.tsx";
import { currencyOf } from "../hall/hall-form.ts";
import { memo, useCallback, useMemo } from "react";
import { sameParts } from "./same-parts.ts";
import { useClassForm } from "./class-form.ts";
import { EveningSection } from "./evening-section.tsx";
import { HallSection } from "./hall-section.tsx";
import { MatsSection } from "./mats-section.tsx";
import { PriceSection } from "./price-section.tsx";
import { SheetSection } from "./sheet-section.tsx";
import { useClassAnswers } from "./use-class-answers.ts";
import { WhoFields } from "./who-fields.tsx";
import { YearSection } from "./year-section.tsx";

type Props = {
  readonly practiceId: string;
  readonly classId: string;
  readonly practice: PracticeDocument;
  readonly opened: Opened<ClassDocument>;
  readonly halls: readonly Listed<HallDocument>[];
  /** the class's hall, open for editing; null while it has none */
  readonly hall: Opened<HallDocument> | null;
  /** what really happened in it, open for editing */
  readonly happened: Opened<HappenedDocument> | null;
};

const contents = [
  ["who", "Who it is for"],
  ["hall", "The hall and its floor"],
  ["mats", "The mats"],
  ["evening", "What an evening costs"],
  ["prices", "Prices"],
  ["passes", "How long a pass runs"],
  ["sure", "How sure an evening is"],
  ["curve", "Which price"],
  ["higher", "A higher price"],
  ["studio", "Own class or studio"],
  ["change", "What would change this"],
  ["year", "The year"],
  ["opening", "The opening"],
  ["going", "How it is going"],
  ["next", "What to do next"],
] as const;

// each part is drawn again only when its own fields or its own answer are others: a key costs one part, not eleven
const Who = memo(WhoFields, sameParts("name", "whoFor", "weekday", "start"));
const Hall = memo(HallSection, sameParts("hall"));
const Mats = memo(MatsSection, sameParts("mats", "arrangement", "matsOwned", "ownCap", "insurerCap"));
const Evening = memo(EveningSection, sameParts("hall", "minutes", "costs", "guesses"));
const Prices = memo(PriceSection, sameParts("prices", "mix", "heads"));
const Passes = memo(PassesSection, sameParts("planning", "prices"));
const Sure = memo(SureSection, sameParts("planning"));
const Curve = memo(CurveSection, sameParts("planning", "prices", "heads"));
const Higher = memo(HigherSection, sameParts("planning", "guesses"));
const Studio = memo(StudioSection, sameParts("planning", "guesses", "minutes", "heads"));
const Changes = memo(ChangesSection);
const Year = memo(YearSection, sameParts("year"));
const Opening = memo(OpeningSection, sameParts("outlook"));
const Going = memo(GoingSection, sameParts("outlook", "weekday", "year"));
const Next = memo(NextSection, sameParts("outlook"));
const nothingHappened: HappenedDocument = { sessions: [] };

/** The class sheet: one class on one long page, in the order of the job. */
export function ClassSheetPage({ practiceId, classId, practice, opened, halls, hall, happened }: Props) {
  const { draft, keeper } = opened;
  const { document } = draft;
  const { answers, asked, problems } = useClassAnswers(document, hall?.draft.document ?? null, practice);
  const capacity = answers.sheet.mats.kind === "ready" ? answers.sheet.mats.capacity : null;
  const ahead = useOutlookSheet({
    practice,
    document,
    hall: hall?.draft.document ?? null,
    capacity,
    mats: answers.planned?.plan.count ?? null,
    happened: happened?.draft.document ?? nothingHappened,
  });
  const told = useMemo(() => [...problems, ...outlookProblems(ahead.answer)], [problems, ahead.answer]);
  const form = useClassForm(opened, currencyOf(practice.currency), told);
  const change = useCallback(
    (part: Partial<ClassDocument>) => keeper.change((before) => ({ ...before, ...part })),
    [keeper],
  );
  const places = capacity?.capacity ?? null;
  const { locale } = practice;
  // the same element until something of it changes: it must not draw the part again at every key
  const importing = useMemo(
    () =>
      happened === null ? null : (
        <>
          <FromRegister practiceId={practiceId} classId={classId} opened={happened} />
          <FromAFile practiceId={practiceId} opened={happened} usualPlaces={places} locale={locale} />
        </>
      ),
    [practiceId, classId, happened, places, locale],
  );
  const part = { document, change };
  const { sheet } = answers;
  return (
    <FormOf form={form}>
      <div className="stack sheet-heading">
        {/* heard when it changes, so that nobody needs to see the sheet to hear what a figure did */}
        <output className="answer">{sheet.heading}</output>
        <nav className="contents" aria-label="On this sheet">
          {contents.map(([id, title]) => (
            <a key={id} href={`#${id}`}>
              {title}
            </a>
          ))}
        </nav>
      </div>
      <SheetSection
        id="who"
        title="Who it is for"
        answer={
          <>
            <p className="answer">{sheet.when}</p>
            {sheet.whoFor.trim() === "" ? (
              <p className="soft">Nothing is written yet about who it is for.</p>
            ) : (
              <p className="as-written">{sheet.whoFor}</p>
            )}
          </>
        }
        inputs={<Who {...part} />}
      />
      <Hall {...part} practiceId={practiceId} practice={practice} halls={halls} hall={hall} />
      <Mats
        {...part}
        practice={practice}
        hall={hall?.draft.document ?? null}
        answers={answers}
        typed={draft.typed}
      />
      <Evening {...part} practice={practice} hall={hall} answers={answers} typed={draft.typed} />
      <Prices {...part} practice={practice} answers={answers} asked={asked} typed={draft.typed} />
      <Passes {...part} asked={asked} typed={draft.typed} />
      <Sure {...part} practice={practice} asked={asked} typed={draft.typed} />
      <Curve {...part} practice={practice} asked={asked} typed={draft.typed} />
      <Higher {...part} asked={asked} typed={draft.typed} />
      <Studio {...part} practice={practice} asked={asked} typed={draft.typed} />
      <Changes asked={asked} typed={draft.typed} />
      <Year {...part} practice={practice} answers={answers} typed={draft.typed} />
      <Opening {...part} asked={ahead} typed={draft.typed} />
      <Going
        {...part}
        asked={ahead}
        typed={draft.typed}
        practice={practice}
        happened={happened}
        places={places}
        importing={importing}
      />
      <Next {...part} asked={ahead} typed={draft.typed} />
    </FormOf>
  );
}
