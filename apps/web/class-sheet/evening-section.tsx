import type { HallDocument } from "#core/hall";
import { isGuess, markGuess, markKnown } from "#core/class";
import { type PracticeDocument, word } from "#core/words";
import { useMemo } from "react";
import type { Draft } from "../drafts/draft.ts";
import type { Opened } from "../drafts/use-draft.ts";
import { FormOf } from "../fields/form.tsx";
import { useHallForm } from "../hall/hall-form.ts";
import { OtherCurrency } from "../hall/other-currency.tsx";
import { HireFields, noHire } from "../hall/hire-fields.tsx";
import { Show } from "../parts/show.tsx";
import { SaveBar } from "../parts/save-bar.tsx";
import type { ClassPart } from "./class-part.ts";
import { CostFields, MinuteFields } from "./evening-fields.tsx";
import { PartAnswer } from "./part-answer.tsx";
import { PartWorking } from "./part-working.tsx";
import { SheetSection } from "./sheet-section.tsx";
import type { ClassAnswers } from "./use-class-answers.ts";

type Props = ClassPart & {
  readonly practice: PracticeDocument;
  readonly hall: Opened<HallDocument> | null;
  readonly answers: ClassAnswers;
  readonly typed: Draft<unknown>["typed"];
};

/** What the next evening costs: the charged slot, and everything else that it takes. */
export function EveningSection({ document, change, practice, hall, answers, typed }: Props) {
  const all = { ...typed, ...hall?.draft.typed };
  return (
    <SheetSection
      id="evening"
      title="What an evening costs"
      answer={<PartAnswer part={answers.sheet.evening} typed={all} fields={["minutes", "costs", "hire"]} />}
      working={<PartWorking parts={[answers.sheet.evening]} />}
      inputs={
        <>
          {hall === null ? null : (
            <HallCharges
              key={document.hall}
              document={document}
              change={change}
              practice={practice}
              hall={hall}
            />
          )}
          <MinuteFields document={document} change={change} />
          <CostFields document={document} change={change} locale={practice.locale} />
        </>
      }
    />
  );
}

type ChargesProps = ClassPart & { readonly practice: PracticeDocument; readonly hall: Opened<HallDocument> };

/** The hall's own terms, open for change here too; whether a rate is a guess belongs to this class. */
function HallCharges({ document, change, practice, hall }: ChargesProps) {
  const base = useHallForm(hall, practice);
  const { guesses } = document;
  const form = useMemo(
    () => ({
      ...base,
      isGuess: (path: string) => isGuess({ guesses }, path),
      setGuess: (path: string, guess: boolean) =>
        change(guess ? markGuess({ guesses }, path) : markKnown({ guesses }, path)),
    }),
    [base, guesses, change],
  );
  const { document: charging } = hall.draft;
  const unknown = charging.hire === undefined;
  return (
    <FormOf form={form}>
      <Show
        summary={`What ${charging.name} charges${unknown ? "" : " – change its terms"}`}
        open={unknown || charging.currency !== practice.currency}
      >
        <p className="small soft">
          These are the hall’s {word("hire", practice.locale)} terms: a change here holds for every class in
          this hall.
        </p>
        <SaveBar what={charging.name} draft={hall.draft} keeper={hall.keeper} />
        <OtherCurrency
          document={charging}
          practice={practice}
          change={(part) => hall.keeper.change((before) => ({ ...before, ...part }))}
        />
        <HireFields
          hire={charging.hire ?? noHire}
          put={(terms) =>
            hall.keeper.change((before) => ({ ...before, hire: terms, currency: base.currency }))
          }
          locale={practice.locale}
        />
      </Show>
    </FormOf>
  );
}
