import { good, type Locale, type Result } from "#core/words";
import { act, type Recorder } from "./act.ts";
import type { DoAskInput } from "./doings/index.ts";

/** Something that was done, and when: an ISO instant in UTC. */
export type PastAction = { readonly at: string; readonly do: DoAskInput };

export type HistoryOrder = {
  readonly practice: string;
  readonly locale: Locale;
  /** in the order of time */
  readonly history: readonly PastAction[];
};

/**
 * Does what a history tells, action by action, each at its own time: the same actions as those of a screen, and
 * nothing that is not one. Doing it twice does it once. Answers how many there were, or the first problem met.
 */
export async function tellHistory(
  recorder: Omit<Recorder, "now">,
  { practice, locale, history }: HistoryOrder,
): Promise<Result<number>> {
  const all = await Promise.all(
    history.map(({ at, do: what }, number) =>
      act(
        { ...recorder, now: () => at },
        { practice, action: actionOf(number), by: "teacher", locale, do: what },
      ),
    ),
  );
  const refused = all.find((it) => !it.ok);
  return refused === undefined || refused.ok ? good(history.length) : refused;
}

function actionOf(number: number): string {
  return `history-${String(number + 1).padStart(6, "0")}`;
}
