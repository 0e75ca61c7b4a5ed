import type { YearQuestion } from "#app/views";
import { type YearPicture, type YearPlan } from "#core/year";
import type { PracticeDocument, Problem } from "#core/words";
import { useState } from "react";
import { ProblemList } from "../parts/problem-list.tsx";
import { saveFile } from "../parts/save-file.ts";
import { FeedAddress } from "./feed-address.tsx";
import type { ChangePlan } from "./plan-form.ts";

type Props = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly document: YearQuestion["document"];
  readonly picture: YearPicture;
  readonly plan: YearPlan;
  readonly change: ChangePlan;
};

/** The year to print, as a picture of its own, and as a file for a calendar program. */
export function TakeAway({ practiceId, practice, document, picture, plan, change }: Props) {
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const calendar = async () => {
    const edition = plan.edition + 1;
    const made = await import("./calendar-file.ts");
    const read = made.calendarFile({ ...document, edition }, practiceId, practice.name);
    setProblems(read.ok ? [] : read.problems);
    if (!read.ok) return;
    saveFile("classes.ics", read.value, "text/calendar");
    // counted, so that a later file is newer than this one for the calendar that took it
    change((before) => ({ ...before, edition }));
  };
  const drawing = async () => {
    const made = await import("./calendar-file.ts");
    saveFile("year.svg", made.pictureFile(picture), "image/svg+xml");
  };
  return (
    <div className="stack-close no-print">
      <p className="row">
        <button type="button" className="button" onClick={() => print()}>
          Print the year
        </button>
        <button type="button" className="button" onClick={() => void drawing()}>
          Save the picture
        </button>
        <button type="button" className="button" onClick={() => void calendar()}>
          Save for a calendar program
        </button>
      </p>
      <p className="small soft">
        The file for a calendar program (.ics) has each session with its hall and nothing of your time off, of
        why a date is missing or of people. Take in the newest file again after a change: a session that was
        moved moves.
      </p>
      <ProblemList problems={problems} />
      <FeedAddress plan={plan} change={change} />
    </div>
  );
}
