import { Link, useParams } from "@tanstack/react-router";
import { useDraft } from "../drafts/use-draft.ts";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { SaveBar } from "../parts/save-bar.tsx";
import { WeekSheet } from "./week-sheet.tsx";
import "./week.css";

/** The best week of a practice: the answer, what each class does for it, what could be tried, and all it rests on. */
export function WeekPage() {
  const { practice: id } = useParams({ from: "/practice/$practice/week" });
  const { practice, classes, halls } = usePractice(id);
  const opened = useDraft(id, "plans", "week");
  if (opened === null) return null;
  return (
    <>
      <SaveBar what="The week" draft={opened.draft} keeper={opened.keeper} />
      <div className="page-head">
        <PageTitle tab="The week">The week</PageTitle>
        <p>
          From all that you could teach the week that leaves the most within your limits. The{" "}
          <Link to="/practice/$practice/classes" params={{ practice: id }}>
            classes
          </Link>{" "}
          come from their sheets. Its dates are in{" "}
          <Link to="/practice/$practice/year" params={{ practice: id }}>
            the year
          </Link>
          .
        </p>
      </div>
      <WeekSheet practiceId={id} practice={practice} classes={classes} halls={halls} opened={opened} />
    </>
  );
}
