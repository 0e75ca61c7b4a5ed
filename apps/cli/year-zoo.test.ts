import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ICAL from "ical.js";
import { afterAll, describe, expect, it } from "vitest";
import { inTerminal } from "./pretend-terminal.ts";

/** Ugly years, each named for its ugliness, with the code of the first problem it must meet. */
const years = {
  "a-list": "document-wrong-kind",
  backwards: "span-backwards",
  "booked-at-noon-in-words": "booking-unreadable",
  "booked-backwards": "booking-backwards",
  "change-of-no-kind": "document-choice",
  "change-of-nobody": "class-unknown",
  "change-twice": "change-twice",
  "class-in-no-hall": "hall-unknown",
  "class-of-no-weekday": "repeat-missing",
  "class-of-two-days": "class-longer-than-a-day",
  "class-twice": "id-twice",
  "classes-of-a-college": "too-many-classes",
  "closed-backwards": "span-backwards",
  "cut-off": "input-not-json",
  "election-in-words": "date-unreadable",
  "hall-in-a-zone-of-nowhere": "zone-unknown",
  "leap-day-of-no-leap-year": "date-unreadable",
  "list-as-long-as-a-book": "list-too-long",
  "minutes-in-words": "document-wrong-kind",
  "money-without-a-currency": "document-missing",
  "neither-dates-nor-money": "year-empty",
  "of-three-years": "year-too-long",
  "region-of-no-place": "document-choice",
  "rests-of-nobody": "class-unknown",
  "rule-every-second": "rule-too-often",
  "rule-in-words": "rule-unreadable",
  "sick-more-than-ever": "share-out-of-range",
  "start-at-half-past-24": "time-unreadable",
  "weekday-and-rule": "repeat-twice",
  "weekday-nought": "class-weekday",
  "zone-of-nowhere": "zone-unknown",
} as const;

const calendars = {
  "a-spreadsheet": "calendar-not-text",
  "a-web-page": "calendar-not-one",
  empty: "calendar-empty",
} as const;

const zoo = join(import.meta.dirname, "zoo");
const golden = join(import.meta.dirname, "golden");

const names = (kind: string): readonly string[] =>
  readdirSync(join(zoo, kind)).map((it) => it.replace(/\.\w+$/, ""));
const option = (file: string): string => `tithe-barn=${file}`;
const told = async (value: string) =>
  inTerminal(["year", "year-marlsford.json", "--hall-calendar", value], { folder: golden });

const inBank = async (input: unknown): Promise<number> => {
  const seen = await inTerminal(["year", "-", "--json"], { input: JSON.stringify(input) });
  return Number(JSON.parse(seen.out).money.months.at(-1).end.middle);
};

it("every file of the zoo is in the list, and the other way round", () => {
  expect(names("year").toSorted()).toEqual(Object.keys(years).toSorted());
  expect(names("hall-calendar").toSorted()).toEqual(Object.keys(calendars).toSorted());
});

describe("every ugly year", () => {
  it.each(Object.entries(years))("%s is told as %s", async (name, code) => {
    const seen = await inTerminal(["year", `${name}.json`], { folder: join(zoo, "year") });
    expect(seen).toMatchObject({ code: 2, out: "" });
    expect(seen.err.split("\n")[0]).toMatch(/^[^\n]+[.?] \[[a-z-]+\]$/);
    expect(seen.err.split("\n")[0]).toContain(`[${code}]`);
    expect(seen.err).not.toMatch(/node:internal|Error:/);
  });
});

describe("every ugly calendar of a hall", () => {
  it.each(Object.entries(calendars))("%s is told as %s", async (name, code) => {
    const seen = await told(option(join(zoo, "hall-calendar", `${name}.ics`)));
    expect(seen).toMatchObject({ code: 2, out: "" });
    expect(seen.err).toContain(`[${code}]`);
  });

  it.each([
    ["mill=tithe-barn.ics", "hall-unknown"],
    ["tithe-barn.ics", "hall-calendar-unreadable"],
    ["tithe-barn=never.ics", "input-missing"],
  ])("and so is what names none, %s, as %s", async (value, code) => {
    expect((await told(value)).err).toContain(`[${code}]`);
  });
});

describe("what a year writes", () => {
  const folder = mkdtempSync(join(tmpdir(), "hallful-year-"));
  afterAll(() => rmSync(folder, { recursive: true }));
  const text = readFileSync(join(golden, "year-marlsford.json"), "utf8");
  writeFileSync(join(folder, "year.json"), text);
  const write = async (...more: readonly string[]) => inTerminal(["year", "year.json", ...more], { folder });

  it("is a picture and a calendar that a second library reads, and neither tells of her time off", async () => {
    const seen = await write("--picture", "year.svg", "--calendar-out", "year.ics");
    expect([seen.code, seen.err]).toEqual([0, ""]);
    const picture = readFileSync(join(folder, "year.svg"), "utf8");
    expect(picture).toMatch(/^<svg [^>]*viewBox="0 0 [\d.]+ [\d.]+"/);
    const calendar = readFileSync(join(folder, "year.ics"), "utf8");
    expect(calendar).not.toMatch(/by the sea|Christmas|training/);
    const events = new ICAL.Component(ICAL.parse(calendar)).getAllSubcomponents("vevent");
    // 44 Tuesdays, 38 Thursdays, 11 Saturdays, and the Tuesday that she cancelled
    expect(events).toHaveLength(94);
    expect(new Set(events.map((it) => it.getFirstPropertyValue("uid"))).size).toBe(94);
  });

  it("stays when a file is there already, unless it may be replaced", async () => {
    expect((await write("--calendar-out", "year.ics")).err).toContain("(at --calendar-out)");
    expect((await write("--calendar-out", "year.ics", "--replace")).code).toBe(0);
  });

  it("needs a calendar", async () => {
    const moves = [{ name: "insurance", way: "out", amount: "85.00", on: "2026-09-15" }];
    const money = { currency: "GBP", from: "2026-09-01", moves };
    writeFileSync(join(folder, "money.json"), JSON.stringify({ money }));
    const seen = await inTerminal(["year", "money.json", "--picture", "no.svg"], { folder });
    expect(seen.err).toContain("[year-without-calendar]");
  });
});

it("the money of a class takes its dates from the calendar: without Tuesdays it has no takings of them", async () => {
  const file = JSON.parse(readFileSync(join(golden, "year-marlsford.json"), "utf8"));
  const closed = structuredClone(file);
  closed.calendar.halls[0].closed.days = [{ from: "2026-09-08", until: "2026-09-08", why: "leak" }];
  // one Tuesday less: takings of 92.00 and a hall of 31.00
  expect((await inBank(file)) - (await inBank(closed))).toBe(61);
});
