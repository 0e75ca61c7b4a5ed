import { join } from "node:path";
import { openSqliteStore } from "#adapters/store";
import type { KeptPosting, RecordStore, StreamName } from "#app/ports";
import { act, type DoAskInput, type Recorder, type Told, turns } from "#app/record";
import type { Result } from "#core/words";
import { temporaryFolder } from "./temporary-folder.ts";

const PRACTICE = "oriel";

/** A practice in London with an empty record on a real store, and a clock that a test sets. */
export async function aRecorder() {
  const file = join(temporaryFolder(), "record.sqlite");
  const store = await openSqliteStore({ file, now: () => "2026-04-01T09:00:00Z" });
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  const practice = {
    name: "Oriel",
    currency: "GBP",
    zone: "Europe/London",
    locale: "en-GB",
    units: "metric",
  };
  const opened = await store.value.commit({
    action: "action-0001",
    practice: PRACTICE,
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- a sound document, written plainly
    changes: [{ kind: "practice", from: 0, document: practice as never }],
  });
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  return { ...recorderOn(store.value.record), close: () => store.value.close() };
}

/** The same on a store that is there; `at` sets the clock of what is done next. */
export function recorderOn(store: RecordStore) {
  let clock = "2026-04-01T09:00:00Z";
  let actions = 0;
  const recorder: Recorder = {
    store,
    now: () => clock,
    inTurn: turns(),
    seal: (_practice, _person, text) => `sealed ${text.length}`,
  };
  const doIt = (what: DoAskInput, action = `test-action-${(actions += 1)}`): Promise<Result<Told>> =>
    act(recorder, { practice: PRACTICE, action, by: "teacher", locale: "en-GB", do: what });
  return {
    at: (instant: string) => {
      clock = instant;
    },
    do: doIt,
    /** does it and throws where it cannot be done */
    must: async (what: DoAskInput): Promise<Told> => {
      const done = await doIt(what);
      if (!done.ok) throw new Error(done.problems.map(({ code, says }) => `${code}: ${says}`).join("\n"));
      return done.value;
    },
    state: async <State>(name: StreamName): Promise<State> => {
      const found = await store.streams(PRACTICE, [name]);
      if (!found.ok || found.value[0] === undefined) throw new Error(`not there: ${name}`);
      // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the test names the kind
      return found.value[0].state as State;
    },
    postings: async (): Promise<readonly KeptPosting[]> => {
      const found = await store.postings(PRACTICE, { from: "2020-01-01", until: "2030-12-31" });
      if (!found.ok) throw new Error(JSON.stringify(found.problems));
      return found.value;
    },
    store,
  };
}
