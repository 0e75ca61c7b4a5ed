import type { UsedWeek } from "./use-week.ts";

type Props = Pick<UsedWeek, "state" | "total" | "told" | "old" | "stop" | "goOn"> & {
  /** something keeps the week from being asked again */
  readonly held: boolean;
};

/** How far the answer is, and a way to stop it; its line is always there, so that nothing moves when it ends. */
export function WeekProgress({ state, total, told, old, stop, goOn, held }: Props) {
  return (
    <p className="row week-progress">
      <span className="small soft">{wordsOf(state, total, told, old, held)}</span>
      {state === "running" && !old ? (
        <button type="button" className="link-button" onClick={stop}>
          Stop
        </button>
      ) : null}
      {state === "stopped" && !old ? (
        <button type="button" className="link-button" onClick={goOn}>
          Go on
        </button>
      ) : null}
    </p>
  );
}

function wordsOf(
  state: Props["state"],
  total: number | null,
  told: number,
  old: boolean,
  held: boolean,
): string {
  if (held) return state === null ? "" : "What is below rests on the last figures that could be used.";
  if (old || state === null) return "Working it out …";
  switch (state) {
    case "running":
      return told === 0
        ? "Looking for the best week …"
        : `Asking about each class: ${told} of ${total ?? "?"} …`;
    case "stopped":
      return `Stopped after ${told} of ${total ?? "?"}; what is below stands.`;
    case "failed":
      return "It could not be worked out on this device: the solver did not load or gave up.";
    case "done":
      return "All worked out.";
  }
}
