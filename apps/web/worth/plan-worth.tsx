import "./worth.css";
import type { Hall } from "#core/hall";
import { memo } from "react";
import type { BelowFloor } from "../floor/floor-editor.tsx";
import { partOfHall } from "../floor/floor-part.ts";
import { GainsQuestion } from "./gains-question.tsx";

/** What may be asked of a plan: each answer a line that opens into its working. */
export const PlanWorth = memo(function PlanWorth({ hall, plan, floor, units }: BelowFloor) {
  const become = (next: Hall) => floor.settle(partOfHall(next));
  return (
    <div className="questions no-print">
      <GainsQuestion hall={hall} plan={plan} units={units} become={become} />
    </div>
  );
});
