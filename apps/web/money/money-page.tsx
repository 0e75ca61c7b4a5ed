import { Link, useParams } from "@tanstack/react-router";
import { useDraft } from "../drafts/use-draft.ts";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { SaveBar } from "../parts/save-bar.tsx";
import { MoneySheet } from "./money-sheet.tsx";
import "./money.css";

/** The money of a practice: the bank month by month, the tax pot, when studio work can go, and all it rests on. */
export function MoneyPage() {
  const { practice: id } = useParams({ from: "/practice/$practice/money" });
  const { practice, classes, halls } = usePractice(id);
  const opened = useDraft(id, "plans", "money");
  const week = useDraft(id, "plans", "week");
  if (opened === null) return null;
  return (
    <>
      <SaveBar what="The money" draft={opened.draft} keeper={opened.keeper} />
      <div className="page-head">
        <PageTitle tab="Money">Money</PageTitle>
        <p>
          When money comes and goes, what to put aside for tax, and when studio work can go. The{" "}
          <Link to="/practice/$practice/classes" params={{ practice: id }}>
            classes
          </Link>{" "}
          come from their sheets.
        </p>
        <p>
          <Link to="/practice/$practice/books" params={{ practice: id }}>
            The books: what came in, what was earned, who owes what
          </Link>
        </p>
      </div>
      <MoneySheet
        practiceId={id}
        practice={practice}
        classes={classes}
        halls={halls}
        opened={opened}
        week={week?.draft.document ?? {}}
      />
    </>
  );
}
