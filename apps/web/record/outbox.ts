import type { DoAskInput } from "#app/record";
import type { Problem } from "#core/words";

/*
 * Marked with no signal: { action: "0k3…", made: "2026-12-01T18:58:04Z", do: { kind: "mark", … }, words: "Ana Brook is
 * here" } waits in the queue. The server refuses it when the signal is back: it stands under what is not kept, with
 * the problem's words, until she tries again or puts it aside.
 *
 * Invariant: nothing leaves the outbox but by the server keeping it or by her putting it aside.
 */

/** Something done on this device that the server has not kept yet. */
export type Queued = {
  readonly action: string;
  /** ISO 8601 instant, UTC, by the clock of this device */
  readonly made: string;
  readonly do: DoAskInput;
  /** what was to be done, as she would say it: "Ana Brook is here" */
  readonly words: string;
  /** what it came to on this device, where that has a name: "held" */
  readonly outcome?: string | undefined;
};

/** Something that the server refused, with why. */
export type Unsettled = { readonly queued: Queued; readonly problems: readonly Problem[] };

/** Something that was kept, but came out otherwise than this device had said. */
export type Otherwise = { readonly action: string; readonly words: string; readonly says: readonly string[] };

export type Outbox = {
  readonly queue: readonly Queued[];
  readonly unsettled: readonly Unsettled[];
  readonly otherwise: readonly Otherwise[];
};

export const emptyOutbox: Outbox = { queue: [], unsettled: [], otherwise: [] };

export function withQueued(outbox: Outbox, queued: Queued): Outbox {
  return { ...outbox, queue: [...outbox.queue, queued] };
}

/** The server has kept it; told again where it came out otherwise. */
export function withKept(outbox: Outbox, action: string, otherwise: Otherwise | null): Outbox {
  return {
    ...outbox,
    queue: outbox.queue.filter((it) => it.action !== action),
    otherwise: otherwise === null ? outbox.otherwise : [...outbox.otherwise, otherwise],
  };
}

/** The server refused it: it is not kept, and not dropped. */
export function withRefused(outbox: Outbox, queued: Queued, problems: readonly Problem[]): Outbox {
  return {
    ...outbox,
    queue: outbox.queue.filter(({ action }) => action !== queued.action),
    unsettled: [...outbox.unsettled.filter((it) => it.queued.action !== queued.action), { queued, problems }],
  };
}

/** She wants it tried again: it goes to the end of the queue under the id it had, with the time at which it was made. */
export function withAgain(outbox: Outbox, action: string): Outbox {
  const again = outbox.unsettled.filter(({ queued }) => queued.action === action);
  return { ...withoutRefused(outbox, action), queue: [...outbox.queue, ...again.map((it) => it.queued)] };
}

/** She has settled it herself, or has read what came out otherwise. */
export function withoutRefused(outbox: Outbox, action: string): Outbox {
  return {
    ...outbox,
    unsettled: outbox.unsettled.filter(({ queued }) => queued.action !== action),
    otherwise: outbox.otherwise.filter((it) => it.action !== action),
  };
}
