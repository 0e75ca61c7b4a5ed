import type { HappenedDocument } from "#core/outlook";
import type { Locale } from "#core/words";
import { useState } from "react";
import type { Opened } from "../drafts/use-draft.ts";
import { focusNew } from "../parts/focus-new.ts";
import { Show } from "../parts/show.tsx";
import { today } from "../words/dates.ts";
import { SessionsPreview } from "./sessions-preview.tsx";
import { exampleDay } from "./example-day.ts";
import { type Source, TableSource } from "./table-source.tsx";
import { takenBack } from "./taking.ts";

type Props = {
  /** the record of the class, open for editing */
  readonly opened: Opened<HappenedDocument>;
  /** places on an ordinary evening, as far as the sheet knows them */
  readonly usualPlaces: number | null;
  readonly locale: Locale;
};

/** What was taken in last, for as long as the panel is there. */
type Taken = {
  readonly says: string;
  readonly before: HappenedDocument;
  readonly after: HappenedDocument;
};

/** Sessions of ten years are some kilobytes; two million bytes are read while nobody notices. */
const MOST_BYTES = 2_000_000;

/**
 * Takes sessions out of a file or of pasted text into the record of a class: looked over first, nothing there
 * replaced unasked, and taken back with one click.
 */
export function ImportHappened({ opened, usualPlaces, locale }: Props) {
  const [source, setSource] = useState<Source | null>(null);
  const [last, setLast] = useState<Taken | null>(null);
  const { keeper, draft } = opened;
  const take = (after: HappenedDocument, says: string) => {
    setLast({ says, before: keeper.read().document, after });
    // the rows change their places: text that stands in one must not end up in another
    keeper.dropTyped("sessions[");
    keeper.change(() => after);
    setSource(null);
  };
  const back = () => {
    if (last === null) return;
    keeper.dropTyped("sessions[");
    keeper.change((now) => takenBack(now, last.before, last.after));
    setLast(null);
  };
  return (
    <Show summary="Bring in sessions from a file or pasted rows">
      <div className="stack holds-fields">
        <p className="small">
          A row for each session: its date and how many came, and if you like the places, who was turned away,
          who waited and who was new. The file is read here; only the sessions that you take in are kept.
        </p>
        <output className="stack-close">{last === null ? null : <p>{last.says}</p>}</output>
        {last === null ? null : (
          <p className="row">
            <button type="button" className="button" ref={focusNew} onClick={back}>
              Take it back
            </button>
            <span className="small soft">Until you leave this page. What you changed since stays.</span>
          </p>
        )}
        {source === null ? (
          <TableSource
            fileLabel="Choose a file of sessions"
            pasteLabel="Or paste rows"
            example={`like ${exampleDay(locale)}; 12; 14, or as a spreadsheet copies them`}
            most={MOST_BYTES}
            put={(chosen) => {
              setLast(null);
              setSource(chosen);
            }}
          />
        ) : (
          <SessionsPreview
            source={source}
            record={draft.document}
            usualPlaces={usualPlaces}
            locale={locale}
            today={today()}
            take={take}
            leave={() => setSource(null)}
          />
        )}
      </div>
    </Show>
  );
}
