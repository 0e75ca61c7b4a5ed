import { problem } from "#core/words";
import { useMemo } from "react";
import { flushSync } from "react-dom";
import { OutlinePreview } from "../floor/outline-preview.tsx";
import { ClosingPart } from "./closing-part.tsx";
import { closedTape } from "./closed-tape.ts";
import { DiagonalsPart } from "./diagonals-part.tsx";
import type { Tape } from "./measuring.ts";
import { readTape } from "./read-tape.ts";
import { oneMoreWall, putWallBack } from "./tape-steps.ts";
import { TapeSketch } from "./tape-sketch.tsx";
import { UseOutlinePart } from "./use-outline-part.tsx";
import type { OpenedMeasuring } from "./use-measuring.ts";
import { useSettled } from "./use-settled.ts";
import { WallEntry } from "./wall-entry.tsx";
import { WallRows } from "./wall-rows.tsx";
import { BACK_WITHIN, walkWords } from "./walk-words.ts";

type Props = { readonly practice: string; readonly opened: OpenedMeasuring };

/** Wall by wall with a tape: first the walk round, then whether it closes, then the hall. */
export function TapeSheet({ practice, opened }: Props) {
  const { measuring, change } = opened;
  const { tape, units } = measuring;
  const put = (next: Tape) => change((before) => ({ ...before, tape: next }));
  const toOutline = (next: Tape) => {
    // what had the focus is gone then: it goes to what is new
    flushSync(() => put(next));
    document.getElementById("diagonals")?.focus();
  };
  const read = useMemo(() => readTape(tape, units), [tape, units]);
  const lengths = useMemo(() => read.walls.map((it) => it.length), [read]);
  const isBack = read.walls.length >= 3 && read.whole && read.gap !== null && read.gap <= BACK_WITHIN;
  return (
    <>
      <section className="stack" aria-label="The walls">
        <div className="tape-beside">
          <div className="stack-close">
            {tape.done && tape.at === null ? null : (
              <>
                <TapeSketch path={read.path} lengths={lengths} gap={read.gap} units={units} />
                <p className="tape-says" aria-live="polite">
                  {walkWords(read, units)}
                </p>
              </>
            )}
          </div>
          {tape.at === null ? null : (
            <WallEntry
              tape={tape}
              at={tape.at}
              units={units}
              problem={read.problems[tape.at]}
              isBack={isBack}
              put={put}
              toOutline={toOutline}
            />
          )}
        </div>
      </section>
      {tape.done && tape.at === null ? (
        <ClosedTapeSheet practice={practice} opened={opened} put={put} />
      ) : null}
      <section className="part" aria-labelledby="rows">
        <h2 id="rows">The walls so far</h2>
        <WallRows tape={tape} read={read} units={units} put={put} />
        {tape.gone === null ? null : (
          <p>
            <button type="button" className="button" onClick={() => put(putWallBack(tape))}>
              Put back the wall that was taken away
            </button>
          </p>
        )}
        {tape.done ? (
          <p>
            <button type="button" className="button" onClick={() => put(oneMoreWall(tape))}>
              There is one more wall
            </button>
          </p>
        ) : null}
      </section>
    </>
  );
}

function ClosedTapeSheet({ practice, opened, put }: Props & { readonly put: (tape: Tape) => void }) {
  const { measuring } = opened;
  const tape = useSettled(measuring.tape);
  const { units } = measuring;
  const read = useMemo(() => readTape(tape, units), [tape, units]);
  const closed = useMemo(
    () =>
      read.whole ? closedTape(tape, read, units) : ({ ok: false, problems: unread(read.problems) } as const),
    [tape, read, units],
  );
  return (
    <>
      <div className="tape-beside">
        {closed.ok ? <OutlinePreview outline={closed.outline} units={units} /> : null}
        <DiagonalsPart
          tape={measuring.tape}
          read={readTape(measuring.tape, units)}
          next={closed.ok ? closed.closed.next : null}
          closes={closed.ok ? closed.closed.closes : null}
          units={units}
          put={put}
        />
      </div>
      <div className="part">
        <ClosingPart tape={measuring.tape} closed={closed} units={units} put={put} />
      </div>
      <div className="part">
        <UseOutlinePart
          practice={practice}
          opened={opened}
          outline={closed.ok ? closed.outline : null}
          pending={tape !== measuring.tape}
          caution={closed.ok && !closed.closed.closes ? unsettled : null}
        />
      </div>
    </>
  );
}

function unread(problems: ReturnType<typeof readTape>["problems"]) {
  const found = problems.filter((it) => it !== undefined);
  return found.length > 0 ? found : [notTyped];
}

const notTyped = problem(
  "length-unreadable",
  "walls",
  "A wall has no length yet.",
  "Press Change beside it and type what the tape says.",
);

const unsettled =
  "The measures do not bear one another out yet: where they differ, the outline may be wrong. It can be used now and mended later.";
