import type { StreamName } from "#app/ports";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { aCommit, aWrite, openPracticeIn, type StoreWithRecord } from "./record-commits.ts";
import { outcomeOf, valueOf } from "./record-outcomes.ts";
import type { FreshStore } from "./store-contract.ts";

const tonight = "session/tuesday.2026-12-01";

/** What happens when two programs write the running record at the same time. */
export function recordRaceContract(kind: string, fresh: FreshStore<StoreWithRecord>): void {
  describe(`two programs with one running record on ${kind}`, () => {
    let store: StoreWithRecord;
    let other: StoreWithRecord;
    beforeEach(async () => {
      const open = await fresh();
      store = await open();
      other = await open();
      await openPracticeIn(store, "oriel");
    });
    afterEach(async () => {
      await store.close();
      await other.close();
    });
    const append = async (...[commit]: Parameters<StoreWithRecord["record"]["append"]>) =>
      outcomeOf(await store.record.append(commit));
    const numbers = async (...names: readonly StreamName[]) =>
      valueOf(await other.record.streams("oriel", names)).map((it) => it.number);

    it("let one of them have a stream, and tell the other that it moved", async () => {
      await append(aCommit("action-one", { streams: [aWrite(tonight, 0)] }));
      for (let from = 1; from < 20; from += 1) {
        const both = [store, other].map((it, index) =>
          it.record.append(aCommit(`action-${from}-${index}`, { streams: [aWrite(tonight, from)] })),
        );
        const seen = (await Promise.all(both)).map(outcomeOf).sort();
        expect(seen).toEqual(["done", `moved ${tonight}`]);
      }
      expect(await numbers(tonight)).toEqual([20]);
    });

    it("let one of many have a new stream", async () => {
      const many = Array.from({ length: 20 }, (_, index) => {
        const { record } = index % 2 === 0 ? store : other;
        return record.append(aCommit(`action-${index}`, { streams: [aWrite("person/ana-1", 0)] }));
      });
      const seen = (await Promise.all(many)).map(outcomeOf);
      expect(seen.filter((it) => it === "done")).toHaveLength(1);
      expect(seen.filter((it) => it === "moved person/ana-1")).toHaveLength(19);
    });

    it("do an action once that both are sent at the same time", async () => {
      for (let from = 0; from < 20; from += 1) {
        const commit = aCommit(`action-${from}`, { streams: [aWrite(tonight, from)] });
        const both = await Promise.all([store, other].map((it) => it.record.append(commit)));
        expect(both.map(outcomeOf).sort()).toEqual(["done", "done before"]);
      }
      expect(await numbers(tonight)).toEqual([20]);
    });

    it("let actions cross that write the same streams the other way round", async () => {
      const names = ["person/a", "person/b", "session/c"] as const;
      await append(aCommit("action-first", { streams: names.map((it) => aWrite(it, 0)) }));
      for (let from = 1; from < 20; from += 1) {
        const writes = names.map((it) => aWrite(it, from));
        const done = await Promise.all([
          store.record.append(aCommit(`action-${from}-here`, { streams: writes })),
          other.record.append(aCommit(`action-${from}-there`, { streams: writes.toReversed() })),
        ]);
        expect(done.map(outcomeOf).filter((it) => it === "done")).toHaveLength(1);
      }
      expect(await numbers(...names)).toEqual([20, 20, 20]);
    });

    it("let one of two rows of actions be kept, and the other not at all", async () => {
      await append(aCommit("action-one", { streams: [aWrite(tonight, 0), aWrite("person/a", 0)] }));
      for (let from = 1; from < 20; from += 2) {
        const row = (who: string) => [
          aCommit(`first-${from}-${who}`, { streams: [aWrite("person/a", from), aWrite(tonight, from)] }),
          aCommit(`second-${from}-${who}`, {
            streams: [aWrite(tonight, from + 1), aWrite("person/a", from + 1)],
          }),
        ];
        const done = await Promise.all([
          store.record.appendAll(row("here")),
          other.record.appendAll(row("there")),
        ]);
        expect(done.map(valueOf).sort()).toEqual(["apart", "done"]);
      }
      // 1 + 10 rows of 2
      expect(await numbers(tonight, "person/a")).toEqual([21, 21]);
      expect(valueOf(await store.record.events("oriel", tonight))).toHaveLength(21);
    });
  });
}
