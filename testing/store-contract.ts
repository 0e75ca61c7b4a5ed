import type { Commit, PlanDocument, Store } from "#app/ports";
import type { Result } from "#core/words";
import { marlsford } from "#demo";
import { afterEach, beforeEach, describe, expect, it } from "vitest";

const practice = marlsford.practice;
const hall = first(marlsford.halls).document;
const course = first(marlsford.classes).document;
const happened = first(marlsford.happened).document;

const opened: Commit = {
  action: "action-open",
  practice: "oriel",
  changes: [{ kind: "practice", from: 0, document: practice }],
};

function hallSaved(action: string, from: number, name: string): Commit {
  const change = { kind: "hall", id: "barn", from, document: { ...hall, name } } as const;
  return { action, practice: "oriel", changes: [change] };
}

function happenedSaved(action: string, from: number, id: string): Commit {
  return { action, practice: "oriel", changes: [{ kind: "happened", id, from, document: happened }] };
}

function planSaved(action: string, id: string, from: number, document: PlanDocument): Commit {
  return { action, practice: "oriel", changes: [{ kind: "plan", id, from, document }] };
}

/** A hall and a class saved together, so that they always have the same version. */
function bothSaved(from: number): Commit {
  const changes = [
    { kind: "hall", id: "barn", from, document: hall },
    { kind: "class", id: "tuesday", from, document: course },
  ] as const;
  return { action: `action-both-${from}`, practice: "oriel", changes };
}

function removal(action: string, from: number): Commit {
  return { action, practice: "oriel", changes: [{ kind: "remove-hall", id: "barn", from }] };
}

/** An empty place each time; what comes back opens it, as often as it is called, as another program would. */
export type FreshStore<Opened = Store> = () => Promise<() => Promise<Opened>>;

