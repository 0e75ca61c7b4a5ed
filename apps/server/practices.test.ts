import { practiceWholeContract } from "#app/ports";
import { marlsford } from "#demo";
import { describe, expect, it } from "vitest";
import { codesOf, trialDemo, trialServer } from "./trial-server.ts";

const barn = marlsford.halls[0]?.document;
const tuesday = marlsford.classes[0]?.document;

describe("the practices", () => {
  it("are none to begin with, and one after the demo was opened", async () => {
    const { get, post } = await trialServer();
    expect((await get("/api/practices")).json()).toEqual({ practices: [] });
    const opened = await post("/api/practices", {
      action: "action-0001",
      id: "oriel",
      start: "demo-marlsford",
    });
    expect(opened.statusCode).toBe(200);
    const whole = practiceWholeContract.parse(opened.json());
    expect(whole.halls.map((it) => it.id).sort()).toEqual(marlsford.halls.map((it) => it.id).sort());
    expect(whole.classes).toHaveLength(4);
    expect((await get("/api/practices/oriel")).json()).toEqual(opened.json());
    expect((await get("/api/practices")).json()).toEqual({
      practices: [{ id: "oriel", version: 1, document: marlsford.practice }],
    });
  });

  it("may start empty, with the name, currency and zone that she gives", async () => {
    const { post } = await trialServer();
    const document = { ...marlsford.practice, name: "Wren Abbot", currency: "EUR", zone: "Europe/Dublin" };
    const opened = await post("/api/practices", {
      action: "action-0001",
      id: "wren",
      start: "empty",
      document,
    });
    expect(opened.json()).toEqual({
      practice: { id: "wren", version: 1, document },
      halls: [],
      classes: [],
      happened: [],
      plans: [],
    });
  });

  it("are opened once, however often the same action comes", async () => {
    const { post } = await trialServer();
    const ask = { action: "action-0001", id: "oriel", start: "demo-marlsford" };
    const first = await post("/api/practices", ask);
    const second = await post("/api/practices", ask);
    expect(second.json()).toEqual(first.json());
    const other = await post("/api/practices", { ...ask, action: "action-0002" });
    expect([other.statusCode, codesOf(other)]).toEqual([409, ["changed-elsewhere"]]);
  });

  it("keep no currency or zone that does not exist", async () => {
    const { post } = await trialServer();
    const document = { ...marlsford.practice, name: " ", currency: "GBX", zone: "Europe/Marlsford" };
    const refused = await post("/api/practices", {
      action: "action-0001",
      id: "wren",
      start: "empty",
      document,
    });
    expect(refused.statusCode).toBe(422);
    expect(codesOf(refused)).toEqual(["name-missing", "currency-unknown", "zone-unknown"]);
  });

  it("are changed from the version that was seen", async () => {
    const { put } = await trialDemo();
    const document = { ...marlsford.practice, name: "Oriel T." };
    const saved = await put("/api/practices/oriel", { action: "action-0002", from: 1, document });
    expect(saved.json()).toEqual({ id: "oriel", version: 2, document, unused: [] });
    const late = await put("/api/practices/oriel", { action: "action-0003", from: 1, document });
    expect([late.statusCode, codesOf(late)]).toEqual([409, ["changed-elsewhere"]]);
  });
});

describe("a plan of the practice", () => {
  const url = "/api/practices/oriel/plans/year";
  const document = { from: "2026-09-01", notes: ["half term"] };

  it("is saved, read back with the practice, and changed from the version that was seen", async () => {
    const { put, get } = await trialDemo();
    const saved = await put(url, { action: "action-0002", from: 1, document });
    expect(saved.json()).toMatchObject({ id: "year", version: 2 });
    const late = await put(url, { action: "action-0003", from: 1, document: {} });
    expect([late.statusCode, codesOf(late)]).toEqual([409, ["changed-elsewhere"]]);
    const whole = practiceWholeContract.parse((await get("/api/practices/oriel")).json());
    expect(whole.plans.find(({ id }) => id === "year")?.version).toBe(2);
  });

  it("of the week is kept with what was left out filled in, and tells what nothing reads", async () => {
    const { post, put } = await trialServer();
    const week = { own: [{ class: "tuesday" }], wishs: [] };
    const opened = { action: "action-0001", id: "oriel", start: "empty" };
    await post("/api/practices", opened);
    const saved = await put("/api/practices/oriel/plans/week", {
      action: "action-0002",
      from: 0,
      document: week,
    });
    expect(saved.json()).toMatchObject({
      version: 1,
      unused: ["wishs"],
      document: {
        home: "home",
        own: [{ class: "tuesday", fixed: false, out: false }],
        limits: { freeDays: 1 },
      },
    });
    const nowhere = await put("/api/practices/nobody/plans/week", {
      action: "action-0002",
      from: 0,
      document: week,
    });
    expect([nowhere.statusCode, codesOf(nowhere)]).toEqual([404, ["not-found"]]);
  });

  it("is one of three, an object, and of a size that can be meant", async () => {
    const { put } = await trialDemo();
    const tries = [
      ["/api/practices/oriel/plans/decade", document],
      [url, ["a list"]],
      [url, { notes: "x".repeat(950_000) }],
      ["/api/practices/oriel/plans/week", { limits: { freeDays: "two" } }],
    ] as const;
    const codes = await Promise.all(
      tries.map(async ([where, it], at) => {
        const refused = await put(where, { action: `action-100${at}`, from: 0, document: it });
        return [refused.statusCode, ...codesOf(refused)];
      }),
    );
    expect(codes).toEqual([
      [422, "plan-unknown"],
      [422, "document-wrong-kind"],
      [422, "plan-too-large"],
      [422, "document-wrong-kind"],
    ]);
  });
});

