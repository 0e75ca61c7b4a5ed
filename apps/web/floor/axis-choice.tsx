import { useState } from "react";
import { readDegrees } from "./read-degrees.ts";

type Props = {
  readonly axis: number | "auto";
  readonly onChoose: (axis: number | "auto") => void;
};

/** Which way the lines run: along whichever wall takes most mats, or at an angle of her own. */
export function AxisChoice({ axis, onChoose }: Props) {
  const [typed, setTyped] = useState<string | null>(null);
  const own = axis !== "auto";
  const degrees = typed === null ? null : readDegrees(typed);
  return (
    <fieldset className="fields">
      <legend>Direction of the lines</legend>
      <label className="row">
        <input
          type="radio"
          checked={!own}
          onChange={() => {
            setTyped(null);
            onChoose("auto");
          }}
        />
        along whichever wall takes most mats
      </label>
      <label className="row">
        <input type="radio" checked={own} onChange={() => onChoose(0)} />
        at an angle of my own
      </label>
      {own && (
        <label className="floor-length">
          <span className="field-label">Degrees from level, anticlockwise</span>
          <input
            className="field-box"
            inputMode="decimal"
            value={typed ?? String(axis)}
            aria-invalid={typed !== null && degrees === null}
            onChange={(event) => {
              setTyped(event.target.value);
              const read = readDegrees(event.target.value);
              if (read !== null) onChoose(read);
            }}
            onBlur={() => {
              if (degrees !== null) setTyped(null);
            }}
          />
          {typed !== null && degrees === null && (
            <span className="field-problem" role="alert">
              “{typed}” is not an angle. Give degrees from 0 to 180, like 30 or 12.5.
            </span>
          )}
        </label>
      )}
    </fieldset>
  );
}
