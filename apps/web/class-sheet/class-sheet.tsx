import "../floor/floor.css";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { PracticeDocument } from "#core/words";
import type { Opened } from "../drafts/use-draft.ts";
import type { Listed } from "../drafts/use-practice.ts";
import { ChangesSection } from "../prices/changes-section.tsx";
import { CurveSection } from "../prices/curve-section.tsx";
import { HigherSection } from "../prices/higher-section.tsx";
import { PassesSection } from "../prices/passes-section.tsx";
import { StudioSection } from "../prices/studio-section.tsx";
import { SureSection } from "../prices/sure-section.tsx";
import { FormOf } from "../fields/form.tsx";
import { currencyOf } from "../hall/hall-form.ts";
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
  readonly practice: PracticeDocument;
  readonly opened: Opened<ClassDocument>;
  readonly halls: readonly Listed<HallDocument>[];
  /** the class's hall, open for editing; null while it has none */
  readonly hall: Opened<HallDocument> | null;
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
] as const;

/** The class sheet: one class on one long page, in the order of the job. */
export function ClassSheetPage({ practiceId, practice, opened, halls, hall }: Props) {
  const { draft, keeper } = opened;
  const { document } = draft;
  const answers = useClassAnswers(document, hall?.draft.document ?? null, practice);
  const form = useClassForm(opened, currencyOf(practice.currency), answers.problems);
  const change = (part: Partial<ClassDocument>) => keeper.change((before) => ({ ...before, ...part }));
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
        inputs={<WhoFields {...part} />}
      />
      <HallSection {...part} practiceId={practiceId} practice={practice} halls={halls} hall={hall} />
      <MatsSection
        {...part}
        practice={practice}
        hall={hall?.draft.document ?? null}
        answers={answers}
        typed={draft.typed}
      />
      <EveningSection {...part} practice={practice} hall={hall} answers={answers} typed={draft.typed} />
      <PriceSection {...part} practice={practice} answers={answers} typed={draft.typed} />
      <PassesSection {...part} asked={answers.asked} typed={draft.typed} />
      <SureSection {...part} practice={practice} asked={answers.asked} typed={draft.typed} />
      <CurveSection {...part} practice={practice} asked={answers.asked} typed={draft.typed} />
      <HigherSection {...part} asked={answers.asked} typed={draft.typed} />
      <StudioSection {...part} practice={practice} asked={answers.asked} typed={draft.typed} />
      <ChangesSection asked={answers.asked} typed={draft.typed} />
      <YearSection {...part} practice={practice} answers={answers} typed={draft.typed} />
    </FormOf>
  );
}
