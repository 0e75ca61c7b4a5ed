import { withoutNoise } from "../without-noise.ts";
import { coinText, partLines, type PartLine, plainAmount, type AmountWriter, type Reply } from "../reply.ts";
import { good, type Result, readDocument } from "#core/words";
import { owedClasses } from "./owed-classes.ts";
import { type PassDocument, passDocumentSchema } from "./pass-document.ts";
import { passSentences } from "./pass-sentences.ts";
import { type PassUseBy, passUseBy, shareLosingClasses, type WeeksLine } from "./pass-use-by.ts";
import { owedWorking } from "./owed-working.ts";
import type { LivePasses } from "./read-live-passes.ts";
import { type PassParts, readPassParts } from "./read-pass.ts";
import { type UseByDate, useByDate } from "./use-by-date.ts";

/** The answer for other programs; shares and chances are numbers between 0 and 1, amounts decimal strings. */
export type PassJson = {
  readonly format: "hallful/pass-answer@1";
  readonly sentences: readonly string[];
  readonly classes: number;
  readonly attendance: number;
  readonly confidence: number;
  readonly teachingWeeks: number;
  readonly shareLosingClasses: number;
  readonly expectedClassesLost: number;
  readonly table: readonly WeeksLine[];
  /** the use-by given now; null when none is stated */
  readonly given: WeeksLine | null;
  /** the use-by as a date; null without a calendar */
  readonly useBy: {
    readonly date: string;
    readonly withoutClosures: string;
    readonly lost: readonly { readonly date: string; readonly why: string }[];
  } | null;
  readonly owed: { readonly classes: number; readonly amount: string; readonly currency: string } | null;
  readonly working: readonly PartLine[];
};

/**
 * Reads a pass document and answers it: for how long the pass should run, as weeks and as a date, who would
 * lose classes, and what is owed on live passes. Problems: those of the document, all at once.
 */
export function passAnswer(input: unknown, write: AmountWriter = plainAmount): Result<Reply<PassJson>> {
  const read = readDocument(passDocumentSchema, input);
  if (!read.ok) return read;
  const { value: document, unused } = read.value;
  const useBy = passUseBy(document);
  const parts = readPassParts(document);
  if (!useBy.ok || !parts.ok)
    return { ok: false, problems: [useBy, parts].flatMap((it) => (it.ok ? [] : it.problems)) };
  const dated = datedOf(parts.value, useBy.value);
  if (!dated.ok) return dated;
  return good({
    json: withoutNoise(passJson(document, useBy.value, parts.value, dated.value, write)),
    unused,
  });
}

function datedOf({ calendar }: PassParts, { teachingWeeks }: PassUseBy): Result<UseByDate | null> {
  return calendar === null ? good(null) : useByDate(calendar, teachingWeeks);
}

function passJson(
  document: PassDocument,
  useBy: PassUseBy,
  { given, live }: PassParts,
  dated: UseByDate | null,
  write: AmountWriter,
): PassJson {
  const { working, ...answer } = useBy;
  const givenLine = given === null ? null : weeksLine(useBy, given);
  return {
    format: "hallful/pass-answer@1",
    sentences: passSentences(document, useBy, givenLine, dated, live, write),
    ...answer,
    given: givenLine,
    useBy: dated === null ? null : dateJson(dated),
    owed: live === null ? null : owedJson(live),
    working: [
      ...partLines("useBy", working),
      ...(live === null ? [] : partLines("owed", owedWorking(live.passes, live.currency))),
    ],
  };
}

function weeksLine({ classes, attendance }: PassUseBy, teachingWeeks: number): WeeksLine {
  return { teachingWeeks, shareLosingClasses: shareLosingClasses(classes, attendance, teachingWeeks) };
}

function dateJson({ date, withoutClosures, lost }: UseByDate): PassJson["useBy"] {
  return {
    date: date.toString(),
    withoutClosures: withoutClosures.toString(),
    lost: lost.map((it) => ({ date: it.date.toString(), why: it.why })),
  };
}

function owedJson({ currency, passes }: LivePasses): PassJson["owed"] {
  const { classes, amount } = owedClasses(passes);
  return { classes, amount: coinText(amount, currency), currency };
}
