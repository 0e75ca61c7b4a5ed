import { Link, useParams } from "@tanstack/react-router";
import { useDraft } from "../drafts/use-draft.ts";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { SaveBar } from "../parts/save-bar.tsx";
import { YearSheet } from "./year-sheet.tsx";
import "./year.css";

/** The year of a practice: its real teaching weeks, every date of every class, and what takes the others. */
export function YearPage() {
  const { practice: id } = useParams({ from: "/practice/$practice/year" });
  const { practice, classes, halls } = usePractice(id);
  const opened = useDraft(id, "plans", "year");
  if (opened === null) return null;
  return (
    <>
      <SaveBar what="The year" draft={opened.draft} keeper={opened.keeper} />
      <div className="page-head">
        <PageTitle tab="The year">The year</PageTitle>
        <p className="no-print">
          The weeks in which you really teach. The{" "}
          <Link to="/practice/$practice/classes" params={{ practice: id }}>
            classes
          </Link>{" "}
          come from their sheets, with when they begin and end. For which of them to teach see{" "}
          <Link to="/practice/$practice/week" params={{ practice: id }}>
            the week
          </Link>
          .
        </p>
      </div>
      <YearSheet practiceId={id} practice={practice} classes={classes} halls={halls} opened={opened} />
    </>
  );
}
