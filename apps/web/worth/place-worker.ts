import {
  type ArrangedMatPlan,
  arrangedPlan,
  type Bay,
  type Hall,
  type WithPlace,
  withPlace,
} from "#core/hall";
import type { LengthUnits, Result } from "#core/words";
import { type LineRequest, replyTo } from "../prices/worker-line.ts";

export type PlaceJob = {
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  readonly bay: Bay;
  /** millimetres */
  readonly wayWidth: number;
  readonly label: string;
  readonly units: LengthUnits;
};

export type PlaceFound = Result<WithPlace<ArrangedMatPlan>>;

addEventListener("message", (event: MessageEvent<LineRequest<PlaceJob>>) => {
  postMessage(replyTo(event.data, placeFor));
});

function placeFor({ hall, plan, bay, wayWidth, label, units }: PlaceJob): PlaceFound {
  const planOf = (changed: Hall) => arrangedPlan(changed, plan.arrangement);
  return withPlace(hall, bay, plan, planOf, { wayWidth, label, units });
}
