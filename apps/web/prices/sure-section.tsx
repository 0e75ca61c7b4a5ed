import type { ChanceRow, PriceSheet } from "#app/views";
import { type Planning, planningOf } from "#core/class";
import type { PracticeDocument } from "#core/words";
import { useMemo } from "react";
import type { ClassPart } from "../class-sheet/class-part.ts";
import { PartWorking } from "../class-sheet/part-working.tsx";
import { SheetSection } from "../class-sheet/sheet-section.tsx";
import type { Draft } from "../drafts/draft.ts";
import { NumberField } from "../fields/number-field.tsx";
import { ShowWorking } from "../parts/working.tsx";
import { AskedAnswer } from "./asked-answer.tsx";
import { ChancePlot } from "./chance-plot.tsx";
import type { WorkerAnswer } from "./use-worker-answer.ts";

type Props = ClassPart & {
  readonly practice: PracticeDocument;
  readonly asked: WorkerAnswer<PriceSheet>;
  readonly typed: Draft<unknown>["typed"];
};

/** How surely an evening and a term pay. */
export function SureSection({ document, change, asked, typed }: Props) {
  const part = asked.answer?.sure;
  const { dispersion, termEvenings } = planningOf(document);
  const put = (planning: Planning) => change({ planning: { ...document.planning, ...planning } });
  const rows = part?.kind === "ready" ? part.rows : null;
  const uneven = part?.kind === "ready" && part.uneven;
  const plot = useMemo(
    () => (rows === null ? null : <ChancePlot rows={rows} uneven={uneven} />),
    [rows, uneven],
  );
  return (
    <SheetSection
      id="sure"
      title="How sure an evening is"
      answer={
        <AskedAnswer
          asked={asked}
          part={part}
          typed={typed}
          fields={["heads", "planning.dispersion", "planning.termEvenings", "prices", "mix"]}
        />
      }
      picture={plot}
      working={
        part === undefined ? null : (
          <>
            <PartWorking parts={[part]} />
            {rows === null ? null : (
              <ShowWorking summary="Show how often each number comes">
                <ChanceTable rows={rows} uneven={uneven} />
              </ShowWorking>
            )}
          </>
        )
      }
      inputs={
        <div>
          <NumberField
            path="planning.dispersion"
            label="How uneven evenings are"
            help="1 is chance alone; 1.5 is usual; 3 is a crowd one week and nobody the next"
            unit="variance ÷ mean"
            range={{ least: 1, most: 20 }}
            guessable
            value={dispersion}
            put={(value) => put({ dispersion: value })}
          />
          <NumberField
            path="planning.termEvenings"
            label="A term has"
            unit="evenings"
            range={{ least: 1, most: 60, whole: true }}
            guessable
            value={termEvenings}
            put={(value) => put({ termEvenings: value })}
          />
        </div>
      }
    />
  );
}

type Shown = { readonly rows: readonly ChanceRow[]; readonly uneven: boolean };

function ChanceTable({ rows, uneven }: Shown) {
  return (
    <table className="figures">
      <caption>How often each number of people comes</caption>
      <thead>
        <tr>
          <th scope="col">People</th>
          <th scope="col">How often</th>
          {uneven ? <th scope="col">By chance alone</th> : null}
          <th scope="col">Leaves</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.heads}>
            <th scope="row">{row.heads}</th>
            <td>{row.says}</td>
            {uneven ? <td>{row.plainSays}</td> : null}
            <td>{row.leaves}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
