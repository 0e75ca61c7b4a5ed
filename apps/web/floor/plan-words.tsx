import { memo } from "react";
import { printFloor } from "./print-floor.ts";
import { type ArrangedMatPlan, type Hall, planInWords, setOutInWords } from "#core/hall";
import type { LengthUnits } from "#core/words";

type Props = { readonly hall: Hall; readonly plan: ArrangedMatPlan; readonly units: LengthUnits };

/** The drawing in words, and the figures to lay the mats out with a tape. Both are printed. */
export const PlanWords = memo(function PlanWords({ hall, plan, units }: Props) {
  return (
    <div className="floor-words">
      <section className="stack-close" aria-labelledby="floor-in-words">
        <h3 id="floor-in-words">The drawing in words</h3>
        <p>{planInWords(hall, plan, units)}</p>
      </section>
      <section className="stack-close" aria-labelledby="floor-set-out">
        <h3 id="floor-set-out">To set out with a tape</h3>
        <ol className="list-plain floor-tape">
          {setOutInWords(plan, units).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ol>
        <p className="no-print">
          <button type="button" className="button" onClick={printFloor}>
            Print the plan and these figures
          </button>
        </p>
      </section>
    </div>
  );
});
