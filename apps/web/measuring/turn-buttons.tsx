import type { TypedTurn } from "./measuring.ts";

type Props = {
  /** "A–B" */
  readonly wall: string;
  readonly typed: TypedTurn;
  readonly onType: (typed: Partial<TypedTurn>) => void;
};

const turns = [
  { turn: "left", label: "left, square" },
  { turn: "right", label: "right, square" },
  { turn: "left-other", label: "left, not square" },
  { turn: "right-other", label: "right, not square" },
] as const;

/** Which way one turns at the end of a wall, to be pressed with a thumb. */
export function TurnButtons({ wall, typed, onType }: Props) {
  const other = typed.turn === "left-other" || typed.turn === "right-other";
  return (
    <fieldset className="fields">
      <legend>At its end you turn</legend>
      <div className="tape-turns">
        {turns.map(({ turn, label }) => (
          <label key={turn} className="tape-turn" data-chosen={typed.turn === turn || undefined}>
            <input
              type="radio"
              name={`turn-${wall}`}
              checked={typed.turn === turn}
              onChange={() => onType({ turn })}
            />
            {label}
          </label>
        ))}
      </div>
      {other ? (
        <label className="row tape-angle">
          <span>
            by how many degrees
            <span className="field-help">0 is straight on, 90 is square. Empty if you cannot tell.</span>
          </span>
          <input
            className="field-box"
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={typed.degrees}
            onChange={(event) => onType({ degrees: event.target.value })}
          />
        </label>
      ) : null}
    </fieldset>
  );
}
