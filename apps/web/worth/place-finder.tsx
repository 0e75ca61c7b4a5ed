import type { ArrangedMatPlan, Hall } from "#core/hall";
import { type LengthUnits, type Millimetres, MM_PER_INCH, millimetresFromMetres } from "#core/words";
import { useState } from "react";
import { LengthField } from "../floor/length-field.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { useWorkerAnswer } from "../prices/use-worker-answer.ts";
import type { PlaceFound, PlaceJob } from "./place-worker.ts";
import { nextPlaceLabel } from "./places-of.ts";
import { TrialPicture } from "./trial-picture.tsx";

type Props = {
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  readonly units: LengthUnits;
  readonly wayWidth: number;
  readonly become: (hall: Hall) => void;
};

/** Room for a wheelchair to turn, 2.00 by 1.50 m or 6 ft 6 in by 5 ft; common practice, no source. */
const usualBay: Readonly<Record<LengthUnits, { readonly length: Millimetres; readonly width: Millimetres }>> =
  {
    metric: { length: millimetresFromMetres(2), width: millimetresFromMetres(1.5) },
    feet: { length: inches(78), width: inches(60) },
  };

function inches(count: number): Millimetres {
  return millimetresFromMetres((count * MM_PER_INCH) / 1000);
}

/** Looks for a place of a size with its way to a door, the mats laid again round it, and shows it as a trial. */
export function PlaceFinder({ hall, plan, units, wayWidth, become }: Props) {
  const [bay, setBay] = useState(usualBay[units]);
  const [job, setJob] = useState<PlaceJob | null>(null);
  const { answer, old, failure } = useWorkerAnswer<PlaceFound>(startPlaceWorker, job);
  const mine = job !== null && job.hall === hall ? job : null;
  const found = mine === null || old ? null : answer;
  const looking = mine !== null && found === null && failure === null;
  return (
    <>
      <p className="row">
        <LengthField
          label="Length of the place"
          length={bay.length}
          units={units}
          onSet={(length) => {
            setBay({ ...bay, length });
            return null;
          }}
        />
        <LengthField
          label="Width"
          length={bay.width}
          units={units}
          onSet={(width) => {
            setBay({ ...bay, width });
            return null;
          }}
        />
        <button
          type="button"
          className="button"
          onClick={() => setJob({ hall, plan, bay, wayWidth, label: nextPlaceLabel(hall), units })}
        >
          Find a place
        </button>
      </p>
      <output className="place-told">
        {looking ? "Looking for a place that costs the fewest mats …" : ""}
        {mine !== null && failure !== null ? "The place could not be worked out on this device." : ""}
      </output>
      {found?.ok === false && <ProblemList problems={found.problems} />}
      {found?.ok === true && (
        <TrialPicture
          id="place-trial"
          sentence={found.value.sentence}
          hall={found.value.hall}
          plan={found.value.plan}
          units={units}
          keep={() => {
            setJob(null);
            become(found.value.hall);
          }}
          takeBack={() => setJob(null)}
        />
      )}
    </>
  );
}

function startPlaceWorker(): Worker {
  return new Worker(new URL("./place-worker.ts", import.meta.url), { type: "module" });
}
