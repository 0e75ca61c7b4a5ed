import { Link } from "@tanstack/react-router";
import type { HappenedDocument } from "#core/outlook";
import type { Locale } from "#core/words";
import type { Opened } from "../drafts/use-draft.ts";
import { ImportHappened } from "./import-happened.tsx";

type Props = {
  readonly practiceId: string;
  readonly opened: Opened<HappenedDocument>;
  readonly usualPlaces: number | null;
  readonly locale: Locale;
};

/** What a file can tell of a class: its sessions for the record, or its people on their own page. */
export function FromAFile({ practiceId, opened, usualPlaces, locale }: Props) {
  return (
    <div className="stack-close">
      <ImportHappened opened={opened} usualPlaces={usualPlaces} locale={locale} />
      <p className="small">
        A list with names is read elsewhere:{" "}
        <Link to="/practice/$practice/people/coming" params={{ practice: practiceId }}>
          who is still coming
        </Link>
        .
      </p>
    </div>
  );
}
