import { Link, useNavigate, useParams } from "@tanstack/react-router";
import { CompareHalls } from "../compare/compare-halls.tsx";
import { useDraft } from "../drafts/use-draft.ts";
import { usePractice } from "../drafts/use-practice.ts";
import { ChoiceField } from "../fields/choice-field.tsx";
import { PageTitle } from "../parts/page-title.tsx";
import { SaveBar } from "../parts/save-bar.tsx";
import { nameOr } from "./hall-name.ts";

/** The halls of a practice, compared for one of its classes. */
export function ComparePage() {
  const { practice: id = "", id: chosen } = useParams({ strict: false });
  const { practice, classes, halls } = usePractice(id);
  const one = chosen ?? classes[0]?.id ?? null;
  const opened = useDraft(id, "classes", one);
  const go = useNavigate();
  return (
    <>
      {opened === null ? null : (
        <SaveBar
          what={nameOr(opened.draft.document.name, "A class without a name")}
          draft={opened.draft}
          keeper={opened.keeper}
        />
      )}
      <div className="page-head">
        <PageTitle tab="Compare halls">Compare halls for a class</PageTitle>
        {opened === null || one === null ? (
          <p className="answer">
            There is no such class here.{" "}
            <Link to="/practice/$practice/classes" params={{ practice: id }}>
              Begin or choose one
            </Link>{" "}
            first: halls are compared for a class, its people and its prices.
          </p>
        ) : (
          <ChoiceField
            label="Class"
            value={one}
            choices={classes.map((it) => ({
              value: it.id,
              label: nameOr(it.document.name, "A class without a name"),
            }))}
            onChange={(next) =>
              void go({ to: "/practice/$practice/compare/$id", params: { practice: id, id: next } })
            }
          />
        )}
      </div>
      {opened === null || one === null ? null : (
        <CompareHalls key={one} practice={practice} opened={opened} halls={halls} />
      )}
    </>
  );
}
