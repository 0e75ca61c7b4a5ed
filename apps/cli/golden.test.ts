import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { inTerminal } from "./pretend-terminal.ts";

/** What people see, as files that a person can read through; vitest -u writes them anew. */
const screens = {
  "list-of-commands": [],
  "help-fit": ["help", "fit"],
  "help-import": ["import", "--help"],
  "fit-loft": ["fit", "loft.json"],
  "fit-loft-for-five": ["fit", "loft-for-five.json", "--arrangement", "lines"],
  "fit-loft-json": ["fit", "loft.json", "--json"],
  "fit-loft-staggered": ["fit", "loft.json", "--arrangement", "staggered"],
  "fit-loft-round": ["fit", "loft.json", "--arrangement", "round"],
  // a floor on which the search for the most starts with a plan that is proven at once, so that the screen stays
  "fit-cellar-most": ["fit", "cellar.json", "--arrangement", "most"],
  "fit-cellar-most-json": ["fit", "cellar.json", "--arrangement", "most", "--json"],
  "fit-mission-room-facing": ["fit", "mission-room.json", "--arrangement", "facing"],
  "fit-mission-room-round-json": ["fit", "mission-room.json", "--arrangement", "round", "--json"],
  "fit-cellar-five": ["fit", "cellar.json", "--arrangement", "lines", "--mats", "5"],
  "fit-cellar-too-many": ["fit", "cellar.json", "--arrangement", "facing", "--mats", "9"],
  "fit-cellar-all": ["fit", "cellar.json", "--arrangement", "all"],
  "fit-loft-with-typos": ["fit", "loft-with-typos.json", "--mats-owned", "6"],
  "fit-loft-gone-wrong": ["fit", "loft-gone-wrong.json"],
  "sheet-loft": ["sheet", "loft.json"],
  "sheet-loft-in-feet": ["sheet", "loft.json", "--units", "feet", "--own-cap", "6"],
  "sheet-loft-json": ["sheet", "loft.json", "--json"],
  "sheet-loft-gone-wrong": ["sheet", "loft-gone-wrong.json", "--out", "never.pdf"],
  "help-sheet": ["help", "sheet"],
  "evening-tuesday": ["evening", "tuesday.json"],
  "evening-tuesday-json": ["evening", "tuesday.json", "--json"],
  "evening-nobody-pays": ["evening", "nobody-pays.json"],
  "evening-tuesday-gone-wrong": ["evening", "tuesday-gone-wrong.json"],
  "pass-of-ten": ["pass", "pass-of-ten.json"],
  "pass-of-ten-json": ["pass", "pass-of-ten.json", "--json"],
  "pass-with-calendar": ["pass", "pass-with-calendar.json"],
  "pass-never-missed": ["pass", "pass-never-missed.json"],
  "compare-halls": ["compare", "halls.json"],
  "compare-halls-json": ["compare", "halls.json", "--json"],
  "compare-halls-gone-wrong": ["compare", "halls-gone-wrong.json"],
  "price-tuesday": ["price", "prices.json"],
  "price-tuesday-json": ["price", "prices.json", "--json"],
  "price-ladder-that-does-not-hold": ["price", "ladder-that-does-not-hold.json"],
  "price-gone-wrong": ["price", "prices-gone-wrong.json"],
  "opening-barn": ["opening", "opening-barn.json"],
  "opening-barn-json": ["opening", "opening-barn.json", "--json"],
  "opening-after": ["opening", "opening-after.json"],
  "opening-gone-wrong": ["opening", "opening-gone-wrong.json"],
  "demand-quay-street": ["demand", "demand-quay-street.json"],
  "demand-quay-street-json": ["demand", "demand-quay-street.json", "--json"],
  "demand-always-full": ["demand", "demand-always-full.json"],
  "demand-gone-wrong": ["demand", "demand-gone-wrong.json"],
  "outlook-thursday": ["outlook", "outlook-thursday.json"],
  "outlook-thursday-json": ["outlook", "outlook-thursday.json", "--json"],
  "outlook-guesses-alone": ["outlook", "outlook-guesses-alone.json"],
  "outlook-thin": ["outlook", "outlook-thin.json"],
  "outlook-gone-wrong": ["outlook", "outlook-gone-wrong.json"],
  "week-marlsford": ["week", "week-marlsford.json"],
  "week-marlsford-json": ["week", "week-marlsford.json", "--json"],
  "week-gone-wrong": ["week", "week-gone-wrong.json"],
  "year-marlsford": ["year", "year-marlsford.json", "--hall-calendar", "tithe-barn=tithe-barn.ics"],
  "year-marlsford-json": ["year", "year-marlsford.json", "--json"],
  "year-cedar-fork": ["year", "year-cedar-fork.json"],
  "year-gone-wrong": ["year", "year-gone-wrong.json", "--picture", "never.svg"],
  "help-year": ["help", "year"],
  "help-price": ["help", "price"],
  "still-coming-tuesday": ["still-coming", "tuesday-visits.csv", "--model", "bg-bb"],
  "still-coming-closed-weeks": [
    "still-coming",
    "tuesday-visits.csv",
    "--closed",
    "2026-10-26..2026-10-30,2026-12-19..2027-01-03",
  ],
  "still-coming-renewals": [
    "still-coming",
    "tuesday-visits.csv",
    "--model",
    "beta-geometric",
    "--every",
    "month",
  ],
  "still-coming-few-json": ["still-coming", "two-people.csv", "--json"],
  "still-coming-gone-wrong": [
    "still-coming",
    "tuesday-visits.csv",
    "--model",
    "beta",
    "--not-seen-for",
    "4",
    "--closed",
    "August",
  ],
  "help-still-coming": ["help", "still-coming"],
  "sessions-thursday": ["sessions", "thursday-sessions.csv"],
  "sessions-thursday-json": ["sessions", "thursday-sessions.csv", "--places", "14", "--json"],
} as const;

describe("the screen of", () => {
  it.each(Object.entries(screens))("%s", async (name, words) => {
    const folder = join(import.meta.dirname, "golden");
    const { code, out, err } = await inTerminal(words, { folder });
    const told = err === "" ? "" : `\n[standard error]\n${err}`;
    const screen = `$ hallful ${words.join(" ")}\n${out}${told}\n[exit ${code}]\n`;
    await expect(screen).toMatchFileSnapshot(join(folder, `${name}.txt`));
  });
});
