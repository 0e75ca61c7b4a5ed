import type { PassRow, PriceSheet } from "#app/views";
import { type Planning, planningOf } from "#core/class";
import type { ClassPart } from "../class-sheet/class-part.ts";
import { PartAnswer } from "../class-sheet/part-answer.tsx";
import { PartWorking } from "../class-sheet/part-working.tsx";
import { SheetSection } from "../class-sheet/sheet-section.tsx";
import type { Draft } from "../drafts/draft.ts";
import { PercentField } from "../fields/percent-field.tsx";
import { AskedAnswer } from "./asked-answer.tsx";
import { LivePassFields } from "./live-pass-fields.tsx";
import type { WorkerAnswer } from "./use-worker-answer.ts";

type Props = ClassPart & {
  readonly asked: WorkerAnswer<PriceSheet>;
  readonly typed: Draft<unknown>["typed"];
};

/** For how long a pass runs, and who would lose classes. */
export function PassesSection({ document, change, asked, typed }: Props) {
  const part = asked.answer?.passes;
  const owed = asked.answer?.owed;
  const { attendance, confidence } = planningOf(document);
  const put = (planning: Planning) => change({ planning: { ...document.planning, ...planning } });
  return (
    <SheetSection
      id="passes"
      title="How long a pass runs"
      answer={
        <>
          <AskedAnswer
            asked={asked}
            part={part}
            typed={typed}
            fields={["planning.attendance", "planning.confidence", "prices.passes"]}
          />
          {owed === undefined ? null : <PartAnswer part={owed} typed={typed} fields={["planning.live"]} />}
        </>
      }
      picture={part?.kind === "ready" ? <PassTable passes={part.passes} /> : null}
      working={part === undefined || owed === undefined ? null : <PartWorking parts={[part, owed]} />}
      inputs={
        <div>
          <PercentField
            path="planning.attendance"
            label="Of 100 evenings, a holder comes to"
            beyond="Nobody comes to every evening, and who comes to none never uses a pass up."
            help="75 is three of four; fewer once she has come for a while"
            least={1}
            most={99}
            guessable
            value={attendance}
            put={(share) => put({ attendance: share })}
          />
          <PercentField
            path="planning.confidence"
            label="Of 100 holders, how many should use up their pass"
            beyond="No use-by is long enough for all of them, and for none there is nothing to work out."
            help="The more, the longer it runs"
            least={1}
            most={99}
            guessable
            value={confidence}
            put={(share) => put({ confidence: share })}
          />
          <LivePassFields document={document} change={change} />
        </div>
      }
    />
  );
}

function PassTable({ passes }: { readonly passes: readonly PassRow[] }) {
  return (
    <table className="figures">
      <caption>Passes that are sold now</caption>
      <thead>
        <tr>
          <th scope="col">Pass of</th>
          <th scope="col">Weeks</th>
          <th scope="col">Use-by</th>
          <th scope="col">Lose classes</th>
        </tr>
      </thead>
      <tbody>
        {passes.map((it) => (
          <tr key={it.classes}>
            <th scope="row">{it.classes} classes</th>
            <td>{it.teachingWeeks}</td>
            <td>{it.until}</td>
            <td>{it.losing}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
