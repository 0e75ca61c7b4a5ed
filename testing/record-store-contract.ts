import type { ListOrder, RecordCommit, StreamName } from "#app/ports";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { aCommit, aSale, aWrite, openPracticeIn, type StoreWithRecord } from "./record-commits.ts";
import { recordModelContract } from "./record-model-contract.ts";
import { codesOf, outcomeOf, valueOf } from "./record-outcomes.ts";
import { recordRaceContract } from "./record-race-contract.ts";
import type { FreshStore } from "./store-contract.ts";

const tonight = "session/tuesday.2026-12-01";

/** What every store of the running record must do, whatever database it keeps it in. */
export function recordStoreContract(kind: string, fresh: FreshStore<StoreWithRecord>): void {
  recordRaceContract(kind, fresh);
  recordModelContract(kind, fresh);
  describe(`a running record on ${kind}`, () => {
    let store: StoreWithRecord;
    beforeEach(async () => {
      store = await (await fresh())();
      await openPracticeIn(store, "oriel");
    });
    afterEach(() => store.close());
    const append = async (commit: RecordCommit) => outcomeOf(await store.record.append(commit));
    const numbers = async (...names: readonly StreamName[]) =>
      valueOf(await store.record.streams("oriel", names)).map((it) => it.number);

    it("has nothing to begin with", async () => {
      expect(await numbers(tonight)).toEqual([]);
      expect(valueOf(await store.record.events("oriel", tonight))).toEqual([]);
      expect(valueOf(await store.record.sealed("oriel", "ana-1"))).toBeNull();
      expect(valueOf(await store.record.answered("oriel", "action-one", "asked"))).toBeUndefined();
    });

    it("gives back a stream as it was left, and its events with who and when", async () => {
      const write = aWrite(tonight, 0, {
        sort: "2026-12-01T18:30",
        events: [{ kind: "planned" }, ["a", 1.5]],
      });
      expect(await append(aCommit("action-one", { streams: [write] }))).toBe("done");
      expect(valueOf(await store.record.streams("oriel", [tonight]))).toEqual([
        { stream: tonight, number: 2, belongs: "tuesday", sort: "2026-12-01T18:30", state: { count: 2 } },
      ]);
      const kept = { stream: tonight, action: "action-one", made: "2026-12-01T18:58:00Z" };
      const more = { ...kept, arrived: "2026-12-01T21:10:00Z", by: "teacher" };
      expect(valueOf(await store.record.events("oriel", tonight))).toEqual([
        { ...more, number: 1, body: { kind: "planned" } },
        { ...more, number: 2, body: ["a", 1.5] },
      ]);
    });

    it("keeps several actions in one go, each on what the one before left", async () => {
      const both = [
        aCommit("action-one", { streams: [aWrite(tonight, 0)] }),
        aCommit("action-two", { streams: [aWrite(tonight, 1)] }),
      ];
      expect(valueOf(await store.record.appendAll(both))).toBe("done");
      expect(valueOf(await store.record.events("oriel", tonight)).map((it) => it.action)).toEqual([
        "action-one",
        "action-two",
      ]);
    });

    it("keeps with several actions all that each of them does, and does not erase among them", async () => {
      const sold = { postings: aSale(1000, "2026-12-01", tonight) };
      const both = [
        aCommit("action-one", {
          streams: [aWrite("person/ana-1", 0)],
          ...sold,
          sealed: [{ person: "ana-1", text: "a" }],
        }),
        aCommit("action-two", {
          streams: [aWrite(tonight, 0)],
          ...sold,
          sealed: [{ person: "ana-1", text: "b" }],
        }),
      ];
      expect(valueOf(await store.record.appendAll(both))).toBe("done");
      expect(await balancesOf(store)).toEqual({ cash: 2000, "income/singles": -2000 });
      expect(valueOf(await store.record.sealed("oriel", "ana-1"))).toBe("b");
      const gone = aCommit("action-three", { streams: [aWrite("person/ana-1", 1)], erased: ["ana-1"] });
      expect(valueOf(await store.record.appendAll([gone]))).toBe("apart");
      expect(await numbers("person/ana-1")).toEqual([1]);
      const nowhere = both.map((it) => ({ ...it, practice: "ines" }));
      expect(codesOf(await store.record.appendAll(nowhere))).toEqual(["not-found"]);
    });

    it("keeps none of several when one was done before or a stream had moved", async () => {
      await append(aCommit("action-one", { streams: [aWrite(tonight, 0)] }));
      const fresh = aCommit("action-two", { streams: [aWrite("person/a", 0)] });
      const before = aCommit("action-one", { streams: [aWrite(tonight, 0)] });
      const late = aCommit("action-three", { streams: [aWrite(tonight, 5)] });
      expect(valueOf(await store.record.appendAll([fresh, before]))).toBe("apart");
      expect(valueOf(await store.record.appendAll([fresh, late]))).toBe("apart");
      expect(await numbers(tonight, "person/a")).toEqual([1]);
      expect(valueOf(await store.record.answered("oriel", "action-two", "asked"))).toBeUndefined();
    });

    it("numbers the events of a stream on, and lets what it is listed under change", async () => {
      await append(aCommit("action-one", { streams: [aWrite(tonight, 0)] }));
      const moved = aWrite(tonight, 1, { sort: "2026-12-02", belongs: "" });
      expect(await append(aCommit("action-two", { streams: [moved] }))).toBe("done");
      expect(valueOf(await store.record.events("oriel", tonight)).map((it) => it.number)).toEqual([1, 2]);
      const [kept] = valueOf(await store.record.streams("oriel", [tonight]));
      expect(kept).toMatchObject({ number: 2, belongs: "", sort: "2026-12-02" });
    });

    it("reads streams in the order asked, without those that are not there", async () => {
      const streams = (["person/a", "person/b", "pass/p-7"] as const).map((it) => aWrite(it, 0));
      await append(aCommit("action-one", { streams }));
      const names = ["pass/p-7", "person/none", "person/b", "person/a"] as const;
      const found = valueOf(await store.record.streams("oriel", names));
      expect(found.map((it) => it.stream)).toEqual(["pass/p-7", "person/b", "person/a"]);
    });

    it("does an action once, however often it comes, and answers as it did then", async () => {
      const commit = aCommit("action-one", {
        streams: [aWrite(tonight, 0)],
        postings: aSale(1000, "2026-12-01", tonight),
      });
      const first = await store.record.append({ ...commit, answer: { says: ["Kept."] } });
      expect(valueOf(first)).toEqual({ outcome: "done" });
      const again = await store.record.append({ ...commit, answer: { says: ["Something else."] } });
      expect(valueOf(again)).toEqual({ outcome: "done before", answer: { says: ["Kept."] } });
      expect(await numbers(tonight)).toEqual([1]);
      expect(await balancesOf(store)).toEqual({ cash: 1000, "income/singles": -1000 });
    });

    it("tells what was answered to an action that was done, and nothing of one that was not", async () => {
      const commit = aCommit("action-one", {
        asked: "a place for Ana",
        answer: { says: ["Place 3 is hers."] },
      });
      await append(commit);
      expect(valueOf(await store.record.answered("oriel", "action-one", "a place for Ana"))).toEqual({
        answer: { says: ["Place 3 is hers."] },
      });
      expect(codesOf(await store.record.answered("oriel", "action-one", "a place for Ben"))).toEqual([
        "action-reused",
      ]);
      expect(valueOf(await store.record.answered("ines", "action-one", "a place for Ana"))).toBeUndefined();
    });

    it("refuses an action id that was used for something else, in documents too", async () => {
      await append(aCommit("action-one", { asked: "one thing" }));
      expect(await append(aCommit("action-one", { asked: "another" }))).toBe("action-reused");
      expect(await append(aCommit("open-oriel"))).toBe("action-reused");
    });

    it("says that a stream moved, and keeps nothing of the action, which may come again", async () => {
      await append(aCommit("action-one", { streams: [aWrite(tonight, 0)] }));
      const streams = [aWrite("person/ana-1", 0), aWrite(tonight, 0)];
      const late = aCommit("action-two", { streams, postings: aSale(1000, "2026-12-01", tonight) });
      expect(valueOf(await store.record.append(late))).toEqual({ outcome: "moved", stream: tonight });
      expect(await numbers("person/ana-1", tonight)).toEqual([1]);
      expect(await balancesOf(store)).toEqual({});
      const read = [aWrite("person/ana-1", 0), aWrite(tonight, 1)];
      expect(await append({ ...late, streams: read })).toBe("done");
      expect(await numbers("person/ana-1", tonight)).toEqual([1, 2]);
    });

    it("says that a stream moved that is not there, or not yet so far", async () => {
      expect(await append(aCommit("action-one", { streams: [aWrite(tonight, 1)] }))).toBe(`moved ${tonight}`);
      await append(aCommit("action-two", { streams: [aWrite(tonight, 0)] }));
      expect(await append(aCommit("action-three", { streams: [aWrite(tonight, 2)] }))).toBe(
        `moved ${tonight}`,
      );
      expect(await numbers(tonight)).toEqual([1]);
    });

    it("keeps nothing of an action that fails half way", async () => {
      const streams = [aWrite("person/ana-1", 0), aWrite("person/ana-1", 0)];
      expect(await append(aCommit("action-one", { streams }))).toBe("moved person/ana-1");
      expect(await numbers("person/ana-1")).toEqual([]);
      expect(valueOf(await store.record.events("oriel", "person/ana-1"))).toEqual([]);
    });

    it("keeps nothing of a practice that was never opened", async () => {
      const nowhere = { practice: "ines" };
      expect(await append(aCommit("action-one", { ...nowhere, streams: [aWrite(tonight, 0)] }))).toBe(
        "not-found",
      );
      expect(await append(aCommit("action-one", { ...nowhere, streams: [aWrite(tonight, 3)] }))).toBe(
        "not-found",
      );
      expect(await append(aCommit("action-one", nowhere))).toBe("not-found");
      await openPracticeIn(store, "ines");
      expect(await append(aCommit("action-one", nowhere))).toBe("done");
    });

    it("throws for an entry that does not balance, and keeps nothing of it", async () => {
      const [cash] = aSale(1000, "2026-12-01", tonight);
      const commit = aCommit("action-one", { postings: cash === undefined ? [] : [cash] });
      await expect(store.record.append(commit)).rejects.toThrow("postings that do not balance: 1000 of GBP");
      expect(valueOf(await store.record.answered("oriel", "action-one", commit.asked))).toBeUndefined();
    });

    it("lists a kind by sort, then name, as bytes, and goes on after any of them", async () => {
      await append(
        aCommit("action-one", { streams: listed.map(([name, sort]) => aWrite(name, 0, { sort })) }),
      );
      expect(await listOf(store, { most: 10 })).toEqual(inOrder);
      for (const most of [1, 2, 3]) expect(await pagesOf(store, most)).toEqual(inOrder);
      expect(await listOf(store, { from: "2026-12-01", until: "2026-12-08", most: 10 })).toEqual([
        "session/B",
        "session/a",
        "session/é",
      ]);
    });

    it("lists what belongs to one class, and nothing of another kind or practice", async () => {
      await openPracticeIn(store, "ines");
      const streams = [
        aWrite("session/a", 0),
        aWrite("session/b", 0, { belongs: "thursday" }),
        aWrite("pass/c", 0),
      ];
      await append(aCommit("action-one", { streams }));
      await append(aCommit("action-one", { practice: "ines", streams: [aWrite("session/d", 0)] }));
      expect(await listOf(store, { belongs: "tuesday", most: 10 })).toEqual(["session/a"]);
      expect(await listOf(store, { most: 10 })).toEqual(["session/a", "session/b"]);
    });

    it("gives postings by date, action and line, and what each account comes to until a date", async () => {
      const sold = (action: string, amount: number, date: string) =>
        append(aCommit(action, { postings: aSale(amount, date, tonight) }));
      await sold("action-b", 1000, "2026-12-01");
      await sold("action-c", 8500, "2026-12-08");
      await sold("action-a", 250, "2026-12-08");
      const all = valueOf(await store.record.postings("oriel", { from: "2026-12-01", until: "2026-12-08" }));
      expect(all.map((it) => `${it.date} ${it.action} ${it.line} ${it.account} ${it.amount}`)).toEqual([
        "2026-12-01 action-b 1 cash 1000",
        "2026-12-01 action-b 2 income/singles -1000",
        "2026-12-08 action-a 1 cash 250",
        "2026-12-08 action-a 2 income/singles -250",
        "2026-12-08 action-c 1 cash 8500",
        "2026-12-08 action-c 2 income/singles -8500",
      ]);
      expect(all[0]).toMatchObject({ commodity: "GBP", about: tonight });
      const later = await store.record.postings("oriel", { from: "2026-12-02", until: "2026-12-31" });
      expect(valueOf(later)).toHaveLength(4);
      expect(await balancesOf(store, "2026-12-07")).toEqual({ cash: 1000, "income/singles": -1000 });
      // 10.00 + 2.50 + 85.00 = 97.50
      expect(await balancesOf(store)).toEqual({ cash: 9750, "income/singles": -9750 });
      await append(aCommit("action-d", { postings: aSale(-9750, "2026-12-09", tonight) }));
      expect(await balancesOf(store)).toEqual({});
    });

    it("adds up amounts over what four bytes hold, to the penny", async () => {
      // 2^31 pence twice, and one: 42,949,672.97
      for (const [action, amount] of [
        ["a", 2 ** 31],
        ["b", 2 ** 31],
        ["c", 1],
      ] as const)
        await append(aCommit(action, { postings: aSale(amount, "2026-12-01", tonight) }));
      expect(await balancesOf(store)).toMatchObject({ cash: 4_294_967_297 });
    });

    it("keeps one sealed note of a person, replaces it and removes it", async () => {
      await append(sealing("action-one", "v1:9f3a"));
      await append(sealing("action-two", "v1:77c0"));
      expect(valueOf(await store.record.sealed("oriel", "ana-1"))).toBe("v1:77c0");
      await append(sealing("action-three", null));
      expect(valueOf(await store.record.sealed("oriel", "ana-1"))).toBeNull();
    });

    it("erases what was told of a person and her sealed note, numbers on, and leaves the books", async () => {
      const person = aWrite("person/ana-1", 0, { events: [{ name: "Ana" }, { name: "Ana Poole" }] });
      const sealed = [{ person: "ana-1", text: "v1:9f3a" }];
      const postings = aSale(1000, "2026-12-01", tonight);
      const also = [aWrite("person/ana-10", 0), aWrite(tonight, 0)];
      await append(aCommit("action-one", { streams: [person, ...also], sealed, postings }));
      const gone = aWrite("person/ana-1", 2, { state: { erased: true }, events: [{ kind: "erased" }] });
      await append(aCommit("action-two", { streams: [gone], erased: ["ana-1"] }));
      const left = valueOf(await store.record.events("oriel", "person/ana-1"));
      expect(left.map((it) => [it.number, it.body])).toEqual([[3, { kind: "erased" }]]);
      expect(valueOf(await store.record.sealed("oriel", "ana-1"))).toBeNull();
      expect(await numbers("person/ana-1", "person/ana-10", tonight)).toEqual([3, 1, 1]);
      expect(valueOf(await store.record.events("oriel", "person/ana-10"))).toHaveLength(1);
      expect(await balancesOf(store)).toEqual({ cash: 1000, "income/singles": -1000 });
      const next = aWrite("person/ana-1", 3);
      expect(await append(aCommit("action-three", { streams: [next] }))).toBe("done");
    });

    it("keeps two practices apart that use the same ids", async () => {
      await openPracticeIn(store, "ines");
      const streams = [aWrite(tonight, 0)];
      await append(aCommit("action-one", { streams, postings: aSale(1000, "2026-12-01", tonight) }));
      expect(await append(aCommit("action-one", { practice: "ines", streams }))).toBe("done");
      await append(aCommit("action-two", { practice: "ines", streams: [aWrite(tonight, 1)] }));
      expect(await numbers(tonight)).toEqual([1]);
      expect(valueOf(await store.record.balances("ines", "2027-01-01"))).toEqual([]);
    });

    it("takes an action with thousands of events", async () => {
      const events = Array.from({ length: 5000 }, (_, index) => index);
      expect(await append(aCommit("action-one", { streams: [aWrite(tonight, 0, { events })] }))).toBe("done");
      expect(valueOf(await store.record.events("oriel", tonight)).map((it) => it.body)).toEqual(events);
    });

    it("keeps letters of every script, quotes and line breaks as they are", async () => {
      const state = { name: "“Ana’s” \n 'x'; drop table event; ゆか \u{1f9d8} \u0000 \ud800" };
      await append(aCommit("action-one", { streams: [aWrite(tonight, 0, { state, events: [state] })] }));
      expect(valueOf(await store.record.streams("oriel", [tonight]))[0]?.state).toEqual(state);
      expect(valueOf(await store.record.events("oriel", tonight))[0]?.body).toEqual(state);
    });
  });
}