describe("a hall and a class", () => {
  it("are saved, read back and saved again", async () => {
    const { put, get } = await trialDemo();
    const url = "/api/practices/oriel/halls/loft";
    const saved = await put(url, { action: "action-0002", from: 0, document: { ...barn, name: "Loft" } });
    expect(saved.json()).toEqual({ id: "loft", version: 1, document: { ...barn, name: "Loft" }, unused: [] });
    const again = await put(url, { action: "action-0003", from: 1, document: { ...barn, name: "The Loft" } });
    expect(again.json()).toMatchObject({ version: 2 });
    const whole = practiceWholeContract.parse((await get("/api/practices/oriel")).json());
    expect(whole.halls.find((it) => it.id === "loft")?.document.name).toBe("The Loft");
    const sheet = "/api/practices/oriel/classes/tuesday";
    const kept = await put(sheet, { action: "action-0004", from: 0, document: { ...tuesday, heads: 9.5 } });
    expect(kept.json()).toMatchObject({ id: "tuesday", version: 1, document: { heads: 9.5 } });
  });

  it("tell of keys that nothing reads", async () => {
    const { put } = await trialDemo();
    const document = { ...barn, gapps: { side: 1 } };
    const saved = await put("/api/practices/oriel/halls/loft", { action: "action-0002", from: 0, document });
    expect(saved.json()).toMatchObject({ unused: ["gapps"] });
  });

  it("are not kept when they are not sound, and every problem is told", async () => {
    const { put, get } = await trialDemo();
    const gaps = { side: -1, end: 0.3, wall: 0.3 };
    const document = { ...barn, name: "", gaps, hire: { perHour: "14.00", perSession: "30.00" } };
    const refused = await put("/api/practices/oriel/halls/loft", {
      action: "action-0002",
      from: 0,
      document,
    });
    expect(refused.statusCode).toBe(422);
    expect(codesOf(refused)).toEqual(["hall-name-empty", "gap-negative", "hire-price-both"]);
    const mix = { single: 0.5 };
    const sheet = await put("/api/practices/oriel/classes/tuesday", {
      action: "action-0003",
      from: 0,
      document: { ...tuesday, mix },
    });
    expect([sheet.statusCode, codesOf(sheet)]).toEqual([422, ["mix-not-one"]]);
    const whole = practiceWholeContract.parse((await get("/api/practices/oriel")).json());
    expect([whole.halls.length, whole.classes.length]).toEqual([3, 4]);
  });

  it("are in the money of the practice, which yen without decimals shows", async () => {
    const { post, put } = await trialServer();
    const document = { ...marlsford.practice, currency: "JPY", zone: "Asia/Tokyo" };
    await post("/api/practices", { action: "action-0001", id: "wren", start: "empty", document });
    const { currency, ...rest } = { ...barn };
    const hall = { ...rest, hire: { perHour: "14.50" } };
    const refused = await put("/api/practices/wren/halls/barn", {
      action: "action-0002",
      from: 0,
      document: hall,
    });
    expect(codesOf(refused)).toEqual(["money-too-fine"]);
    const own = await put("/api/practices/wren/halls/barn", {
      action: "action-0003",
      from: 0,
      document: { ...hall, currency },
    });
    expect(own.statusCode).toBe(200);
  });

  it("are removed, but not a hall that a class uses", async () => {
    const { del, get } = await trialDemo();
    const hall = "/api/practices/oriel/halls/tithe-barn-hall";
    const used = await del(hall, { action: "action-0002", from: 1 });
    expect([used.statusCode, codesOf(used)]).toEqual([409, ["hall-in-use"]]);
    expect(
      (await del("/api/practices/oriel/classes/tuesday-evening", { action: "action-0003", from: 1 })).json(),
    ).toEqual({ removed: "tuesday-evening" });
    expect((await del(hall, { action: "action-0004", from: 1 })).json()).toEqual({
      removed: "tithe-barn-hall",
    });
    expect((await del(hall, { action: "action-0004", from: 1 })).json()).toEqual({
      removed: "tithe-barn-hall",
    });
    const gone = await del(hall, { action: "action-0005", from: 1 });
    expect([gone.statusCode, codesOf(gone)]).toEqual([404, ["not-found"]]);
    const whole = practiceWholeContract.parse((await get("/api/practices/oriel")).json());
    expect([whole.halls.length, whole.classes.length]).toEqual([2, 3]);
  });

  it("of a practice that is not there are told as not found", async () => {
    const { get, put } = await trialServer();
    expect((await get("/api/practices/nobody")).statusCode).toBe(404);
    const saved = await put("/api/practices/nobody/halls/loft", {
      action: "action-0001",
      from: 0,
      document: barn,
    });
    expect([saved.statusCode, codesOf(saved)]).toEqual([404, ["not-found"]]);
  });

  it("need ids that can stand in an address", async () => {
    const { put } = await trialDemo();
    const saved = await put("/api/practices/oriel/halls/The%20Loft", {
      action: "a",
      from: 0,
      document: barn,
    });
    expect([saved.statusCode, codesOf(saved)]).toEqual([422, ["action-unreadable", "id-unreadable"]]);
  });
});
