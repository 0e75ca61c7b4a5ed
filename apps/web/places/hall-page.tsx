import { useQueryClient } from "@tanstack/react-query";
import { Link, useNavigate, useParams } from "@tanstack/react-router";
import { removeDocument } from "../api/documents.ts";
import { newId } from "../api/new-id.ts";
import { practiceQuery } from "../api/practices.ts";
import { forgetDocument } from "../drafts/keepers.ts";
import { useDraft } from "../drafts/use-draft.ts";
import { usePractice } from "../drafts/use-practice.ts";
import { HallSheet } from "../hall/hall-sheet.tsx";
import { DeleteButton } from "../parts/delete-button.tsx";
import { ExportButton, fileNameOf } from "../parts/files.tsx";
import { PageTitle } from "../parts/page-title.tsx";
import { SaveBar } from "../parts/save-bar.tsx";
import { nameOr } from "./hall-name.ts";
import { NothingHere } from "./nothing-here.tsx";

/** One hall. */
export function HallPage() {
  const { practice: id, id: hall } = useParams({ from: "/practice/$practice/halls/$id" });
  const here = usePractice(id);
  const opened = useDraft(id, "halls", hall);
  const queries = useQueryClient();
  const go = useNavigate();
  if (opened === null) return <NothingHere what="hall" practice={id} />;
  const { draft, keeper } = opened;
  const name = nameOr(draft.document.name, "A hall without a name");
  const used = here.classes.filter((it) => it.document.hall === hall).map((it) => it.document.name);
  const remove = async () => {
    keeper.stop();
    const { from, sending } = keeper.read();
    // never sent, so the server knows nothing of it
    if (from === 0 && sending === null) return { ok: true, value: null } as const;
    return removeDocument(id, "halls", hall, { action: newId(), from });
  };
  const removed = async () => {
    forgetDocument(id, "halls", hall);
    await go({ to: "/practice/$practice/halls", params: { practice: id } });
    await queries.invalidateQueries({ queryKey: practiceQuery(id).queryKey });
  };
  return (
    <>
      <SaveBar what={name} draft={draft} keeper={keeper} />
      <div className="page-head">
        <PageTitle tab={name}>{name}</PageTitle>
        <UsedBy names={used} />
        <p className="row no-print">
          <Link to="/practice/$practice/halls/$id/hall-sheet" params={{ practice: id, id: hall }}>
            Hall sheet
          </Link>
          <Link to="/practice/$practice/halls/$id/measure" params={{ practice: id, id: hall }}>
            Measure this hall
          </Link>
        </p>
      </div>
      <HallSheet opened={opened} practice={here.practice} />
      <section className="part no-print" aria-label="Keep or delete">
        <p className="row">
          <ExportButton
            label="Save to a file"
            name={fileNameOf(name, "hall")}
            document={{ ...draft.document, format: "hallful/hall@1" }}
          />
          {used.length === 0 ? (
            <DeleteButton
              label={`Delete ${name}`}
              warning="Its floor and its terms go with it. This cannot be undone; save it to a file first if you may want it again."
              remove={remove}
              removed={() => void removed()}
            />
          ) : (
            <span className="small soft">
              To delete this hall, first give {used.join(" and ")} another one.
            </span>
          )}
          <Link to="/practice/$practice/halls" params={{ practice: id }}>
            All halls
          </Link>
        </p>
      </section>
    </>
  );
}

function UsedBy({ names }: { readonly names: readonly string[] }) {
  if (names.length === 0) return <p className="soft">No class uses this hall yet.</p>;
  return <p className="soft">Used by {names.join(", ")}.</p>;
}