/** As an English person sorts, "a" would stand before "B", and "é" beside "e". */
const listed: readonly (readonly [StreamName, string])[] = [
  ["session/z", "2026-11-30"],
  ["session/é", "2026-12-01"],
  ["session/a", "2026-12-01"],
  ["session/B", "2026-12-01"],
  ["session/b", "2026-12-08"],
  ["session/none", ""],
];
const inOrder = ["session/none", "session/z", "session/B", "session/a", "session/é", "session/b"];

function sealing(action: string, text: string | null): RecordCommit {
  return aCommit(action, { sealed: [{ person: "ana-1", text }] });
}

type Asked = Omit<ListOrder, "kind">;

async function listOf(store: StoreWithRecord, order: Asked): Promise<readonly StreamName[]> {
  return valueOf(await store.record.list("oriel", { kind: "session", ...order })).map((it) => it.stream);
}

async function pagesOf(store: StoreWithRecord, most: number): Promise<readonly StreamName[]> {
  const seen: StreamName[] = [];
  let after: ListOrder["after"] | undefined;
  for (;;) {
    const order = { kind: "session", most, ...(after === undefined ? {} : { after }) } as const;
    const page = valueOf(await store.record.list("oriel", order));
    seen.push(...page.map((it) => it.stream));
    const last = page.at(-1);
    if (last === undefined) return seen;
    after = { sort: last.sort, stream: last.stream };
  }
}

async function balancesOf(store: StoreWithRecord, until = "9999-12-31"): Promise<Record<string, number>> {
  const all = valueOf(await store.record.balances("oriel", until));
  return Object.fromEntries(all.filter((it) => it.amount !== 0).map((it) => [it.account, it.amount]));
}
