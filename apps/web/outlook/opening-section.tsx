import type { OpeningPart } from "#app/views";
import { useMemo } from "react";
import { PartWorking } from "../class-sheet/part-working.tsx";
import { SheetSection } from "../class-sheet/sheet-section.tsx";
import { AskedAnswer } from "../prices/asked-answer.tsx";
import { OpeningFields } from "./opening-fields.tsx";
import type { OutlookSection } from "./outlook-part.ts";

/** How many to accept for a free first class, and what it taught. */
export function OpeningSection({ document, change, asked, typed }: OutlookSection) {
  const part = asked.answer?.opening;
  const ready = part?.kind === "ready" ? part : null;
  const table = useMemo(() => (ready === null ? null : <NightTable part={ready} />), [ready]);
  return (
    <SheetSection
      id="opening"
      title="The opening"
      answer={<AskedAnswer asked={asked} part={part} typed={typed} fields={["outlook.opening"]} />}
      picture={table}
      working={part === undefined ? null : <PartWorking parts={[part]} />}
      inputs={<OpeningFields document={document} change={change} />}
    />
  );
}

function NightTable({ part }: { readonly part: Extract<OpeningPart, { kind: "ready" }> }) {
  return (
    <table className="figures">
      <caption>
        By how many were accepted: how often more than {part.room} come, and on average who is sent home and
        how many mats stay empty
      </caption>
      <thead>
        <tr>
          <th scope="col">Accepted</th>
          <th scope="col">Too many</th>
          <th scope="col">Sent home</th>
          <th scope="col">Empty</th>
        </tr>
      </thead>
      <tbody>
        {part.rows.map((row) => (
          <tr key={row.accepted} data-marked={row.marked || undefined}>
            <th scope="row">
              {row.accepted}
              {row.marked ? <span className="figures-mark"> accept</span> : null}
            </th>
            <td>{row.over}</td>
            <td>{row.turnedAway}</td>
            <td>{row.empty}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
