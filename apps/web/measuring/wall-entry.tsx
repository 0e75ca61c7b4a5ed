import { cornerName } from "#core/hall";
import type { LengthUnits, Problem } from "#core/words";
import type { Tape } from "./measuring.ts";
import { isBlank } from "./read-typed-length.ts";
import { TapeLength } from "./tape-length.tsx";
import { changeWall, insertWall, lastWall, nextWall, takeWallAway } from "./tape-steps.ts";
import { TurnButtons } from "./turn-buttons.tsx";
import { wallNameIn } from "./wall-name-in.ts";

type Props = {
  readonly tape: Tape;
  readonly at: number;
  readonly units: LengthUnits;
  readonly problem: Problem | undefined;
  /** whether the walk is back where it began */
  readonly isBack: boolean;
  readonly put: (tape: Tape) => void;
  /** once round, or done with changing a wall */
  readonly toOutline: (tape: Tape) => void;
};

/** One wall: how long it is, which way one turns at its end, and on to the next, all within reach of a thumb. */
export function WallEntry({ tape, at, units, problem, isBack, put, toOutline }: Props) {
  const wall = tape.walls[at];
  if (wall === undefined) return null;
  const name = wallNameIn(tape, at);
  const isLast = at === tape.walls.length - 1;
  return (
    <form
      className="stack tape-entry"
      noValidate
      aria-label={`Wall ${name}`}
      onSubmit={(event) => {
        event.preventDefault();
        if (tape.done) toOutline({ ...tape, at: null });
        else if (!isBlank(wall)) put(nextWall(tape));
      }}
    >
      <TapeLength
        key={at}
        label={`Wall ${name}`}
        units={units}
        typed={wall}
        problem={problem}
        focused
        onType={(typed) => put(changeWall(tape, at, typed))}
      />
      <TurnButtons wall={name} typed={wall} onType={(typed) => put(changeWall(tape, at, typed))} />
      <p className="tape-go">
        {tape.done ? (
          <button type="submit" className="button button-main">
            Back to the outline
          </button>
        ) : (
          <>
            <button type="submit" className={isBack ? "button" : "button button-main"}>
              Next wall
            </button>
            {tape.walls.length < 3 ? null : (
              <button
                type="button"
                className={isBack ? "button button-main" : "button"}
                onClick={() => toOutline(lastWall(tape))}
              >
                That was the last wall
              </button>
            )}
          </>
        )}
      </p>
      <p className="row small">
        {isLast && !tape.done ? null : (
          <button type="button" className="link-button" onClick={() => put(insertWall(tape, at))}>
            A wall is missing before this one, at {cornerName(at)}
          </button>
        )}
        {tape.walls.length === 1 ? null : (
          <button type="button" className="link-button" onClick={() => put(takeWallAway(tape, at))}>
            There is no such wall
          </button>
        )}
      </p>
    </form>
  );
}
