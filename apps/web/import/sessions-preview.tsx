import type { HappenedDocument } from "#core/outlook";
import type { HeadsColumn } from "#core/table";
import type { Locale, Problem } from "#core/words";
import { useMemo, useState } from "react";
import { focusNew } from "../parts/focus-new.ts";
import { ProblemList } from "../parts/problem-list.tsx";
import { AskPlaces } from "./ask-places.tsx";
import { Clashes } from "./clashes.tsx";
import { FirstRows } from "./first-rows.tsx";
import { onPage } from "./on-page.ts";
import { RowsLeft } from "./rows-left.tsx";
import { type SessionsFile, sessionsFile } from "./sessions-file.ts";
import { SessionsTable } from "./sessions-table.tsx";
import { nothingSaid, type TableAsk } from "./table-ask.ts";
import { TableChoices, type UseLabel } from "./table-choices.tsx";
import type { Source } from "./table-source.tsx";
import { noneUsable, takingProblems } from "./taking-problems.ts";
import { taken, takingOf } from "./taking.ts";
import { takenWords, takingWords } from "./taking-words.ts";

type Props = {
  readonly source: Source;
  readonly record: HappenedDocument;
  readonly usualPlaces: number | null;
  readonly locale: Locale;
  readonly today: string;
  readonly take: (after: HappenedDocument, says: string) => void;
  readonly leave: () => void;
};

/** What a file would bring into the record, before it does. */
export function SessionsPreview({ source, record, usualPlaces, locale, today, take, leave }: Props) {
  const [ask, setAsk] = useState<TableAsk<HeadsColumn>>(nothingSaid);
  const [told, setTold] = useState<number | null>(null);
  const [theFiles, setTheFiles] = useState<ReadonlySet<string>>(new Set());
  const places = record.capacity ?? told ?? usualPlaces;
  const file = useMemo(() => sessionsFile(source.bytes, ask, places, today), [source, ask, places, today]);
  const taking = useMemo(
    () => (file.kind === "read" ? takingOf(record, file.sessions) : null),
    [file, record],
  );
  const after =
    taking === null
      ? null
      : withPlaces(taken(record, taking, theFiles), record.capacity === undefined, places);
  const problems = problemsOf(file, record, after);
  const counts = { fresh: taking?.fresh.length ?? 0, replaced: replacedIn(taking?.clashes ?? [], theFiles) };
  const nothing = counts.fresh + counts.replaced === 0;
  return (
    <section className="stack" aria-label="What the file holds">
      <output className="answer" ref={focusNew} tabIndex={-1}>
        {source.name}: {takingWords(file, taking)}
      </output>
      <ProblemList problems={problems} />
      {file.kind === "no table" ? null : (
        <>
          <TableChoices
            title="Which column is what"
            uses={USES}
            seen={file.seen}
            ask={ask}
            asksOrder={asksOrder(file)}
            put={setAsk}
          />
          <FirstRows seen={file.seen} />
        </>
      )}
      {record.capacity === undefined && file.kind === "read" ? (
        <AskPlaces usual={usualPlaces} put={setTold} />
      ) : null}
      {taking === null || taking.clashes.length === 0 ? null : (
        <Clashes clashes={taking.clashes} theFiles={theFiles} put={setTheFiles} locale={locale} />
      )}
      {taking === null || taking.fresh.length === 0 ? null : (
        <SessionsTable sessions={taking.fresh} locale={locale} />
      )}
      {file.kind === "read" ? <RowsLeft left={file.left} open={file.sessions.length === 0} /> : null}
      <p className="row">
        <button
          type="button"
          className="button button-main"
          disabled={after === null || nothing || problems.length > 0}
          onClick={() => {
            if (after !== null) take(after, takenWords(counts));
          }}
        >
          Take in
        </button>
        <button type="button" className="button" onClick={leave}>
          Leave it
        </button>
      </p>
    </section>
  );
}

const USES: readonly UseLabel<HeadsColumn>[] = [
  { use: "date", label: "Date", needed: true },
  { use: "heads", label: "People who came", needed: true },
  { use: "capacity", label: "Places", needed: false },
  { use: "turnedAway", label: "Turned away", needed: false },
  { use: "waiting", label: "Waited, no place", needed: false },
  { use: "newcomers", label: "There for the first time", needed: false },
];

/** Asked where both orders are possible, and where one was only likely. */
function asksOrder(file: Exclude<SessionsFile, { kind: "no table" }>): boolean {
  if (file.kind === "asks") return file.problems.some(({ code }) => code.startsWith("date-order"));
  return file.dates.how === "likely" || file.dates.how === "told";
}

function withPlaces(document: HappenedDocument, unknown: boolean, places: number | null): HappenedDocument {
  return unknown && places !== null ? { ...document, capacity: places } : document;
}

function replacedIn(clashes: readonly { readonly date: string }[], theFiles: ReadonlySet<string>): number {
  return clashes.filter(({ date }) => theFiles.has(date)).length;
}

function problemsOf(
  file: SessionsFile,
  record: HappenedDocument,
  after: HappenedDocument | null,
): readonly Problem[] {
  if (file.kind !== "read") return file.problems.map(onPage);
  if (file.sessions.length === 0) return [noneUsable(file.left.length)];
  return after === null ? [] : takingProblems(record, after);
}
