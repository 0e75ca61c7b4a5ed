import { useQueryClient } from "@tanstack/react-query";
import { Link, useNavigate, useParams } from "@tanstack/react-router";
import { removeDocument } from "../api/documents.ts";
import { newId } from "../api/new-id.ts";
import { practiceQuery } from "../api/practices.ts";
import { ClassSheetPage } from "../class-sheet/class-sheet.tsx";
import { forgetDocument } from "../drafts/keepers.ts";
import { useDraft } from "../drafts/use-draft.ts";
import { usePractice } from "../drafts/use-practice.ts";
import { DeleteButton } from "../parts/delete-button.tsx";
import { ExportButton, fileNameOf } from "../parts/files.tsx";
import { PageTitle } from "../parts/page-title.tsx";
import { SaveBar } from "../parts/save-bar.tsx";
import { DatesPart } from "../tonight/dates-part.tsx";
import { nameOr } from "./hall-name.ts";
import { NothingHere } from "./nothing-here.tsx";

/** One class. */
export function ClassPage() {
  const { practice: id, id: one } = useParams({ from: "/practice/$practice/classes/$id" });
  const here = usePractice(id);
  const opened = useDraft(id, "classes", one);
  const hall = useDraft(id, "halls", opened?.draft.document.hall ?? null);
  const happened = useDraft(id, "happened", one);
  const queries = useQueryClient();
  const go = useNavigate();
  if (opened === null) return <NothingHere what="class" practice={id} />;
  const { draft, keeper } = opened;
  const name = nameOr(draft.document.name, "A class without a name");
  const remove = async () => {
    keeper.stop();
    const { from, sending } = keeper.read();
    // never sent, so the server knows nothing of it
    if (from === 0 && sending === null) return { ok: true, value: null } as const;
    return removeDocument(id, "classes", one, { action: newId(), from });
  };
  const removed = async () => {
    forgetDocument(id, "classes", one);
    forgetDocument(id, "happened", one);
    await go({ to: "/practice/$practice/classes", params: { practice: id } });
    await queries.invalidateQueries({ queryKey: practiceQuery(id).queryKey });
  };
  return (
    <>
      <SaveBar what={name} draft={draft} keeper={keeper} />
      <div className="page-head">
        <PageTitle tab={name}>{name}</PageTitle>
      </div>
      <ClassSheetPage
        practiceId={id}
        classId={one}
        practice={here.practice}
        opened={opened}
        halls={here.halls}
        hall={hall}
        happened={happened}
      />
      <DatesPart practiceId={id} id={one} document={draft.document} />
      <section className="part no-print" aria-label="Keep or delete">
        <p className="row">
          <ExportButton
            label="Save to a file"
            name={fileNameOf(name, "class")}
            document={{ ...draft.document, format: "hallful/class@1" }}
          />
          <button type="button" className="button" onClick={() => print()}>
            Print this sheet
          </button>
          {draft.document.hall === null ? null : (
            <Link to="/practice/$practice/classes/$id/hall-sheet" params={{ practice: id, id: one }}>
              Hall sheet
            </Link>
          )}
          <DeleteButton
            label={`Delete ${name}`}
            warning="Its prices, its year and what happened in it go with it; the hall stays. This cannot be undone; save it to a file first if you may want it again."
            remove={remove}
            removed={() => void removed()}
          />
          <Link to="/practice/$practice/classes" params={{ practice: id }}>
            All classes
          </Link>
        </p>
      </section>
    </>
  );
}
