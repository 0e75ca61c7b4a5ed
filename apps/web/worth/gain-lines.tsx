import type { Gain, ArrangedMatPlan } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { useId } from "react";
import { TrialPicture } from "./trial-picture.tsx";

type Props = {
  readonly gains: readonly Gain<ArrangedMatPlan>[];
  readonly units: LengthUnits;
  readonly tried: Gain<ArrangedMatPlan> | null;
  readonly put: (tried: Gain<ArrangedMatPlan> | null) => void;
  readonly keep: (gain: Gain<ArrangedMatPlan>) => void;
};

/** Each change on its line; one click tries it in its place, one takes it back, one keeps it. */
export function GainLines({ gains, units, tried, put, keep }: Props) {
  const id = useId();
  return (
    <ul className="list-plain ledger">
      {gains.map((gain) => {
        const open = gain === tried;
        return (
          <li key={JSON.stringify(gain.change)} className="stack-close">
            <div className="gain-line">
              <span>{gain.gain > 0 ? <strong>{gain.sentence}</strong> : gain.sentence}</span>
              <button
                type="button"
                className="button"
                aria-expanded={open}
                aria-controls={open ? id : undefined}
                aria-label={`${open ? "Take back" : "Try"}: ${gain.says}`}
                onClick={() => put(open ? null : gain)}
              >
                {open ? "Take back" : "Try"}
              </button>
            </div>
            {open && (
              <TrialPicture
                id={id}
                sentence={gain.sentence}
                hall={gain.hall}
                plan={gain.plan}
                units={units}
                keep={() => keep(gain)}
                takeBack={() => put(null)}
              />
            )}
          </li>
        );
      })}
    </ul>
  );
}
