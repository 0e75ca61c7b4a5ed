import type { FloorPart } from "./floor-part.ts";
import { lengthWay, lengthWays, turnedTo } from "./length-ways.ts";

type Props = { readonly part: FloorPart; readonly onChoose: (part: FloorPart) => void };

/** Whether mats in lines may lie whichever way holds more, or have to lie one way. */
export function LengthChoice({ part, onChoose }: Props) {
  const way = lengthWay(part);
  return (
    <label className="floor-length">
      <span className="field-label">Mats in lines lie</span>
      <select
        className="field-box"
        value={way}
        onChange={(event) => {
          const chosen = lengthWays.find((it) => it === event.target.value);
          if (chosen !== undefined) onChoose(turnedTo(part, chosen));
        }}
      >
        {way === "own" && <option value="own">at {part.lengthAlong}°</option>}
        {lengthWays.map((it) => (
          <option key={it} value={it}>
            {it}
          </option>
        ))}
      </select>
    </label>
  );
}
