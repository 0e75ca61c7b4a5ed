import { type HallDocument, setOutInWords } from "#core/hall";
import type { PracticeDocument } from "#core/words";
import { useMemo } from "react";
import type { Draft } from "../drafts/draft.ts";
import { PlanPicture } from "../floor/plan-picture.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { ShowWorking } from "../parts/working.tsx";
import type { ClassPart } from "./class-part.ts";
import { MatFields } from "./mat-fields.tsx";
import { PartAnswer } from "./part-answer.tsx";
import { SheetSection } from "./sheet-section.tsx";
import type { ClassAnswers } from "./use-class-answers.ts";

type Props = ClassPart & {
  readonly practice: PracticeDocument;
  readonly hall: HallDocument | null;
  readonly answers: ClassAnswers;
  readonly typed: Draft<unknown>["typed"];
};

/** How many mats there is room for, where each lies, and how to set them out with a tape. */
export function MatsSection({ document, change, practice, hall, answers, typed }: Props) {
  const { planned, working, sheet } = answers;
  const floorProblems = sheet.mats.kind === "unsound" ? sheet.mats.problems : answers.floorProblems;
  // drawn again when the plan is another, not at every key
  const picture = useMemo(
    () =>
      planned === null ? null : (
        <PlanPicture hall={planned.hall} plan={planned.plan} units={practice.units} />
      ),
    [planned, practice.units],
  );
  return (
    <SheetSection
      id="mats"
      title="The mats"
      answer={
        working && planned === null ? (
          <p className="answer">Working out where the mats lie …</p>
        ) : floorProblems.length > 0 ? (
          <>
            <p className="answer" data-withheld>
              Not worked out, because the floor or the mats are not sound.
            </p>
            <ProblemList problems={floorProblems} announce={false} />
          </>
        ) : (
          <PartAnswer part={sheet.mats} typed={typed} fields={["mats", "ownCap", "insurerCap"]} />
        )
      }
      picture={floorProblems.length > 0 ? null : picture}
      working={
        planned === null || floorProblems.length > 0 ? null : (
          <ShowWorking summary="Set the mats out with a tape">
            <ul className="set-out">
              {setOutInWords(planned.plan, practice.units).map((says) => (
                <li key={says}>{says}</li>
              ))}
            </ul>
          </ShowWorking>
        )
      }
      inputs={<MatFields document={document} change={change} hall={hall} units={practice.units} />}
    />
  );
}
