import { cornerName } from "#core/hall";
import type { Point } from "#kernels/geometry";
import { useState } from "react";
import { markingWords } from "./marking-words.ts";
import type { Trace } from "./measuring.ts";
import { PictureMarks } from "./picture-marks.tsx";
import { TraceMarking } from "./trace-marking.tsx";
import { mark, type Marking, nextMarking, takeCornerBack } from "./trace-steps.ts";

type Props = {
  readonly address: string;
  readonly size: NonNullable<Trace["size"]>;
  readonly trace: Trace;
  readonly put: (trace: Trace) => void;
};

/** What is marked next, the picture to mark it on, and the last corner to be taken back. */
export function TracePicture({ address, size, trace, put }: Props) {
  const [chosen, setChosen] = useState<Marking | null>(null);
  const marking = chosen ?? nextMarking(trace);
  const onMark = (at: Point) => {
    const next = mark(trace, marking, at);
    put(next);
    // both ends are there: on to the corners by itself
    if (marking !== "corners" && trace[marking].to === null && next[marking].to !== null) setChosen(null);
  };
  const takeBack = () => put(takeCornerBack(trace));
  const last = trace.corners.length - 1;
  return (
    <>
      <TraceMarking trace={trace} marking={marking} choose={setChosen} />
      <PictureMarks
        address={address}
        size={size}
        trace={trace}
        marking={marking}
        says={markingWords(trace, marking)}
        onMark={onMark}
        onTakeBack={takeBack}
      />
      <p>
        <button type="button" className="button" disabled={last < 0} onClick={takeBack}>
          {last < 0 ? "Take back the last corner" : `Take back corner ${cornerName(last)}`}
        </button>
      </p>
    </>
  );
}
