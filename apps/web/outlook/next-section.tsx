import type { FullPart, NextPart, SheetPart } from "#app/views";
import { PartWorking } from "../class-sheet/part-working.tsx";
import { SheetSection } from "../class-sheet/sheet-section.tsx";
import { AskedAnswer } from "../prices/asked-answer.tsx";
import { EveningFields } from "./evening-fields.tsx";
import { FullFields } from "./full-fields.tsx";
import { NoticeFields } from "./notice-fields.tsx";
import type { OutlookSection } from "./outlook-part.ts";

/** Keep the class, change something, or close it; what full evenings ask for; and whether to run the next one. */
export function NextSection({ document, change, asked, typed }: OutlookSection) {
  const { next, full, evening } = asked.answer ?? {};
  const part = { document, change };
  const asAnswered = { asked, typed };
  return (
    <SheetSection
      id="next"
      title="What to do next"
      answer={
        <>
          <AskedAnswer asked={asked} part={next} typed={typed} fields={["outlook.notice", "prices", "mix"]} />
          {next?.kind === "ready" && next.notices.length > 1 ? <NoticeTable rows={next.notices} /> : null}
          <Aside title="When evenings are full" part={full} {...asAnswered} fields={["outlook.full"]} />
          {full?.kind === "ready" ? <RemedyList rows={full.rows} /> : null}
          <Aside title="The next session" part={evening} {...asAnswered} fields={["outlook.evening"]} />
        </>
      }
      working={<PartWorking parts={[next, evening].filter((it) => it !== undefined)} />}
      inputs={
        <>
          <NoticeFields {...part} />
          <FullFields {...part} />
          <EveningFields {...part} />
        </>
      }
    />
  );
}

type AsideProps = Pick<OutlookSection, "asked" | "typed"> & {
  readonly title: string;
  readonly part: SheetPart | undefined;
  readonly fields: readonly string[];
};

/** A lesser answer under a heading of its own; what is not asked is told in small. */
function Aside({ title, part, asked, typed, fields }: AsideProps) {
  return (
    <div className="stack-close lesser">
      <h3>{title}</h3>
      {part?.kind === "missing" ? (
        <p className="soft">
          {part.says} {part.next}
        </p>
      ) : (
        <AskedAnswer asked={asked} part={part} typed={typed} fields={fields} />
      )}
    </div>
  );
}

function RemedyList({ rows }: { readonly rows: Extract<FullPart, { kind: "ready" }>["rows"] }) {
  return (
    <ol className="list-plain ledger">
      {rows.map((row) => (
        <li key={row.key}>
          {row.name} {row.says}.
        </li>
      ))}
    </ol>
  );
}

function NoticeTable({ rows }: { readonly rows: Extract<NextPart, { kind: "ready" }>["notices"] }) {
  return (
    <table className="figures">
      <caption>The days on which notice can be given, as things look now</caption>
      <thead>
        <tr>
          <th scope="col">Notice on</th>
          <th scope="col">Going on leaves</th>
          <th scope="col">Ending leaves</th>
          <th scope="col">Then</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.when}>
            <th scope="row">{row.when}</th>
            <td>{row.goingOn}</td>
            <td>{row.ending}</td>
            <td>{row.advice}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
