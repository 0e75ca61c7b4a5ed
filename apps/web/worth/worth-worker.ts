import {
  type ArrangedMatPlan,
  type ClearWay,
  clearWay,
  type Hall,
  type Sight,
  sightOptions,
  waysToDoors,
  whoCannotSee,
} from "#core/hall";
import type { LengthUnits, Result } from "#core/words";
import type { Point } from "#kernels/geometry";
import { type LineRequest, replyTo } from "../prices/worker-line.ts";

export type WorthJob = {
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  /** millimetres */
  readonly wayWidth: number;
  readonly units: LengthUnits;
};

export type Worth = {
  /** null where no place for the teacher is known */
  readonly sight: Sight | null;
  readonly way: Result<ClearWay>;
  /** for each mat the middle line of its way to a door, none for one that is stuck */
  readonly lines: readonly (readonly Point[])[];
  /** the widest way that every mat has where it is narrower than asked for; null where there is none or no need */
  readonly widest: number | null;
};

addEventListener("message", (event: MessageEvent<LineRequest<WorthJob>>) => {
  postMessage(replyTo(event.data, worthOf));
});

function worthOf({ hall, plan, wayWidth, units }: WorthJob): Worth {
  const way = clearWay(hall, plan, wayWidth, units);
  return {
    sight: whoCannotSee(hall, plan, sightOptions(plan)),
    way,
    lines: waysToDoors(hall, plan, wayWidth),
    widest: way.ok && !way.value.clear ? widestWay(hall, plan, wayWidth) : null,
  };
}

/** Widths in steps of 5 cm from 0.30 m, halved down to the last that is clear: a wider way is never easier to find. */
function widestWay(hall: Hall, plan: ArrangedMatPlan, below: number): number | null {
  const widths = Array.from({ length: 100 }, (_, step) => 300 + 50 * step).filter((width) => width < below);
  let [clear, blocked] = [-1, widths.length];
  while (blocked - clear > 1) {
    const middle = Math.floor((clear + blocked) / 2);
    const way = clearWay(hall, plan, widths[middle] ?? below);
    if (way.ok && way.value.clear) clear = middle;
    else blocked = middle;
  }
  return widths[clear] ?? null;
}
