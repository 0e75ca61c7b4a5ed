import { type ArrangedMatPlan, type Hall, planInWords, setOutInWords } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { memo, useEffect, useRef } from "react";
import { Show } from "../parts/show.tsx";
import { printFloor } from "./print-floor.ts";

type Props = {
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  readonly units: LengthUnits;
};

/** The drawing in words, and the figures to lay the mats out with a tape. Both are printed, open or not. */
export const PlanWords = memo(function PlanWords({ hall, plan, units }: Props) {
  const words = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const open = () => {
      for (const it of words.current?.querySelectorAll("details") ?? []) it.open = true;
    };
    globalThis.addEventListener("beforeprint", open);
    return () => globalThis.removeEventListener("beforeprint", open);
  }, []);
  const wide = matchMedia("(min-width: 64rem)").matches;
  return (
    <div className="floor-words" ref={words}>
      <Show summary="The drawing in words" open={wide}>
        <p>{planInWords(hall, plan, units)}</p>
      </Show>
      <Show summary="To set out with a tape" open={wide}>
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
      </Show>
    </div>
  );
});
