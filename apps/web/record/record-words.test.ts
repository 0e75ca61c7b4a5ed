import { expect, test } from "vitest";
import { emptyOutbox, type Queued } from "./outbox.ts";
import type { RecordHere } from "./record-keeper.ts";
import { recordWords } from "./record-words.ts";

const here: RecordHere = {
  ready: true,
  streams: [],
  readAt: null,
  silent: false,
  outbox: emptyOutbox,
  onDevice: true,
};
const mark: Queued = {
  action: "a",
  made: "2026-12-01T18:40:00Z",
  do: { kind: "mark", session: "tuesday.2026-12-01", place: "pl-1", as: "attended" },
  words: "Ana is here",
};
const heads: Queued = { ...mark, do: { kind: "count heads", session: "tuesday.2026-12-01", heads: 3 } };
const queue = (...queued: readonly Queued[]) => ({ ...emptyOutbox, queue: queued });

test("the line says how many wait and for what", () => {
  expect(recordWords(here)).toBe("All kept.");
  expect(recordWords({ ...here, silent: true })).toBe("All kept. No signal.");
  expect(recordWords({ ...here, silent: true, outbox: queue(mark) })).toBe("1 mark waits for signal.");
  expect(recordWords({ ...here, silent: true, outbox: queue(mark, mark, mark) })).toBe(
    "3 marks wait for signal.",
  );
  expect(recordWords({ ...here, silent: true, outbox: queue(mark, heads) })).toBe(
    "2 entries wait for signal.",
  );
  expect(recordWords({ ...here, outbox: queue(mark) })).toBe("Sending 1 mark …");
});

test("it never says that all is kept while something is not", () => {
  const outbox = { ...emptyOutbox, unsettled: [{ queued: mark, problems: [] }] };
  expect(recordWords({ ...here, outbox })).toBe("1 not kept yet: settle below.");
  expect(recordWords({ ...here, outbox: queue(mark), onDevice: false })).toBe(
    "This device keeps nothing: do not close the page.",
  );
});
