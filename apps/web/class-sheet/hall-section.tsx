import type { HallDocument } from "#core/hall";
import { type PracticeDocument, word } from "#core/words";
import { Link } from "@tanstack/react-router";
import type { Opened } from "../drafts/use-draft.ts";
import type { Listed } from "../drafts/use-practice.ts";
import { ChoiceField } from "../fields/choice-field.tsx";
import { ratePerWhat } from "../words/rate-per-what.ts";
import type { ClassPart } from "./class-part.ts";
import { SheetSection } from "./sheet-section.tsx";

type Props = ClassPart & {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly halls: readonly Listed<HallDocument>[];
  readonly hall: Opened<HallDocument> | null;
};

/** Which hall, and what is known of it. */
export function HallSection({ document, change, practiceId, practice, halls, hall }: Props) {
  const gone = document.hall !== null && hall === null;
  const choices = [
    { value: "", label: gone ? "a hall that was deleted" : "not chosen yet" },
    ...halls.map((it) => ({ value: it.id, label: it.document.name })),
  ];
  return (
    <SheetSection
      id="hall"
      title="The hall and its floor"
      answer={
        <p className="answer" {...(hall === null ? { "data-withheld": true } : {})}>
          {hall === null ? withoutHall(gone) : hallSentence(hall.draft.document, practice)}
        </p>
      }
      inputs={
        <div>
          <ChoiceField
            label="Hall"
            value={hall === null ? "" : (document.hall ?? "")}
            choices={choices}
            onChange={(id) => change({ hall: id === "" ? null : id })}
          />
          <p className="row">
            {document.hall === null || hall === null ? (
              <Link to="/practice/$practice/halls" params={{ practice: practiceId }}>
                Draw a hall
              </Link>
            ) : (
              <Link to="/practice/$practice/halls/$id" params={{ practice: practiceId, id: document.hall }}>
                Open {hall.draft.document.name}: its floor, its numbers, what it charges
              </Link>
            )}
          </p>
        </div>
      }
    />
  );
}

function withoutHall(gone: boolean): string {
  return gone ? "Its hall was deleted; it has none now." : "No hall is chosen yet.";
}

function hallSentence(hall: HallDocument, practice: PracticeDocument): string {
  const where = hall.address === undefined || hall.address === "" ? "" : `, ${hall.address}`;
  const rate = ratePerWhat(hall.hire, hall.currency ?? practice.currency, practice.locale);
  const hire = word("hire", practice.locale);
  const charges = rate === "" ? `what its ${hire} costs is not known yet` : `its ${hire} is ${rate}`;
  return `${hall.name}${where}: ${charges}.`;
}
