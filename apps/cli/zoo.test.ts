import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openSqliteStore } from "#adapters/store";
import { openPractice } from "#app/actions";
import { problemsContract } from "#app/ports";
import { marlsford } from "#demo";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { inTerminal } from "./pretend-terminal.ts";

/** Ugly files, each named for its ugliness, with the code of the first problem it must meet. */
const zoo = {
  hall: {
    "a-list": "document-wrong-kind",
    "a-picture": "input-not-text",
    "a-sentence": "document-wrong-kind",
    "a-web-page": "input-not-json",
    "axis-in-words": "document-wrong-kind",
    "axis-not-a-number": "input-not-json",
    "axis-out-of-range": "axis-out-of-range",
    "comma-at-the-end": "input-not-json",
    "cut-off": "input-not-json",
    empty: "input-not-json",
    "fixture-crosses-itself": "outline-crosses-itself",
    "fixture-outside": "shape-outside",
    "fixture-without-label": "label-empty",
    "format-of-another-document": "document-choice",
    "gap-negative": "gap-negative",
    "gap-null": "document-wrong-kind",
    "gap-wider-than-the-hall": "gap-too-wide",
    "key-from-the-prototype": "document-missing",
    "mat-in-centimetres": "mat-larger-than-floor",
    "mat-larger-than-floor": "mat-larger-than-floor",
    "mat-missing": "document-missing",
    "mat-of-no-width": "mat-size",
    "name-empty": "hall-name-empty",
    "name-missing": "document-missing",
    "not-a-number": "input-not-json",
    null: "document-wrong-kind",
    "only-spaces": "input-not-json",
    "outline-all-on-one-line": "outline-flat",
    "outline-as-text": "document-wrong-kind",
    "outline-beyond-counting": "document-not-a-number",
    "outline-closed-again": "outline-repeated-corner",
    "outline-corner-in-quotes": "document-wrong-kind",
    "outline-corner-with-three-numbers": "document-length",
    "outline-crosses-itself": "outline-crosses-itself",
    "outline-far-away": "floor-far-away",
    "outline-in-millimetres": "floor-too-large",
    "outline-of-two-corners": "outline-corners",
    "outline-the-size-of-a-stamp": "floor-too-small",
    "outline-with-a-corner-twice": "outline-repeated-corner",
    "outline-without-corners": "not-drawn",
    "posted-capacity-a-fraction": "posted-capacity",
    "posted-capacity-negative": "posted-capacity",
    "teacher-outside": "shape-outside",
    "ten-thousand-brackets": "input-not-json",
    "ten-thousand-brackets-closed": "document-length",
    "utf-16": "input-not-text",
  },
  evening: {
    "bands-twice-the-same": "hire-band-twice",
    "currency-a-sign": "currency-unknown",
    "currency-missing": "document-missing",
    "currency-unknown": "currency-unknown",
    "cut-off": "input-not-json",
    "date-the-30th-of-february": "date-unreadable",
    "date-the-other-way-round": "date-unreadable",
    "factor-negative": "hire-factor-absurd",
    "heads-beyond-counting": "document-not-a-number",
    "heads-negative": "heads-out-of-range",
    "heating-in-a-thirteenth-month": "hire-heating-month",
    "hire-by-hour-and-by-session": "hire-price-both",
    "hire-missing": "document-missing",
    "hire-without-a-price": "hire-price-missing",
    "increment-of-nothing": "minutes-out-of-range",
    "minutes-a-fraction": "minutes-not-whole",
    "minutes-in-words": "document-wrong-kind",
    "minutes-negative": "minutes-out-of-range",
    "mix-adds-to-less-than-one": "mix-not-one",
    "mix-adds-to-more-than-one": "mix-not-one",
    "mix-empty": "mix-not-one",
    "mix-in-per-cent": "mix-share-out-of-range",
    "mix-of-a-pass-that-is-not-sold": "price-missing",
    "mix-of-nobody-we-know": "mix-key-unknown",
    "mix-share-negative": "mix-share-out-of-range",
    "money-as-a-number": "document-wrong-kind",
    "money-in-the-billions": "money-absurd",
    "money-negative": "money-negative",
    "money-with-a-comma": "money-unreadable",
    "money-with-a-sign": "money-unreadable",
    "money-with-thirds-of-a-penny": "money-too-fine",
    "pass-of-no-classes": "pass-size",
    "pass-twice": "pass-twice",
    "prices-missing": "document-missing",
  },
  pass: {
    "attendance-beyond-counting": "document-not-a-number",
    "attendance-in-per-cent": "attendance-out-of-range",
    "attendance-in-words": "document-wrong-kind",
    "attendance-missing": "document-missing",
    "attendance-negative": "attendance-out-of-range",
    "attendance-nought": "attendance-out-of-range",
    "attendance-one": "attendance-out-of-range",
    "attendance-so-rare-that-it-never-ends": "pass-too-slow",
    "calendar-closed-for-ever": "use-by-out-of-sight",
    "calendar-the-30th-of-february": "date-unreadable",
    "calendar-weekday-eight": "weekday-unknown",
    "classes-a-fraction": "pass-size",
    "classes-a-million": "pass-size",
    "classes-nought": "pass-size",
    "closure-backwards": "closure-backwards",
    "confidence-nought": "confidence-out-of-range",
    "confidence-one": "confidence-out-of-range",
    "cut-off": "input-not-json",
    "live-more-left-than-it-held": "pass-left-out-of-range",
    "live-price-as-a-number": "document-wrong-kind",
    "live-without-a-currency": "live-currency-missing",
    "use-by-of-no-weeks": "use-by-out-of-range",
  },
  compare: {
    "by-the-moon": "document-choice",
    "capacity-a-fraction": "capacity-out-of-range",
    "capacity-nought": "capacity-zero",
    "currency-unknown": "currency-unknown",
    "dispersion-less-than-chance": "dispersion-out-of-range",
    "hall-in-dollars": "currencies-mixed",
    "halls-as-a-name": "document-wrong-kind",
    "halls-missing": "document-missing",
    "halls-none": "halls-missing",
    "heads-negative": "heads-out-of-range",
    "hire-by-hour-and-by-session": "hire-price-both",
    "hire-without-a-price": "hire-price-missing",
    "minutes-a-fraction": "minutes-not-whole",
    "mix-adds-to-less-than-one": "mix-not-one",
    "never-free": "halls-none-left",
    "free-hours-backwards": "free-hours-backwards",
    "slot-at-noon-in-words": "time-unreadable",
    "slot-over-midnight": "class-over-midnight",
    "slot-on-the-eighth-day": "weekday-unknown",
    "slots-none": "slots-missing",
    "travel-negative": "minutes-out-of-range",
    "year-backwards": "span-backwards",
    "year-of-a-hundred-years": "span-too-long",
  },
  price: {
    "average-below-the-floor": "average-below-floor",
    "belief-of-a-free-class": "belief-price-zero",
    "belief-of-nobody": "belief-heads-out-of-range",
    "capacity-nought": "capacity-zero",
    "cost-as-a-number": "document-wrong-kind",
    "cost-missing": "document-missing",
    "cost-negative": "money-negative",
    "course-of-half-a-session": "course-size",
    "currency-a-sign": "currency-unknown",
    "curve-level": "curve-slopes-upward",
    "curve-sloping-upward": "curve-slopes-upward",
    "curve-through-one-price": "curve-one-point",
    "deepest-a-hundred-per-cent": "share-out-of-range",
    "dispersion-a-hundred": "dispersion-out-of-range",
    "heads-beyond-counting": "heads-out-of-range",
    "looked-at-backwards": "price-range-backwards",
    "mix-adds-to-more-than-one": "mix-not-one",
    "mix-of-a-course-that-is-not-sold": "price-missing",
    "sessions-a-thousand": "sessions-out-of-range",
    "studio-of-no-minutes": "minutes-out-of-range",
    "studio-pay-of-no-kind": "document-choice",
    "studio-share-of-two": "share-out-of-range",
    "studio-without-own-minutes": "door-to-door-missing",
    "survey-in-dollars": "currencies-mixed",
    "survey-in-prose": "survey-line-unreadable",
    "survey-of-a-negative-crowd": "survey-heads-out-of-range",
    "tax-takes-all": "share-out-of-range",
  },
  opening: {
    "costs-negative": "money-negative",
    "costs-without-a-currency": "currency-missing",
    "cut-off": "input-not-json",
    "mats-a-fraction": "count-not-whole",
    "mats-a-million": "count-out-of-range",
    "mats-negative": "count-out-of-range",
    "more-came-again-than-came": "returned-more-than-came",
    "more-came-than-accepted": "came-more-than-accepted",
    "pairs-in-words": "document-wrong-kind",
    "pairs-one-and-a-half": "count-not-whole",
    "posted-for-the-teacher-only": "room-none",
    "risk-in-per-cent": "risk-out-of-range",
    "risk-nought": "risk-out-of-range",
    "turn-up-in-per-cent": "share-out-of-range",
    "turn-up-in-words": "document-wrong-kind",
    "turn-up-missing": "document-missing",
  },
  demand: {
    "all-cancelled": "heads-missing",
    "cut-off": "input-not-json",
    "date-the-other-way-round": "date-unreadable",
    "heads-a-fraction": "count-not-whole",
    "heads-in-words": "document-wrong-kind",
    "heads-missing": "heads-missing",
    "heads-negative": "count-out-of-range",
    "heads-none": "heads-missing",
    "heads-of-twelve-years": "sessions-too-many",
    "heads-over-the-places": "heads-over-capacity",
    "newcomers-over-heads": "newcomers-over-heads",
    "places-missing": "capacity-unknown",
    "places-nought": "count-out-of-range",
    "places-ten-thousand": "count-out-of-range",
    "session-twice": "session-twice",
    "session-without-places": "capacity-unknown",
    "sessions-of-twelve-years": "sessions-too-many",
    "waiting-for-another-number-of-sessions": "lists-differ",
  },
  outlook: {
    "alike-nought": "alike-out-of-range",
    "attendance-in-per-cent": "share-certain",
    "bigger-hall-that-is-smaller": "bigger-hall-smaller",
    "cover-without-money": "evening-without-money",
    "cut-off": "input-not-json",
    "date-the-30th-of-february": "date-unreadable",
    "dates-none": "ahead-none",
    "everybody-stays": "share-certain",
    "heads-a-fraction": "count-not-whole",
    "heads-negative": "count-out-of-range",
    "heads-over-the-places": "heads-over-capacity",
    "money-without-a-currency": "currency-missing",
    "newcomers-negative": "mean-out-of-range",
    "notice-of-minus-a-day": "count-out-of-range",
    "notice-without-money": "notice-without-money",
    "places-missing": "document-missing",
    "places-nought": "count-out-of-range",
    "places-ten-thousand": "count-out-of-range",
    "season-of-four-quarters": "season-not-twelve",
    "season-of-noughts": "mean-out-of-range",
    "session-twice": "session-twice",
    "weekday-nought": "weekday-unknown",
    "year-backwards": "year-backwards",
    "year-closed": "ahead-none",
    "year-of-a-century": "ahead-too-long",
    "yield-negative": "money-negative",
  },
  class: {
    "closure-backwards": "closure-backwards",
    "costs-missing": "document-missing",
    "heads-in-words": "document-wrong-kind",
    "mix-adds-to-less-than-one": "mix-not-one",
    "name-empty": "class-name-missing",
    "own-cap-negative": "places-out-of-range",
    "start-at-noon-in-words": "time-unreadable",
    "weekday-nought": "class-weekday",
    "year-that-ends-before-it-begins": "year-backwards",
  },
} as const;

