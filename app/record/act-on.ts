import type { KeptStream } from "#app/ports";
import { bad, good, problem, type Result } from "#core/words";
import { deskWith, type Setting } from "./desk.ts";
import type { Told } from "./doing.ts";
import { type DoAsk, doingOf } from "./doings/index.ts";

export type ActedOn = {
  readonly told: Told;
  /** all streams as the action leaves them; `number` counts what is not kept anywhere else yet as well */
  readonly streams: readonly KeptStream[];
};

/**
 * The same decision as the record will make, on streams that are at hand: what a phone without signal shows while its
 * actions wait to be sent. Streams that the action needs and that are not at hand are taken for new ones.
 * Problems: those of the doing, "not-at-hand" for what cannot be decided from what is here.
 */
export function actOn(streams: readonly KeptStream[], ask: DoAsk, setting: Setting): Result<ActedOn> {
  const doing = doingOf(ask);
  const known = deskWith(streams, new Set(), setting).desk;
  const names = new Set(doing.needs(ask, known));
  const { desk, written } = deskWith(streams, names, setting);
  try {
    const decided = doing.decide(ask, desk);
    if (!decided.ok) return decided;
    return good({ told: decided.value, streams: after(streams, written().streams) });
  } catch (error) {
    if (error instanceof RangeError) return bad(notAtHand());
    throw error;
  }
}

type Written = ReturnType<ReturnType<typeof deskWith>["written"]>["streams"];

function after(streams: readonly KeptStream[], writes: Written): readonly KeptStream[] {
  const changed = new Map(
    writes.map(({ stream, from, belongs, sort, state, events }) => [
      stream,
      { stream, number: from + events.length, belongs, sort, state },
    ]),
  );
  const kept = streams.map((it) => changed.get(it.stream) ?? it);
  const there = new Set(streams.map(({ stream }) => stream));
  return [...kept, ...[...changed.values()].filter(({ stream }) => !there.has(stream))];
}

function notAtHand() {
  const says = "This cannot be worked out from what this device has.";
  return problem("not-at-hand", "do", says, "It is kept and sent when there is signal; look again then.");
}