/** What every store must do, whatever database it keeps things in. */
export function storeContract(kind: string, fresh: FreshStore): void {
  describe(`a store on ${kind}`, () => {
    let store: Store;
    let other: Store;
    beforeEach(async () => {
      const open = await fresh();
      store = await open();
      other = await open();
    });
    afterEach(async () => {
      await store.close();
      await other.close();
    });

    it("has no practice to begin with", async () => {
      expect(await store.practices()).toEqual({ ok: true, value: [] });
      expect(codes(await store.whole("oriel"))).toEqual(["not-found"]);
    });

    it("gives back exactly what was saved, as version 1", async () => {
      await store.commit({
        ...opened,
        changes: [
          ...opened.changes,
          { kind: "hall", id: "barn", from: 0, document: hall },
          { kind: "class", id: "tuesday", from: 0, document: course },
        ],
      });
      expect(await store.whole("oriel")).toEqual({
        ok: true,
        value: {
          practice: { id: "oriel", version: 1, document: practice },
          halls: [{ id: "barn", version: 1, document: hall }],
          classes: [{ id: "tuesday", version: 1, document: course }],
          happened: [],
          plans: [],
        },
      });
    });

    it("keeps what happened in a class, and gives it up with the class", async () => {
      await store.commit({
        ...opened,
        changes: [...opened.changes, { kind: "class", id: "tuesday", from: 0, document: course }],
      });
      expect(codes(await store.commit(happenedSaved("action-one", 0, "tuesday")))).toEqual([]);
      expect(codes(await store.commit(happenedSaved("action-two", 1, "tuesday")))).toEqual([]);
      expect(codes(await store.commit(happenedSaved("action-three", 1, "tuesday")))).toEqual([
        "changed-elsewhere",
      ]);
      expect(await kept(store)).toEqual([{ id: "tuesday", version: 2, document: happened }]);
      const removed = { kind: "remove-class", id: "tuesday", from: 1 } as const;
      await store.commit({ action: "action-four", practice: "oriel", changes: [removed] });
      expect(await kept(store)).toEqual([]);
    });

    it("keeps nothing that happened in a class that is not there", async () => {
      await store.commit(opened);
      expect(codes(await store.commit(happenedSaved("action-one", 0, "tuesday")))).toEqual(["not-found"]);
    });

    it("keeps a plan of the practice as it is, a version for each save, beside the other plans", async () => {
      await store.commit(opened);
      const week = { places: [{ id: "home", name: "Home ü" }], own: [], later: { than: ["this"] } };
      expect(codes(await store.commit(planSaved("action-one", "week", 0, { own: [] })))).toEqual([]);
      expect(codes(await store.commit(planSaved("action-two", "week", 1, week)))).toEqual([]);
      expect(codes(await store.commit(planSaved("action-three", "year", 0, {})))).toEqual([]);
      expect(codes(await store.commit(planSaved("action-four", "week", 1, {})))).toEqual([
        "changed-elsewhere",
      ]);
      const whole = await store.whole("oriel");
      expect(whole.ok && whole.value.plans).toEqual([
        { id: "week", version: 2, document: week },
        { id: "year", version: 1, document: {} },
      ]);
    });

    it("keeps no plan of a practice that was never opened", async () => {
      expect(codes(await store.commit(planSaved("action-one", "week", 0, {})))).toEqual(["not-found"]);
    });

    it("counts versions and keeps the last document", async () => {
      await store.commit(opened);
      await store.commit(hallSaved("action-one", 0, "Barn"));
      await store.commit(hallSaved("action-two", 1, "Old barn"));
      expect(await barn(store)).toEqual({ version: 2, name: "Old barn" });
    });

    it("does an action once, however often it is asked", async () => {
      await store.commit(opened);
      await store.commit(hallSaved("action-one", 0, "Barn"));
      await store.commit(hallSaved("action-two", 1, "Old barn"));
      expect(await store.commit(hallSaved("action-one", 0, "Barn"))).toEqual({ ok: true, value: null });
      expect(await store.commit(hallSaved("action-two", 1, "Old barn"))).toEqual({ ok: true, value: null });
      expect(await barn(store)).toEqual({ version: 2, name: "Old barn" });
    });

    it("refuses an action id that was used for something else", async () => {
      await store.commit(opened);
      await store.commit(hallSaved("action-one", 0, "Barn"));
      expect(codes(await store.commit(hallSaved("action-one", 1, "Old barn")))).toEqual(["action-reused"]);
      expect(await barn(store)).toEqual({ version: 1, name: "Barn" });
    });

    it("lets the same action id be used in two practices", async () => {
      await store.commit(opened);
      expect(codes(await store.commit({ ...opened, practice: "ines" }))).toEqual([]);
      const all = await store.practices();
      expect(all.ok && all.value.map((it) => it.id).sort()).toEqual(["ines", "oriel"]);
    });

    it("refuses a save made from an older version and overwrites nothing", async () => {
      await store.commit(opened);
      await store.commit(hallSaved("action-one", 0, "Barn"));
      await store.commit(hallSaved("action-two", 1, "Changed on the telephone"));
      expect(codes(await store.commit(hallSaved("action-three", 1, "Changed on the laptop")))).toEqual([
        "changed-elsewhere",
      ]);
      expect(await barn(store)).toEqual({ version: 2, name: "Changed on the telephone" });
    });

    it("refuses to make something that is there already", async () => {
      await store.commit(opened);
      await store.commit(hallSaved("action-one", 0, "Barn"));
      expect(codes(await store.commit(hallSaved("action-two", 0, "Another")))).toEqual(["changed-elsewhere"]);
      expect(codes(await store.commit({ ...opened, action: "action-other" }))).toEqual(["changed-elsewhere"]);
    });

    it("lets a refused action be tried again with the same id", async () => {
      await store.commit(opened);
      expect(codes(await store.commit(hallSaved("action-one", 1, "Barn")))).toEqual(["not-found"]);
      expect(codes(await store.commit(hallSaved("action-one", 0, "Barn")))).toEqual([]);
      expect(await barn(store)).toEqual({ version: 1, name: "Barn" });
    });

    it("does all changes of an action or none", async () => {
      await store.commit(opened);
      const refused = await store.commit({
        action: "action-both",
        practice: "oriel",
        changes: [
          { kind: "hall", id: "barn", from: 0, document: hall },
          { kind: "class", id: "tuesday", from: 3, document: course },
        ],
      });
      expect(codes(refused)).toEqual(["not-found"]);
      const whole = await store.whole("oriel");
      expect(whole.ok && whole.value.halls).toEqual([]);
    });

    it("saves nothing into a practice that was never opened", async () => {
      expect(codes(await store.commit(hallSaved("action-one", 0, "Barn")))).toEqual(["not-found"]);
      expect(codes(await store.whole("oriel"))).toEqual(["not-found"]);
    });

    it("removes the version that was seen and no other", async () => {
      await store.commit(opened);
      await store.commit(hallSaved("action-one", 0, "Barn"));
      await store.commit(hallSaved("action-two", 1, "Old barn"));
      expect(codes(await store.commit(removal("action-three", 1)))).toEqual(["changed-elsewhere"]);
      expect(codes(await store.commit(removal("action-four", 2)))).toEqual([]);
      expect(codes(await store.commit(removal("action-five", 2)))).toEqual(["not-found"]);
      expect(codes(await store.commit(removal("action-four", 2)))).toEqual([]);
    });

    it("keeps two practices apart that use the same ids", async () => {
      await store.commit(opened);
      await store.commit({ ...opened, practice: "ines" });
      await store.commit(hallSaved("action-one", 0, "Barn"));
      await store.commit({ ...hallSaved("action-one", 0, "Grange"), practice: "ines" });
      await store.commit({
        action: "action-gone",
        practice: "ines",
        changes: [{ kind: "remove-hall", id: "barn", from: 1 }],
      });
      expect(await barn(store)).toEqual({ version: 1, name: "Barn" });
    });

    it("lets one of two saves at the same time win, and tells the other", async () => {
      await store.commit(opened);
      await store.commit(hallSaved("action-one", 0, "Barn"));
      const names = ["one", "two", "three", "four", "five"];
      const done = await Promise.all(
        names.map((name) => store.commit(hallSaved(`action-at-once-${name}`, 1, name))),
      );
      expect(done.flatMap(codes).sort()).toEqual(Array.from({ length: 4 }, () => "changed-elsewhere"));
      expect(await barn(store)).toMatchObject({ version: 2 });
    });

    it("lets one of two programs that save at the same time win, and tells the other", async () => {
      await store.commit(opened);
      await store.commit(hallSaved("action-one", 0, "Barn"));
      const done = await Promise.all([
        store.commit(hallSaved("action-here", 1, "Changed on the telephone")),
        other.commit(hallSaved("action-there", 1, "Changed on the laptop")),
      ]);
      expect(done.flatMap(codes)).toEqual(["changed-elsewhere"]);
      const name = done[0].ok ? "Changed on the telephone" : "Changed on the laptop";
      expect(await barn(store)).toEqual({ version: 2, name });
      expect(await barn(other)).toEqual({ version: 2, name });
    });

    it("does an action once that two programs ask for at the same time", async () => {
      await store.commit(opened);
      const asked = [store, other].map((it) => it.commit(hallSaved("action-one", 0, "Barn")));
      expect((await Promise.all(asked)).flatMap(codes)).toEqual([]);
      expect(await barn(other)).toEqual({ version: 1, name: "Barn" });
    });

    it("reads a practice as it was at one moment while another program saves", async () => {
      await store.commit(opened);
      const saving = (async () => {
        for (let from = 0; from < 40; from += 1) await other.commit(bothSaved(from));
      })();
      const seen: (readonly number[])[] = [];
      for (let reads = 0; reads < 40; reads += 1) seen.push(await versions(store));
      await saving;
      expect(seen.filter(([first, last]) => first !== last)).toEqual([]);
      expect(await versions(store)).toEqual([40, 40]);
    });

    it("lists what it has in the order of its bytes, whatever the language of the server", async () => {
      await store.commit(opened);
      for (const id of ["b", "A", "a-1", "a", "B", "a_1"])
        await store.commit({
          action: `action-${id}`,
          practice: "oriel",
          changes: [{ kind: "hall", id, from: 0, document: hall }],
        });
      const whole = await store.whole("oriel");
      expect(whole.ok && whole.value.halls.map((it) => it.id)).toEqual(["A", "B", "a", "a-1", "a_1", "b"]);
    });

    it("does an action once that is asked many times at once", async () => {
      await store.commit(opened);
      const asked = Array.from({ length: 5 }, () => store.commit(hallSaved("action-one", 0, "Barn")));
      expect((await Promise.all(asked)).flatMap(codes)).toEqual([]);
      expect(await barn(store)).toEqual({ version: 1, name: "Barn" });
    });

    it("keeps letters of every script, quotes and line breaks as they are", async () => {
      await store.commit(opened);
      const name = "St Brannoc’s\n“Halle” — 'x'; drop table hall; ゆか \u{1f9d8} \u0000.";
      await store.commit(hallSaved("action-one", 0, name));
      expect(await barn(store)).toEqual({ version: 1, name });
    });
  });
}

function first<Item>(list: readonly Item[]): Item {
  const [found] = list;
  if (found === undefined) throw new RangeError("an empty list has no first");
  return found;
}

function codes(result: Result<unknown>): readonly string[] {
  return result.ok ? [] : result.problems.map((it) => it.code);
}

async function barn(store: Store): Promise<{ version: number; name: string } | undefined> {
  const whole = await store.whole("oriel");
  const found = whole.ok ? whole.value.halls.find((it) => it.id === "barn") : undefined;
  return found === undefined ? undefined : { version: found.version, name: found.document.name };
}

/** Of the hall and of the class, 0 for one that is not there. */
async function versions(store: Store): Promise<readonly number[]> {
  const whole = await store.whole("oriel");
  if (!whole.ok) throw new Error(JSON.stringify(whole.problems));
  return [whole.value.halls, whole.value.classes].map((it) => it[0]?.version ?? 0);
}

async function kept(store: Store): Promise<unknown> {
  const whole = await store.whole("oriel");
  return whole.ok ? whole.value.happened : whole;
}
