import "./worth.css";
import { type Hall, USUAL_WAY } from "#core/hall";
import { metresFromMillimetres, MM_PER_INCH, millimetresFromMetres } from "#core/words";
import { memo, useMemo } from "react";
import type { BelowFloor } from "../floor/floor-editor.tsx";
import { partOfHall } from "../floor/floor-part.ts";
import { ArrangementsQuestion } from "./arrangements-question.tsx";
import { GainsQuestion } from "./gains-question.tsx";
import { numberedHall } from "./numbered-hall.ts";
import { OccupancyQuestion } from "./occupancy-question.tsx";
import { PlacesQuestion } from "./places-question.tsx";
import { SightQuestion } from "./sight-question.tsx";
import { useWorth } from "./use-worth.ts";
import { WayQuestion } from "./way-question.tsx";

/** 0.90 m, or 36 in where lengths are in feet; the hall’s own plan of its exits decides. */
const usualWay = { metric: USUAL_WAY, feet: Math.round(36 * MM_PER_INCH) } as const;

/** What may be asked of a plan: each answer a line that opens into its working. */
export const PlanWorth = memo(function PlanWorth({
  document,
  onChange,
  hall,
  plan,
  floor,
  units,
}: BelowFloor) {
  const width = document.wayWidth === undefined ? usualWay[units] : millimetresFromMetres(document.wayWidth);
  const { answer } = useWorth(hall, plan, width, units);
  const become = (next: Hall) => floor.settle(partOfHall(next));
  const numbered = useMemo(() => numberedHall(hall, document), [hall, document]);
  const shown = { hall, plan, units };
  return (
    <div className="questions no-print">
      <ArrangementsQuestion
        {...shown}
        floor={floor}
        wayWidth={width}
        chosen={document.arrangement ?? "lines"}
        choose={(arrangement) => onChange({ ...document, arrangement })}
      />
      <OccupancyQuestion hall={numbered} units={units} />
      <GainsQuestion {...shown} become={become} />
      <SightQuestion {...shown} sight={answer?.sight} />
      <WayQuestion
        {...shown}
        width={width}
        putWidth={(set) => onChange({ ...document, wayWidth: metresFromMillimetres(set) })}
        worth={answer}
      />
      <PlacesQuestion {...shown} wayWidth={width} become={become} />
    </div>
  );
});
