import { yearPlanSchema } from "#core/year";
import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { codesOf, trialDemo } from "./trial-server.ts";

const SECRET = "0123456789abcdefghijklmnop";

/** The demo with an address for its calendar, and its year changed as told. */
async function withFeed(change: object = {}) {
  const server = await trialDemo();
  const plan = yearPlanSchema.parse({ holidays: { region: "GB-ENG" }, feed: SECRET, ...change });
  const saved = await server.put("/api/practices/oriel/plans/year", {
    action: "action-0002",
    from: 1,
    document: plan,
  });
  expect(saved.statusCode).toBe(200);
  return server;
}

function events(text: string) {
  return new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((it) => new ICAL.Event(it));
}

const starts = (text: string, uid: string): readonly string[] =>
  events(text)
    .filter((it) => it.uid === uid)
    .map((it) => it.startDate.toJSDate().toISOString());

describe("the calendar by its address", () => {
  it("has every session of the year, under the same ids each time", async () => {
    const { get } = await withFeed();
    const first = await get(`/calendar/${SECRET}.ics`);
    expect([first.statusCode, first.headers["content-type"]]).toEqual([200, "text/calendar; charset=utf-8"]);
    const all = events(first.body);
    expect(all.length).toBeGreaterThan(100);
    expect(new Set(all.map((it) => it.uid)).size).toBe(all.length);
    expect((await get(`/calendar/${SECRET}.ics`)).body).toBe(first.body);
  });

  it("moves a session that was moved, under its id, and tells nothing of why", async () => {
    const move = { kind: "move", class: "tuesday-evening", date: "2026-11-24", to: "2026-11-26", times: 1 };
    const timeOff = { days: [{ from: "2026-12-01", until: "2026-12-31", why: "operation" }], text: "" };
    const { get } = await withFeed({ changes: [move], timeOff });
    const { body } = await get(`/calendar/${SECRET}.ics`);
    // Thursday in place of Tuesday; London has winter time
    expect(starts(body, "20261124-tuesday-evening@oriel").map((it) => it.slice(0, 10))).toEqual([
      "2026-11-26",
    ]);
    expect(starts(body, "20261208-tuesday-evening@oriel")).toEqual([]);
    expect(body).not.toContain("operation");
  });

  it("is nowhere without its secret, nor when it was taken back", async () => {
    const { get, put } = await withFeed();
    const none = await get("/calendar/00000000000000000000000000.ics");
    expect([none.statusCode, codesOf(none)]).toEqual([404, ["feed-unknown"]]);
    expect(codesOf(await get("/calendar/null.ics"))).toEqual(["feed-unknown"]);
    const document = yearPlanSchema.parse({ holidays: { region: "GB-ENG" }, feed: null });
    await put("/api/practices/oriel/plans/year", { action: "action-0003", from: 2, document });
    expect(codesOf(await get(`/calendar/${SECRET}.ics`))).toEqual(["feed-unknown"]);
  });
});
