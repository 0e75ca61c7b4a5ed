import type { TracedPlan } from "#core/hall";
import type { LengthUnits, Result } from "#core/words";
import { TickField } from "../fields/tick-field.tsx";
import { OutlinePreview } from "../floor/outline-preview.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import type { Trace } from "./measuring.ts";

type Props = {
  readonly trace: Trace;
  readonly units: LengthUnits;
  readonly plan: Result<TracedPlan>;
  readonly put: (trace: Trace) => void;
};

/** The hall that was traced, and how far off it may be. */
export function TracedPart({ trace, units, plan, put }: Props) {
  return (
    <section className="part" aria-labelledby="traced">
      <h2 id="traced">What it comes to</h2>
      {plan.ok ? (
        <>
          <OutlinePreview outline={plan.value.outline} units={units} />
          <div className="stack-close" aria-live="polite">
            {plan.value.sentences.map((it) => (
              <p key={it}>{it}</p>
            ))}
          </div>
        </>
      ) : (
        <ProblemList problems={plan.problems} announce={false} />
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
