import { type HallSheetAsk, type HallSheetView, hallSheetView } from "#app/views";
import type { ArrangedMatPlan } from "#core/hall";
import type { Result } from "#core/words";
import { type LineRequest, replyTo } from "../prices/worker-line.ts";

/** A sheet of a plan that is worked out already. */
export type HallSheetJob = Omit<HallSheetAsk, "planOf"> & { readonly plan: ArrangedMatPlan };

addEventListener("message", (event: MessageEvent<LineRequest<HallSheetJob>>) => {
  postMessage(replyTo(event.data, laid));
});

function laid({ plan, ...ask }: HallSheetJob): Result<HallSheetView> {
  return hallSheetView({ ...ask, planOf: () => plan });
}
