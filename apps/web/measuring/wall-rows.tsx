import { formatLength, type LengthUnits } from "#core/words";
import type { Tape, TypedWall } from "./measuring.ts";
import type { TapeRead } from "./read-tape.ts";
import { isBlank, readTypedLength } from "./read-typed-length.ts";
import { wallNameIn } from "./wall-name-in.ts";

type Props = {
  readonly tape: Tape;
  readonly read: TapeRead;
  readonly units: LengthUnits;
  readonly put: (tape: Tape) => void;
};

const turnWords: Readonly<Record<TypedWall["turn"], string>> = {
  left: "left",
  right: "right",
  "left-other": "left",
  "right-other": "right",
};

/** Every wall that was entered, each to be gone back to. */
export function WallRows({ tape, read, units, put }: Props) {
  return (
    <ol className="list-plain ledger tape-rows" aria-label="The walls, as taped">
      {tape.walls.map((wall, index) => {
        const name = wallNameIn(tape, index);
        const problem = read.problems[index];
        return (
          <li key={index} className="row" aria-current={tape.at === index ? "step" : undefined}>
            <span className="tape-row-name">{name}</span>
            <span className="tape-row-length">{lengthWords(wall, units)}</span>
            <span className="soft small">
              {isBlank(wall) ? "" : `then ${turnWords[wall.turn]}${angleWords(wall)}`}
            </span>
            <button
              type="button"
              className="link-button tape-row-button"
              aria-label={`Change wall ${name}`}
              onClick={() => put({ ...tape, at: index })}
            >
              Change
            </button>
            {problem === undefined || tape.at === index ? null : (
              <span className="field-problem">
                {problem.says} {problem.next}
              </span>
            )}
          </li>
        );
      })}
    </ol>
  );
}

function lengthWords(wall: TypedWall, units: LengthUnits): string {
  if (isBlank(wall)) return "not yet";
  const read = readTypedLength(wall, units, "");
  return read.ok ? formatLength(read.value, units) : wall.length;
}

function angleWords({ turn, degrees }: TypedWall): string {
  if (turn === "left" || turn === "right") return "";
  return degrees.trim() === "" ? ", angle not known" : `, ${degrees}°`;
}
