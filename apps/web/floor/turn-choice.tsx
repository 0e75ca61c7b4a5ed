import type { WalkedEntry } from "./walk.ts";

type Props = {
  readonly name: string;
  readonly wall: WalkedEntry;
  readonly onChange: (turn: Partial<WalkedEntry>) => void;
};

/** Which way to turn at the end of a wall. */
export function TurnChoice({ name, wall, onChange }: Props) {
  return (
    <p className="row">
      <label className="row">
        <span className="field-label">then turn</span>
        <select
          className="field-box"
          aria-label={`Turn at the end of wall ${name}`}
          value={wall.turn}
          onChange={(event) => onChange({ turn: turnOf(event.target.value) })}
        >
          <option value="left">left, 90°</option>
          <option value="right">right, 90°</option>
          <option value="other">by another angle</option>
        </select>
      </label>
      {wall.turn === "other" && (
        <label className="row">
          <span className="field-label">degrees to the left</span>
          <input
            className="field-box"
            value={wall.degrees}
            onChange={(event) => onChange({ degrees: event.target.value })}
          />
        </label>
      )}
    </p>
  );
}

function turnOf(value: string): WalkedEntry["turn"] {
  return value === "left" || value === "right" ? value : "other";
}
