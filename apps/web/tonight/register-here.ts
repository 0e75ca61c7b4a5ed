import type { DoAskInput } from "#app/record";
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
      setSaid(saidOf(told));
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

function saidOf(told: Result<{ readonly says: readonly string[] }>): Said {
  return told.ok ? { says: told.value.says, problems: [] } : { says: [], problems: told.problems };
}
