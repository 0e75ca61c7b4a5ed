import { cornerName } from "#core/hall";
import { useCallback, useMemo, useState } from "react";
import { TickField } from "../fields/tick-field.tsx";
import { OutlinePreview } from "../floor/outline-preview.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import type { Trace } from "./measuring.ts";
import { PictureChoice } from "./picture-choice.tsx";
import { PictureMarks } from "./picture-marks.tsx";
import { readTrace, type TraceRead } from "./read-trace.ts";
import type { ScaledPicture } from "./scaled-picture.ts";
import { TapeLength } from "./tape-length.tsx";
import { TraceMarking } from "./trace-marking.tsx";
import { mark, type Marking, nextMarking, takeCornerBack, withPicture } from "./trace-steps.ts";
import { markingWords } from "./marking-words.ts";
import { UseOutlinePart } from "./use-outline-part.tsx";
import type { OpenedMeasuring } from "./use-measuring.ts";
import { usePicture } from "./use-picture.ts";

type Props = { readonly practice: string; readonly id: string; readonly opened: OpenedMeasuring };

/** A hall traced over a picture of its plan. */
export function TraceSheet({ practice, id, opened }: Props) {
  const { measuring, change } = opened;
  const { trace, units } = measuring;
  const put = (next: Trace) => change((before) => ({ ...before, trace: next }));
  const picture = usePicture(
    id,
    useCallback(
      ({ width, height }: Pick<ScaledPicture, "width" | "height">) =>
        change((before) => ({ ...before, trace: withPicture(before.trace, { width, height }) })),
      [change],
    ),
  );
  const [chosen, setChosen] = useState<Marking | null>(null);
  const marking = chosen ?? nextMarking(trace);
  const read = useMemo(() => readTrace(trace, units), [trace, units]);
  const onMark = (at: readonly [number, number]) => {
    const next = mark(trace, marking, at);
    put(next);
    // both ends are there: on to the corners by itself
    const filled = marking !== "corners" && trace[marking].to === null && next[marking].to !== null;
    if (filled) setChosen(null);
  };
  const { size } = trace;
  const has = picture.address !== null && size !== null;
  return (
    <>
      <section className="stack" aria-label="The picture">
        {has ? null : <PictureChoice picture={picture} has={false} />}
        {size !== null && picture.asked && picture.address === null ? (
          <p className="problem-note">The picture that was marked is not on this device any more.</p>
        ) : null}
        {has && size !== null && picture.address !== null ? (
          <>
            <TraceMarking trace={trace} marking={marking} choose={setChosen} />
            <PictureMarks
              address={picture.address}
              size={size}
              trace={trace}
              marking={marking}
              says={markingWords(trace, marking)}
              onMark={onMark}
              onTakeBack={() => put(takeCornerBack(trace))}
            />
            <p>
              <button
                type="button"
                className="button"
                disabled={trace.corners.length === 0}
                onClick={() => put(takeCornerBack(trace))}
              >
                {trace.corners.length === 0
                  ? "Take back the last corner"
                  : `Take back corner ${cornerName(trace.corners.length - 1)}`}
              </button>
            </p>
          </>
        ) : null}
      </section>
      {has ? (
        <>
          <Distances trace={trace} units={units} read={read} put={put} />
          <TracedPart trace={trace} units={units} read={read} put={put} />
          <div className="part">
            <UseOutlinePart
              practice={practice}
              opened={opened}
              outline={read.plan.ok ? read.plan.value.outline : null}
            />
          </div>
          <section className="part" aria-label="Another picture">
            <PictureChoice picture={picture} has />
          </section>
        </>
      ) : null}
    </>
  );
}

type PartProps = {
  readonly trace: Trace;
  readonly units: OpenedMeasuring["measuring"]["units"];
  readonly read: TraceRead;
  readonly put: (trace: Trace) => void;
};

function Distances({ trace, units, read, put }: PartProps) {
  return (
    <section className="part tape-distances" aria-labelledby="distances">
      <h2 id="distances">How far apart the marks are in the hall</h2>
      <TapeLength
        label="The known distance"
        units={units}
        typed={trace.known}
        problem={read.knownProblem}
        onType={(typed) => put({ ...trace, known: { ...trace.known, ...typed } })}
      />
      <TapeLength
        label="A second distance, to check it"
        units={units}
        typed={trace.check}
        problem={read.checkProblem}
        onType={(typed) => put({ ...trace, check: { ...trace.check, ...typed } })}
      />
    </section>
  );
}

function TracedPart({ trace, units, read, put }: PartProps) {
  return (
    <section className="part" aria-labelledby="traced">
      <h2 id="traced">What it comes to</h2>
      {read.plan.ok ? (
        <>
          <OutlinePreview outline={read.plan.value.outline} units={units} />
          <div className="stack-close" aria-live="polite">
            {read.plan.value.sentences.map((it) => (
              <p key={it}>{it}</p>
            ))}
          </div>
        </>
      ) : (
        <ProblemList problems={read.plan.problems} announce={false} />
      )}
      <TickField
        label="Draw corners that are nearly square as square"
        checked={trace.square}
        put={(square) => put({ ...trace, square })}
      />
      <p className="caution">
        A plan may be older than the hall. Measure at least one wall with a tape before you rely on it.
      </p>
    </section>
  );
}
