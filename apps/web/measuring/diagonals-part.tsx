import { cornerName, type NextDiagonal } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { useState } from "react";
import { ChoiceField } from "../fields/choice-field.tsx";
import type { Tape, TypedDiagonal } from "./measuring.ts";
import type { TapeRead } from "./read-tape.ts";
import { TapeLength } from "./tape-length.tsx";
import { changeDiagonal, diagonalOf, takeDiagonalAway } from "./tape-steps.ts";

type Props = {
  readonly tape: Tape;
  readonly read: TapeRead;
  readonly next: NextDiagonal | null;
  /** null where there is no outline at all */
  readonly closes: boolean | null;
  readonly units: LengthUnits;
  readonly put: (tape: Tape) => void;
};

type Pair = Pick<TypedDiagonal, "from" | "to">;

/** The diagonals that were taped, and the one worth taping next. */
export function DiagonalsPart({ tape, read, next, closes, units, put }: Props) {
  const [asked, setAsked] = useState<Pair | null>(null);
  const wanted = [next, asked].filter((it) => it !== null);
  // one list in which a row stays where it is when its first figure is typed
  const rows = wanted.reduce<readonly Pair[]>(
    (all, it) => (all.some((other) => keyOf(other) === keyOf(it)) ? all : [...all, it]),
    tape.diagonals,
  );
  return (
    <section className="stack-close" aria-labelledby="diagonals">
      <h2 id="diagonals" tabIndex={-1}>
        From corner to corner
      </h2>
      {rows.map(({ from, to }) => {
        const typed = diagonalOf(tape, { from, to });
        const index = tape.diagonals.indexOf(typed);
        const name = `${cornerName(from)}–${cornerName(to)}`;
        return (
          <div key={keyOf({ from, to })} className="tape-diagonal">
            <TapeLength
              label={`Diagonal ${name}`}
              units={units}
              typed={typed}
              problem={index < 0 ? undefined : read.diagonalProblems[index]}
              onType={(length) => put(changeDiagonal(tape, { from, to, ...length }))}
            />
            {index < 0 ? null : (
              <button
                type="button"
                className="link-button small"
                onClick={() => put(takeDiagonalAway(tape, { from, to }))}
              >
                Take away the diagonal {name}
              </button>
            )}
          </div>
        );
      })}
      <p aria-live="polite">{nextWords(next, closes)}</p>
      <OtherDiagonal corners={tape.walls.length} ask={setAsked} />
    </section>
  );
}

function nextWords(next: NextDiagonal | null, closes: boolean | null): string {
  if (next !== null) return next.says;
  if (closes === null) return "";
  return closes
    ? "No further diagonal is needed."
    : "No diagonal that a tape can reach would tell more: measure again what is named below.";
}

function keyOf({ from, to }: Pair): string {
  return from < to ? `${from} ${to}` : `${to} ${from}`;
}

function OtherDiagonal({ corners, ask }: { readonly corners: number; readonly ask: (pair: Pair) => void }) {
  const pairs = [...Array(corners).keys()].flatMap((from) =>
    [...Array(corners).keys()]
      .filter((to) => to > from + 1 && (from !== 0 || to !== corners - 1))
      .map((to) => ({ value: `${from} ${to}`, label: `${cornerName(from)}–${cornerName(to)}` })),
  );
  if (pairs.length === 0) return null;
  return (
    <div className="holds-fields">
      <ChoiceField
        label="Another diagonal"
        help="If the one asked for cannot be taped"
        value=""
        choices={[{ value: "", label: "none" }, ...pairs]}
        onChange={(value) => {
          const [from, to] = value.split(" ").map(Number);
          if (value !== "" && from !== undefined && to !== undefined) ask({ from, to });
        }}
      />
    </div>
  );
}