const folder = join(import.meta.dirname, "zoo");
const commands = {
  hall: ["fit"],
  evening: ["evening"],
  pass: ["pass"],
  compare: ["compare"],
  price: ["price"],
  opening: ["opening"],
  demand: ["demand"],
  outlook: ["outlook"],
  class: ["import", "class"],
} as const;
const data = join(mkdtempSync(join(tmpdir(), "hallful-")), "practice.sqlite");
const environment = { HALLFUL_DATA: data };

beforeAll(async () => {
  const store = await openSqliteStore({ file: data, now: () => "2026-11-25T09:45:00.000Z" });
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  await openPractice(store.value, { action: "action-open", id: "oriel", start: marlsford });
  await store.value.close();
});
afterAll(() => rmSync(join(data, ".."), { recursive: true }));

const ugly = [
  "hall",
  "evening",
  "pass",
  "compare",
  "price",
  "opening",
  "demand",
  "outlook",
  "class",
] as const;

describe.each(ugly)("every ugly %s", (kind) => {
  it("is in the list, and the other way round", () => {
    const files = readdirSync(join(folder, kind)).sort();
    expect(files).toEqual(
      Object.keys(zoo[kind])
        .map((name) => `${name}.json`)
        .sort(),
    );
  });

  it.each(Object.entries(zoo[kind]))("%s is told as %s", async (name, code) => {
    const file = `${kind}/${name}.json`;
    const seen = await inTerminal([...commands[kind], file], { folder, environment });
    expect(seen).toMatchObject({ code: 2, out: "" });
    expect(seen.err).toMatch(/^[^\n]+\. [^\n]+\. \[[a-z-]+\]\n/);
    expect(seen.err).not.toMatch(/\bat .*\.(ts|m?js):\d+|node:internal|Error:/);
    expect(seen.err.split("\n")[0]).toContain(`[${code}]`);
  });

  it.each(Object.keys(zoo[kind]))("%s is told the same way from standard input, as JSON", async (name) => {
    const input = readFileSync(join(folder, kind, `${name}.json`));
    const seen = await inTerminal([...commands[kind], "-", "--json"], { input, environment });
    const { problems } = problemsContract.parse(JSON.parse(seen.err));
    expect(problems[0]?.code).toBe(Object.entries(zoo[kind]).find(([it]) => it === name)?.[1]);
    expect(problems.every((it) => it.says.endsWith(".") && /[.?]$/.test(it.next))).toBe(true);
  });
});
