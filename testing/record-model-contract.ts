import type { ListOrder, RecordCommit, StreamName } from "#app/ports";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aCommit, aSale, openPracticeIn, type StoreWithRecord } from "./record-commits.ts";
import { type RecordModel, recordModel } from "./record-model.ts";
import { outcomeOf, valueOf } from "./record-outcomes.ts";
import type { FreshStore } from "./store-contract.ts";

/** Whatever is done with a record, it is what the plain model of it is. */
export function recordModelContract(kind: string, fresh: FreshStore<StoreWithRecord>): void {
  describe(`a running record on ${kind}, whatever is done with it`, () => {
    it("answers and holds what the plain model of it does", async () => {
      await fc.assert(
        fc.asyncProperty(
          fc.array(commit(), { minLength: 8, maxLength: 20 }),
          fc.array(listOrder(), { minLength: 20, maxLength: 20 }),
          async (commits, orders) => {
            const store = await (await fresh())();
            await openPracticeIn(store, "oriel");
            const model = recordModel();
            for (const it of commits) await sameAnswer(store, model, it);
            await sameContent(store, model, orders);
            await store.close();
          },
        ),
        { numRuns: 15 },
      );
    }, 60_000);
  });
}

async function sameAnswer(store: StoreWithRecord, model: RecordModel, it: RecordCommit): Promise<void> {
  const expected = model.append(it);
  const seen = outcomeOf(await store.record.append(it));
  const any =
    expected.outcome === "moved" ? expected.moved.map((name) => `moved ${name}`) : [expected.outcome];
  expect(any).toContain(seen);
}

async function sameContent(
  store: StoreWithRecord,
  model: RecordModel,
  orders: readonly ListOrder[],
): Promise<void> {
  const { record } = store;
  const names = model.streams().map((it) => it.stream);
  expect(valueOf(await record.streams("oriel", names))).toEqual(model.streams());
  for (const name of names) {
    // oxlint-disable-next-line no-await-in-loop -- one after the other
    const events = valueOf(await record.events("oriel", name));
    expect(events.map(({ number, action, body }) => ({ number, action, body }))).toEqual(model.events(name));
  }
  for (const order of orders) {
    // oxlint-disable-next-line no-await-in-loop -- one after the other
    const listed = valueOf(await record.list("oriel", order));
    expect(listed.map((it) => it.stream)).toEqual(model.list(order));
  }
  const all = { from: "0000-01-01", until: "9999-12-31" };
  expect(valueOf(await record.postings("oriel", all))).toEqual(model.postings());
}

const KINDS = ["session", "pass"] as const;
const SORTS = ["", "Ä", "a", "B"] as const;

function streamName(): fc.Arbitrary<StreamName> {
  const parts = [
    fc.constantFrom(...KINDS),
    fc.constantFrom("a", "B", "a-1", "é", "\u{1f9d8}", "\uffee"),
  ] as const;
  return fc.tuple(...parts).map(([kind, id]): StreamName => `${kind}/${id}`);
}

/** Few names and low numbers, so that many of them meet; an action id comes again now and then. */
function commit(): fc.Arbitrary<RecordCommit> {
  const write = fc.record({
    stream: streamName(),
    from: fc.constantFrom(0, 0, 0, 1, 2),
    belongs: fc.constantFrom("", "tuesday"),
    sort: fc.constantFrom(...SORTS),
    state: json(),
    events: fc.array(json(), { minLength: 1, maxLength: 2 }),
  });
  const streams = fc.uniqueArray(write, { maxLength: 3, selector: (it) => it.stream });
  const sale = fc.tuple(fc.integer({ min: 1, max: 5000 }), fc.constantFrom("2026-12-01", "2026-12-08"));
  return fc
    .record({ action: fc.nat(30), streams, sales: fc.array(sale, { maxLength: 2 }) })
    .map(({ action, streams: writes, sales }) =>
      aCommit(`action-${action}`, {
        streams: writes,
        postings: sales.flatMap(([amount, date]) => aSale(amount, date, "session/a")),
      }),
    );
}

/** As it comes back from JSON, which knows no nought below nought. */
function json(): fc.Arbitrary<unknown> {
  return fc.jsonValue().map((it): unknown => JSON.parse(JSON.stringify(it)));
}

/** One or two conditions at a time: with more of them a list of a dozen streams is mostly empty. */
function listOrder(): fc.Arbitrary<ListOrder> {
  const either = { kind: fc.constantFrom(...KINDS), most: fc.integer({ min: 1, max: 8 }) };
  const belongs = fc.constantFrom("", "tuesday");
  const sort = fc.constantFrom(...SORTS);
  const after = fc.record({ sort, stream: streamName() });
  return fc.oneof(
    fc.record(either),
    fc.record({ ...either, belongs }),
    fc.record({ ...either, from: sort }),
    fc.record({ ...either, until: sort }),
    fc.record({ ...either, after }),
    fc.record({ ...either, belongs, after }),
  );
}
