import { useDraft } from "../drafts/use-draft.ts";
import { Show } from "../parts/show.tsx";
import { SaveBar } from "../parts/save-bar.tsx";
import { PracticeFields } from "./practice-fields.tsx";

/** What the whole practice shares, where it is used: under its lists. */
export function ThisPractice({ practice }: { readonly practice: string }) {
  const opened = useDraft(practice, "details", practice);
  if (opened === null) return null;
  const { draft, keeper } = opened;
  return (
    <section className="part" aria-label="This practice">
      <Show summary="This practice: name, currency, time zone, words and lengths">
        <div className="measure holds-fields">
          <SaveBar what="This practice" draft={draft} keeper={keeper} />
          <PracticeFields
            document={draft.document}
            unnamed={draft.document.name.trim() === ""}
            onChange={(document) => keeper.change(() => document)}
          />
        </div>
      </Show>
    </section>
  );
}
