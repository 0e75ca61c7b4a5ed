import type { LengthUnits } from "#core/words";
import type { Trace } from "./measuring.ts";
import type { TraceRead } from "./read-trace.ts";
import { TapeLength } from "./tape-length.tsx";

type Props = {
  readonly trace: Trace;
  readonly units: LengthUnits;
  readonly read: TraceRead;
  readonly put: (trace: Trace) => void;
};

/** The distance that gives the scale, and one that checks it. */
export function TraceDistances({ trace, units, read, put }: Props) {
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
