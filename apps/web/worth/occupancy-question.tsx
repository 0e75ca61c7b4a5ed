import { type Hall, type Occupancy, occupancy, sourceInWords } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { areaWords, eachWords } from "./area-words.ts";
import { Question } from "./question.tsx";

type Props = { readonly hall: Hall; readonly units: LengthUnits };

/** The posted number first, then what published tables give as a guide, each with its table. */
export function OccupancyQuestion({ hall, units }: Props) {
  const found = occupancy(hall, undefined, units);
  if (!found.ok) return null;
  const { sentences, caution, exits } = found.value;
  return (
    <Question title="How many the room may hold" says={sentences[0] ?? ""}>
      <p className="caution">{caution}</p>
      <BySpace found={found.value} units={units} />
      {exits.length > 0 && <ByExits found={found.value} />}
      <p className="small">{sentences.at(-1)}</p>
    </Question>
  );
}

function BySpace({ found, units }: { readonly found: Occupancy; readonly units: LengthUnits }) {
  return (
    <table className="figures guide">
      <caption>
        As a guide by floor space: {areaWords(found.grossArea, units)} within the walls,{" "}
        {areaWords(found.netArea, units)} clear of what stands on it
      </caption>
      <thead>
        <tr>
          <th scope="col">Use of the room, and the table</th>
          <th scope="col">Each</th>
          <th scope="col">People</th>
        </tr>
      </thead>
      <tbody>
        {found.bySpace.map((it) => (
          <tr key={`${it.source.title} ${it.use}`}>
            <th scope="row">
              {it.use}
              <span className="guide-source">
                {it.areaUsed === "gross" ? "within the walls" : "clear floor"}
                {it.basis === null ? ", the smaller, as the table was not looked up" : ""}.{" "}
                {sourceInWords(it.source)}
              </span>
            </th>
            <td>{eachWords(it.squareMetresPerPerson, units)}</td>
            <td>{it.people}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function ByExits({ found }: { readonly found: Occupancy }) {
  const one = found.exits.length === 1;
  return (
    <table className="figures guide">
      <caption>As a guide by the width of the exits</caption>
      <thead>
        <tr>
          <th scope="col">The rule, and the table</th>
          {one ? null : <th scope="col">Widest shut</th>}
          <th scope="col">{one ? "People" : "All open"}</th>
        </tr>
      </thead>
      <tbody>
        {found.byExits.map((it) => (
          <tr key={it.rule}>
            <th scope="row">
              {it.rule}
              <span className="guide-source">{sourceInWords(it.source)}</span>
            </th>
            {one ? null : <td>{it.withoutWidest}</td>}
            <td>{it.all}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
