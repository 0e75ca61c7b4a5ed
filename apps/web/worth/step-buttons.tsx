import type { StepList } from "./step-list.ts";
import type { UsedSteps } from "./use-steps.ts";

type Props = { readonly steps: Pick<UsedSteps<never, never>, "stop" | "goOn"> } & Pick<
  StepList<unknown, unknown>,
  "state" | "total" | "items"
>;

/** Stops a list that is being filled, goes on with one that was stopped, and says how far it is. */
export function StepButtons({ steps, state, total, items }: Props) {
  if (state === "done" || state === "failed") return null;
  return (
    <p className="row">
      {state === "running" ? (
        <button type="button" className="button" onClick={steps.stop}>
          Stop
        </button>
      ) : (
        <button type="button" className="button" onClick={steps.goOn}>
          Go on
        </button>
      )}
      <span className="small soft">{total === null ? "" : `${items.length} of ${total} tried`}</span>
    </p>
  );
}
