import type { DoAskInput, Told } from "#app/record";
import type { SessionState } from "#core/roll";
import type { Locale, Problem, Result, Writer } from "#core/words";
import { useCallback, useMemo, useState } from "react";
import { screenWriter } from "../record/screen-writer.ts";
import type { RecordOpen } from "../record/use-record.ts";

/** What was answered to the last thing that she did on this page. */
export type Said = { readonly says: readonly string[]; readonly problems: readonly Problem[] };

/** Everything that the parts of one register share. */
export type RegisterHere = {
  readonly practiceId: string;
  readonly id: string;
  readonly session: SessionState;
  readonly record: RecordOpen;
  readonly locale: Locale;
  readonly writer: Writer;
  /** ISO 8601 instant */
  readonly now: string;
  readonly said: Said;
  /** does it and tells the answer; true where it was done or waits */
  readonly run: (asked: DoAskInput, words: string) => boolean;
  readonly say: (says: readonly string[]) => void;
};

const nothing: Said = { says: [], problems: [] };

/** What one page does to the record, and what was answered. */
export function useRun(record: RecordOpen) {
  const [said, setSaid] = useState<Said>(nothing);
  const { keeper } = record;
  const run = useCallback(
    (asked: DoAskInput, words: string) => {
      const told = keeper.act(asked, words);
      setSaid(saidOf(told, asked, words));
      return told.ok;
    },
    [keeper],
  );
  const say = useCallback((says: readonly string[]) => setSaid({ says, problems: [] }), []);
  return useMemo(() => ({ said, run, say }), [said, run, say]);
}

/** One writer for each locale, so that nothing is drawn again because of it. */
export function useWriter(locale: Locale): Writer {
  return useMemo(() => screenWriter(locale), [locale]);
}

/** What was done in her words; after it what the record says, where that is more. */
function saidOf(told: Result<Told>, { kind }: DoAskInput, words: string): Said {
  if (!told.ok) return { says: [], problems: told.problems };
  const same = saysTheSame.has(kind) && told.value.outcome !== "came over";
  return { says: [`${words}.`, ...(same ? [] : told.value.says)], problems: [] };
}

// giving up: the sentence that the student reads stood there before it was done
const saysTheSame = new Set<DoAskInput["kind"]>([
  "mark",
  "walk in",
  "give up place",
  "pay place",
  "give money back",
  "count heads",
  "take offer",
]);
