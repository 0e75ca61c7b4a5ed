// A program that acts without end, to be killed: node appending.mjs PLACE ROUND. It says "ready" and then the id of
// every action that the store said was done, each in a write of its own that is over before the next thing happens.
import { writeSync } from "node:fs";
import type { KeptPosting, StreamName, StreamWrite } from "#app/ports";
import { marlsford } from "#demo";
import type { DataPlace } from "../data-place.ts";
import { openStore } from "../open-store.ts";
import type { WholeStore } from "../sql-store.ts";

const [place = "", round = ""] = process.argv.slice(2);
const WRITERS = 4;
const SHARED = "session/shared";

// oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the test that starts it wrote it
const opened = await openStore(JSON.parse(place) as DataPlace, () => "2026-12-01T21:10:00Z");
if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
const store = opened.value;
const change = { kind: "practice", from: 0, document: marlsford.practice } as const;
const practice = await store.commit({ action: "open", practice: "oriel", changes: [change] });
if (!practice.ok) throw new Error(JSON.stringify(practice.problems));
say("ready");
await Promise.all(Array.from({ length: WRITERS }, (_, writer) => actWithoutEnd(store, writer)));

function say(line: string): void {
  writeSync(1, `${line}\n`);
}

/** Each action tells two events to a session of the writer's own and one to a session that all of them write. */
async function actWithoutEnd({ record }: WholeStore, writer: number): Promise<void> {
  for (let count = 1; ; count += 1) {
    const action = `${round}.${writer}.${count}`;
    let outcome = "";
    while (outcome !== "done") {
      // oxlint-disable no-await-in-loop -- one action after the other
      const read = await record.streams("oriel", [own(writer), SHARED]);
      if (!read.ok) throw new Error(JSON.stringify(read.problems));
      const at = (name: StreamName) => read.value.find((it) => it.stream === name)?.number ?? 0;
      const done = await record.append({
        practice: "oriel",
        action,
        asked: action,
        made: "2026-12-01T18:58:00Z",
        arrived: "2026-12-01T21:10:00Z",
        by: "teacher",
        streams: [write(own(writer), at(own(writer)), 2), write(SHARED, at(SHARED), 1)],
        postings: sale(writer + count),
        sealed: [{ person: `p-${writer}`, text: action }],
        erased: [],
        answer: action,
      });
      // oxlint-enable no-await-in-loop
      if (!done.ok) throw new Error(JSON.stringify(done.problems));
      ({ outcome } = done.value);
    }
    say(action);
  }
}

function own(writer: number): StreamName {
  return `session/own-${writer}`;
}

function write(stream: StreamName, from: number, events: number): StreamWrite {
  const bodies = Array.from({ length: events }, (_, index) => from + index + 1);
  return { stream, from, belongs: "tuesday", sort: "", state: from + events, events: bodies };
}

function sale(amount: number): readonly Omit<KeptPosting, "action" | "line">[] {
  const line = { date: "2026-12-01", commodity: "GBP", about: SHARED } as const;
  return [
    { ...line, account: "cash", amount },
    { ...line, account: "income", amount: -amount },
  ];
}
