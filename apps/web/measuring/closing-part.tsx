import type { LengthUnits } from "#core/words";
import { TickField } from "../fields/tick-field.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { type ClosedTape, TAPED_SQUARE } from "./closed-tape.ts";
import { DrawnTable } from "./drawn-table.tsx";
import type { Tape } from "./measuring.ts";

type Props = {
  readonly tape: Tape;
  readonly closed: ClosedTape;
  readonly units: LengthUnits;
  readonly put: (tape: Tape) => void;
};

/** How well it closes, what is likely wrong, and what was done to the figures. */
export function ClosingPart({ tape, closed, units, put }: Props) {
  return (
    <section className="stack" aria-labelledby="closes">
      <h2 id="closes">How it closes</h2>
      {closed.ok ? (
        <>
          <div className="stack-close" aria-live="polite">
            {closed.closed.sentences.map((it) => (
              <p key={it}>{it}</p>
            ))}
          </div>
          <Again tape={tape} closed={closed} put={put} />
          <DrawnTable drawn={closed.drawn} units={units} />
          <TickField
            label={`Draw corners within ${TAPED_SQUARE}° of square as square`}
            checked={tape.square}
            put={(square) => put({ ...tape, square })}
          />
        </>
      ) : (
        <ProblemList problems={closed.problems} />
      )}
    </section>
  );
}

type AgainProps = {
  readonly tape: Tape;
  readonly closed: Extract<ClosedTape, { ok: true }>;
  readonly put: (tape: Tape) => void;
};

/** The measures to take again, a press away. */
function Again({ tape, closed: { closed }, put }: AgainProps) {
  const [first, ...more] = closed.suspects;
  if (first === undefined) return null;
  return (
    <>
      <p className="row">
        {closed.suspects
          .filter((it) => it.kind === "wall")
          .map((it) => (
            <button
              key={it.name}
              type="button"
              className="button"
              onClick={() => put({ ...tape, at: it.index })}
            >
              Measure {it.name} again
            </button>
          ))}
      </p>
      {more.length > 0 ? null : (
        <TickField
          label={`Draw it without ${first.name} for now`}
          checked={tape.without}
          put={(without) => put({ ...tape, without })}
        />
      )}
    </>
  );
}
