import { takesMat } from "#core/roll";
import type { RegisterHere } from "./register-here.ts";
import type { RegisterRow } from "./register-rows.ts";
import { tonightSentence } from "./tonight-sentence.ts";

type Props = {
  readonly here: RegisterHere;
  readonly rows: readonly RegisterRow[];
  readonly hall: string | null;
};

// a cell with nothing in it to be seen, so that a reader of the page knows it for one
const NOTHING = "\u00a0";
const BLANK = ["a", "b", "c", "d", "e", "f"] as const;

/** The register for a clipboard: names, how paid, boxes to tick, rows for walk-ins, a line for the heads. */
export function PrintRegister({ here, rows, hall }: Props) {
  const { session } = here;
  // whatever day it is printed on, the paper says the date
  const always = { ...here, hall, now: "1970-01-01T00:00:00Z" };
  const coming = rows.filter(({ place }) => takesMat(place) || place.state === "not come");
  return (
    <div className="print-only" aria-hidden="true">
      <p className="print-title">{tonightSentence(always)}</p>
      <table className="print-register">
        <thead>
          <tr>
            <th>Name</th>
            <th>How</th>
            <th>Here</th>
            <th>Not come</th>
          </tr>
        </thead>
        <tbody>
          {coming.map(({ place, name, how, isNew }) => (
            <tr key={place.id}>
              <td>
                {name}
                {isNew ? " (new)" : ""}
              </td>
              <td>{how}</td>
              <td className="print-box">{place.state === "attended" ? "✓" : ""}</td>
              <td className="print-box">{place.state === "not come" ? "✓" : ""}</td>
            </tr>
          ))}
          {BLANK.map((it) => (
            <tr key={it} className="print-blank">
              <td>{NOTHING}</td>
              <td>{NOTHING}</td>
              <td className="print-box">{NOTHING}</td>
              <td className="print-box">{NOTHING}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        Heads in the room, teacher and helpers with them: ________
        {session.posted === null ? "" : ` The hall’s own number: ${session.posted} people.`}
      </p>
    </div>
  );
}
