import type { GoingPart } from "#app/views";
import type { HappenedDocument } from "#core/outlook";
import type { Locale, PracticeDocument } from "#core/words";
import { type ReactNode, useMemo } from "react";
import { PartWorking } from "../class-sheet/part-working.tsx";
import { SheetSection } from "../class-sheet/sheet-section.tsx";
import type { Opened } from "../drafts/use-draft.ts";
import { Show } from "../parts/show.tsx";
import { AskedAnswer } from "../prices/asked-answer.tsx";
import { dayWords } from "../words/dates.ts";
import { BandPlot } from "./band-plot.tsx";
import type { OutlookSection } from "./outlook-part.ts";
import { RecordFields } from "./record-fields.tsx";
import { RollFields } from "./roll-fields.tsx";

type Props = OutlookSection & {
  readonly practice: PracticeDocument;
  readonly happened: Opened<HappenedDocument> | null;
  /** places of the mat plan; null until it is worked out */
  readonly places: number | null;
  /** what else brings sessions into the record, like a file */
  readonly importing?: ReactNode;
};

/** What happened in the sessions held, and what is to be expected of those ahead. */
export function GoingSection(props: Props) {
  const { document, change, asked, typed, practice, happened, places, importing } = props;
  const { demand, going } = asked.answer ?? {};
  const { locale } = practice;
  const ready = going?.kind === "ready" ? going : null;
  const plot = useMemo(() => (ready === null ? null : <BandPlot part={ready} />), [ready]);
  const table = useMemo(
    () => (ready === null ? null : <AheadTable part={ready} locale={locale} />),
    [ready, locale],
  );
  return (
    <SheetSection
      id="going"
      title="How it is going"
      answer={
        <>
          <AskedAnswer asked={asked} part={going} typed={typed} fields={["outlook.roll", "outlook.season"]} />
          {demand?.kind === "ready" ? (
            <div className="stack-close lesser">
              <h3>Who wanted to come</h3>
              {demand.says.map((says) => (
                <p key={says}>{says}</p>
              ))}
            </div>
          ) : null}
        </>
      }
      picture={plot}
      working={
        <>
          <PartWorking parts={[demand, going].filter((it) => it !== undefined)} />
          {table === null ? null : <Show summary="Show each session ahead">{table}</Show>}
        </>
      }
      inputs={
        <>
          {happened === null ? null : (
            <RecordFields
              opened={happened}
              document={document}
              practice={practice}
              places={places}
              importing={importing}
            />
          )}
          <RollFields document={document} change={change} />
        </>
      }
    />
  );
}

type TableProps = { readonly part: Extract<GoingPart, { kind: "ready" }>; readonly locale: Locale };

function AheadTable({ part, locale }: TableProps) {
  const first = part.ahead[0]?.date;
  const pays = part.ahead.some((it) => it.pays !== null);
  return (
    <table className="figures">
      <caption>The sessions ahead{first == null ? "" : `, from ${dayWords(first, locale)}`}</caption>
      <thead>
        <tr>
          <th scope="col">Session</th>
          <th scope="col">About</th>
          <th scope="col">Eight of ten</th>
          <th scope="col">Full</th>
          {pays ? <th scope="col">Pays</th> : null}
        </tr>
      </thead>
      <tbody>
        {part.ahead.map((row) => (
          <tr key={row.date ?? row.says}>
            <th scope="row">{row.says}</th>
            <td>{row.mean.toFixed(1)}</td>
            <td>{row.low === row.high ? row.low : `${row.low}–${row.high}`}</td>
            <td>{row.full}</td>
            {pays ? <td>{row.pays}</td> : null}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
