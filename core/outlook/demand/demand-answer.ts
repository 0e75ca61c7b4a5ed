import { type PartLine, partLines, type Reply, withoutNoise } from "#core/price";
import { good, type Result, readDocument } from "#core/words";
import { type DemandBehind, demandBehind } from "./demand-behind.ts";
import { demandDocumentSchema } from "./demand-document.ts";
import { demandSentences } from "./demand-sentences.ts";
import { demandWorking } from "./demand-working.ts";
import { readDemandDocument } from "./read-demand-document.ts";

/** The answer for other programs: people a session; eight chances of ten lie between low and high. */
export type DemandJson = Omit<DemandBehind, "turnedAway" | "seen"> & {
  readonly format: "hallful/demand-answer@1";
  readonly sentences: readonly string[];
  readonly turnedAwayPerSession: number;
  readonly working: readonly PartLine[];
};

/**
 * Reads heads and places and answers how many wanted to come and how many were turned away. Problems: those of the
 * document.
 */
export function demandAnswer(input: unknown): Result<Reply<DemandJson>> {
  const read = readDocument(demandDocumentSchema, input);
  if (!read.ok) return read;
  const sessions = readDemandDocument(read.value.value);
  if (!sessions.ok) return sessions;
  const found = demandBehind(sessions.value);
  const { turnedAway, seen: _, ...rest } = found;
  const json: DemandJson = {
    format: "hallful/demand-answer@1",
    sentences: demandSentences(found),
    ...rest,
    turnedAwayPerSession: turnedAway,
    working: partLines("demand", demandWorking(found)),
  };
  return good({ json: withoutNoise(json), unused: read.value.unused });
}
