import type { KeptStream } from "#app/ports";
import { type ActedOn, actOn, doAskSchema } from "#app/record";
import type { Locale, Result } from "#core/words";
import type { Queued } from "./outbox.ts";
import { screenWriter } from "./screen-writer.ts";

/** What one action does to the streams at hand. Throws on an ask that is none. */
export function acted(
  streams: readonly KeptStream[],
  { do: asked, made }: Pick<Queued, "do" | "made">,
  locale: Locale,
): Result<ActedOn> {
  const setting = { made, arrived: made, by: "teacher", writer: screenWriter(locale) } as const;
  return actOn(streams, doAskSchema.parse(asked), setting);
}

/** The streams with all that waits done on top, in order; what cannot be done on them is left to the server. */
export function actedAll(
  streams: readonly KeptStream[],
  queue: readonly Queued[],
  locale: Locale,
): readonly KeptStream[] {
  return queue.reduce((before, queued) => {
    const after = acted(before, queued, locale);
    return after.ok ? after.value.streams : before;
  }, streams);
}
