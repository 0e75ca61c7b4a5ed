import type { PassState } from "./pass-state.ts";

export type ClosedSession = { readonly session: string; readonly class: string; readonly date: string };

/**
 * Whether a closed session moves the use-by of this pass: it was good for it that day, something is left on it,
 * and it was not paused then, since a pause gives the date back already. A block has its sessions by name: it is
 * offered another date or its share, and only moves if she says so.
 */
export function movedByClosure(state: PassState, { session, class: closed, date }: ClosedSession): boolean {
  if (state.form === "block" || state.left === 0) return false;
  const good = state.valid === "all" || state.valid.includes(closed);
  const inPause = state.pausedFrom !== null && date >= state.pausedFrom;
  const used = state.used.some((use) => use.session === session);
  return good && !inPause && !used && date >= state.soldOn && date <= state.useBy;
}
