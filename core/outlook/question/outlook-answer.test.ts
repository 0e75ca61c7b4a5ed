import { expect, test } from "vitest";
import { outlookAnswer } from "./outlook-answer.ts";
import type { OutlookDocumentInput } from "./outlook-document.ts";

function answered(input: OutlookDocumentInput) {
  const found = outlookAnswer(input);
  if (!found.ok) throw new Error(found.problems.map(({ code, place }) => `${code} at ${place}`).join());
  return found.value.json;
}

function problemsOf(input: unknown): readonly string[] {
  const found = outlookAnswer(input);
  return found.ok ? [] : found.problems.map(({ code, place }) => `${code} at ${place}`);
}

/** So many heads a week from the second Tuesday of a September. */
function weeks(...heads: readonly number[]): NonNullable<OutlookDocumentInput["happened"]> {
  const days = ["09-08", "09-15", "09-22", "09-29", "10-06", "10-13", "10-20", "11-03", "11-10", "11-17"];
  return heads.map((count, at) => ({ date: `2026-${days[at]}`, heads: count }));
}

const paid: OutlookDocumentInput = {
  capacity: 14,
  currency: "GBP",
  money: { yield: "7.90", perHead: "0.20", cost: "31.00" },
  sessionsAhead: 20,
};
const asked: OutlookDocumentInput = { ...paid, notice: { exitCost: "25.00" } };

test("OUTLOOK-60 a class of guesses alone: forty ordinary weeks, wide bands, and no advice", () => {
  const { sessions, together, advice, sentences, plateau, sessionsHeld } = answered({ capacity: 14 });
  expect({ ahead: sessions.length, advice, sessionsHeld }).toEqual({
    ahead: 40,
    advice: null,
    sessionsHeld: 0,
  });
  // one newcomer comes to the first session
  expect(sessions[0]?.heads.mean).toBeCloseTo(1, 1);
  expect(together.heads.high).toBeGreaterThan(3 * together.heads.low);
  expect(plateau.low).toBeLessThan(plateau.mean);
  expect(sentences).toContain(
    "Nothing has happened yet: all of it rests on guesses, which weigh as much as four weeks.",
  );
});

test("OUTLOOK-61 what people leave less what sessions cost is what they leave together", () => {
  const { together, breakEven, sessions, working } = answered(paid);
  // 7.70 a head: 31.00 ÷ 7.70 = 4.03
  expect(breakEven).toBe(5);
  const leaves = together.heads.mean * 7.7 - 20 * 31;
  expect(Number(together.contribution?.mean)).toBeCloseTo(leaves, 1);
  expect(Number(together.takings?.mean)).toBeCloseTo(together.heads.mean * 7.9, 1);
  const each = sessions.reduce((sum, { contribution }) => sum + Number(contribution), 0);
  expect(each).toBeCloseTo(leaves, 0);
  expect(working.find(({ label }) => label === "Together")?.amount).toBe(together.contribution?.mean);
});

test("OUTLOOK-50 OUTLOOK-61 three sessions are too few, and say so", () => {
  const { advice, firm, sentences } = answered({ ...asked, happened: weeks(4, 5, 3) });
  expect({ advice, firm }).toEqual({ advice: "too early", firm: false });
  expect(sentences[0]).toBe("Too early to say: 3 sessions of at least 4. Give it time.");
});

test("OUTLOOK-51 OUTLOOK-52 ten weeks of eight people are kept, ten of nobody are closed, firmly", () => {
  const good = answered({ ...asked, happened: weeks(5, 6, 6, 7, 8, 7, 8, 9, 8, 9) });
  expect({ advice: good.advice, firm: good.firm }).toEqual({ advice: "keep", firm: true });
  expect(good.sentences[0]).toBe("Keep the class.");
  const empty = answered({ ...asked, happened: weeks(1, 0, 0, 0, 0, 0, 0, 0, 0, 0) });
  expect({ advice: empty.advice, firm: empty.firm }).toEqual({ advice: "close", firm: true });
  expect(empty.plateauChance).toBeLessThan(0.25);
  const early = answered({ ...asked, happened: weeks(0, 0, 0, 0, 0) });
  expect(early.firm).toBe(false);
  expect(early.sentences[2]).toBe("That is early: 5 sessions of 10.");
});

test("OUTLOOK-52 a hall that is too small or a price that is too low is told as that", () => {
  const happened = weeks(5, 6, 6, 7, 8, 7, 8, 9, 8, 9);
  // 130.00 ÷ 7.70 = 16.9 people on 14 places
  const small = answered({ ...asked, happened, money: { yield: "7.90", perHead: "0.20", cost: "130.00" } });
  expect(small.advice).toBe("change");
  expect(small.sentences[1]).toMatch(/^It needs 17 people and there are 14 places, and /);
  const low = answered({ ...asked, happened, money: { yield: "0.20", perHead: "0.20", cost: "31.00" } });
  expect(low.advice).toBe("change");
  expect(low.sentences[1]).toMatch(/^No number of people pays for a session, and /);
});

test("OUTLOOK-62 the term after the notice is counted from the day on which it takes effect", () => {
  const { notices } = answered({
    ...asked,
    happened: weeks(5, 6, 6, 7),
    // Tuesdays; notice on 6 October takes effect on 3 November: 3 and 10 November are the term of two
    dates: ["2026-10-06", "2026-10-13", "2026-10-20", "2026-11-03", "2026-11-10", "2026-11-17"],
    notice: {
      days: 28,
      dates: ["2026-09-01", "2026-10-06", "2026-10-20"],
      term: 2,
      otherUse: "10.00",
      exitCost: "25.00",
    },
  });
  // the first day is over; after the last, 17 November alone is left
  expect(notices.map(({ date, sessions, ending }) => ({ date, sessions, ending }))).toEqual([
    { date: "2026-10-06", sessions: 2, ending: "-5.00" },
    { date: "2026-10-20", sessions: 1, ending: "-15.00" },
  ]);
});

function fiveHeadsIn(month: string): NonNullable<OutlookDocumentInput["happened"]> {
  return ["04", "11", "18", "25"].map((day) => ({ date: `2026-${month}-${day}`, heads: 5 }));
}

test("OUTLOOK-68 sessions that are recorded are no longer ahead", () => {
  const happened = weeks(5, 6);
  const { sessions } = answered({
    capacity: 14,
    happened,
    dates: ["2026-09-08", "2026-09-15", "2026-09-22"],
  });
  expect(sessions.map(({ date }) => date)).toEqual(["2026-09-22"]);
  expect(problemsOf({ capacity: 14, happened, dates: ["2026-09-15"] })).toEqual(["ahead-none at dates"]);
});

test("OUTLOOK-63 August is not failure: the same heads in August promise more than in October", () => {
  const august = answered({ capacity: 14, happened: fiveHeadsIn("08"), startedBefore: true, onRoll: 8 });
  const october = answered({ capacity: 14, happened: fiveHeadsIn("10"), startedBefore: true, onRoll: 8 });
  expect(august.plateau.mean).toBeGreaterThan(1.2 * october.plateau.mean);
});

test("OUTLOOK-43 an opening ahead brings its people, of whom some stay; with a record it is of no use", () => {
  const [plain, opened] = [undefined, 9].map((opening) =>
    answered({ capacity: 30, sessionsAhead: 12, opening, roll: { luck: 0 } }),
  );
  const meanOf = (json: typeof plain, at: number): number => json?.sessions[at]?.heads.mean ?? 0;
  // nine instead of one; a week later 8 more of them have stayed with 0.4 × 0.98 and come with 0.65, and 0.15 × 9 echo
  expect(meanOf(opened, 0)).toBeCloseTo(9, 1);
  expect(meanOf(opened, 1) - meanOf(plain, 1)).toBeCloseTo(8 * 0.4 * 0.98 * 0.65 + 1.35, 0);
  expect(opened?.opensTo).toBe(9);
  expect(opened?.sentences).toContain(
    "The first session ahead is the opening, to which about 9 are expected.",
  );
  // the ordinary week after two years is the same
  expect(Math.abs((opened?.plateau.mean ?? 0) / (plain?.plateau.mean ?? 1) - 1)).toBeLessThan(0.1);
  const begun = answered({ capacity: 30, opening: 9, happened: weeks(4, 3) });
  expect([begun.opensTo, begun.opening]).toEqual([null, 4]);
  expect(problemsOf({ capacity: 30, opening: -1 })).toEqual(["mean-out-of-range at opening"]);
});

test("OUTLOOK-39 a luck of nought is none, and the least of it is answered", () => {
  const happened = weeks(5, 6, 4, 7, 5, 6);
  const even = answered({ ...asked, happened, roll: { luck: 0, echo: 0 } });
  expect(even.luck).toEqual({ mean: 0, low: 0, high: 0 });
  expect(even.working.some(({ label }) => /^(Luck|Brought)/.test(label))).toBe(false);
  const hardly = answered({ ...asked, happened, roll: { luck: 1e-9, echo: 1e-9 } });
  expect(Math.abs(hardly.plateau.mean / even.plateau.mean - 1)).toBeLessThan(0.1);
});

test("OUTLOOK-64 known regulars come from the first session on", () => {
  const { sessions } = answered({ capacity: 30, regulars: 10 });
  // 10 × 0.65 and one newcomer
  expect(sessions[0]?.heads.mean).toBeCloseTo(7.5, 0);
});

test("OUTLOOK-64 a class that ran before its first record is not taken for a new one", () => {
  const happened = weeks(9, 10, 9, 10, 9);
  const fresh = answered({ capacity: 30, happened });
  const running = answered({ capacity: 30, happened, startedBefore: true });
  expect([fresh.opening, running.opening]).toEqual([9, null]);
  // nearly all of the nine of an opening would have to have stayed
  expect(fresh.rates.stays.mean).toBeGreaterThan(1.2 * running.rates.stays.mean);
});

test("OUTLOOK-37 the opening of a new class is told, and its people are not taken for an ordinary week", () => {
  const happened = weeks(12, 4, 4, 3, 4, 3, 4, 3);
  const { sentences, opening, rates } = answered({ capacity: 30, happened });
  expect(opening).toBe(12);
  expect(sentences).toContain(
    "The first session is taken as the opening: its 12 people may stay, but say nothing of how many are new in an ordinary week.",
  );
  expect(rates.newcomers.mean).toBeLessThan(1.2);
});

test("OUTLOOK-65 of a long record the latest 52 sessions are learned from, the others are told", () => {
  const happened = Array.from({ length: 80 }, (_, at) => ({
    date: `20${20 + Math.floor(at / 28)}-02-${String((at % 28) + 1).padStart(2, "0")}`,
    heads: 7,
  }));
  const { sessionsHeld, sentences } = answered({ ...paid, happened });
  expect(sessionsHeld).toBe(80);
  expect(
    sentences.some((it) => it.startsWith("Learned from 80 sessions, the latest 52 of them in full")),
  ).toBe(true);
});

test("OUTLOOK-53 OUTLOOK-54 OUTLOOK-55 tonight, a cover and full evenings are answered beside it", () => {
  const { cover, tonight, remedies } = answered({
    ...paid,
    regulars: 24,
    cover: { booked: 13, expected: 11, hall: "27.00", fee: "35.00" },
    tonight: { expected: 3, hall: "27.00", avoidable: "4.00" },
    full: { extraMats: 2, rise: "1.00", secondClass: { cost: "27.00" } },
  });
  expect(cover).toEqual({ does: "22.70", cancels: "-27.00", better: "go ahead" });
  expect(tonight).toEqual({ does: "-7.90", cancels: "-27.00", better: "go ahead" });
  expect(remedies.map(({ kind }) => kind)).toEqual(["tighter plan", "price rise", "second class"]);
});

test("OUTLOOK-66 whatever the register holds, every number is one, and low ≤ mean ≤ high", () => {
  for (const happened of [
    weeks(0),
    weeks(14),
    weeks(0, 0, 0, 0, 0, 0, 0, 0, 0, 0),
    weeks(14, 14, 14, 14, 14, 14, 14, 14, 14, 14),
    weeks(0, 14, 0, 14, 0, 14),
    [...weeks(3, 4), { date: "2031-01-07", heads: 5 }],
    weeks(3, 4).toReversed(),
  ]) {
    const json = answered({ ...asked, happened });
    expect(JSON.stringify(json)).not.toMatch(/NaN|Infinity/);
    const { heads, contribution } = json.together;
    expect(heads.low).toBeLessThanOrEqual(heads.mean);
    expect(heads.mean).toBeLessThanOrEqual(heads.high);
    expect(Number(contribution?.low)).toBeLessThanOrEqual(Number(contribution?.high));
    expect(json.learning.effective).toBeGreaterThan(1);
    for (const it of json.sessions) expect(it.heads.mean).toBeGreaterThanOrEqual(0);
  }
});

test("OUTLOOK-66 a thousand places, and a person who brings less than she costs, are answered too", () => {
  const large = answered({ ...paid, capacity: 1000, happened: [{ date: "2026-09-08", heads: 900 }] });
  expect(JSON.stringify(large)).not.toMatch(/NaN|Infinity/);
  const poor = answered({ ...asked, money: { yield: "1.00", perHead: "2.00", cost: "31.00" } });
  expect(poor.breakEven).toBeNull();
  expect(poor.plateauChance).toBe(0);
  expect(poor.together.chanceOfLoss).toBe(1);
  expect(Number(poor.together.contribution?.low)).toBeLessThan(Number(poor.together.contribution?.high));
});

test("OUTLOOK-31 OUTLOOK-66 the same document gives the same answer, another seed another", () => {
  const document = { ...asked, happened: weeks(4, 5, 6, 5) };
  expect(answered(document)).toEqual(answered(document));
  const [one, other] = [answered(document), answered({ ...document, seed: 2 })];
  expect(other.plateau.mean).not.toBe(one.plateau.mean);
  expect(Math.abs(other.together.heads.mean / one.together.heads.mean - 1)).toBeLessThan(0.15);
});

test("OUTLOOK-67 every problem of an outlook is told at once, at its place", () => {
  expect(
    problemsOf({
      capacity: 0,
      currency: "GBP",
      money: { yield: "-7.90", cost: "31.00" },
      roll: { newcomers: -1, stays: 40, attends: 1, leaves: 0, alike: 1, luck: 15, echo: -1 },
      season: [1, 2],
      dates: [],
      happened: [{ date: "2026-09-08", heads: -1 }],
      notice: { days: -1 },
      cover: { expected: -3, hall: "27.00", fee: "35.00" },
      seed: 0.5,
    }),
  ).toEqual([
    "count-out-of-range at capacity",
    "money-negative at money.yield",
    "mean-out-of-range at roll.newcomers",
    "share-certain at roll.stays",
    "share-certain at roll.attends",
    "share-certain at roll.leaves",
    "alike-out-of-range at roll.alike",
    "share-out-of-range at roll.luck",
    "share-out-of-range at roll.echo",
    "season-not-twelve at season",
    "ahead-none at dates",
    "count-out-of-range at happened[0].heads",
    "count-out-of-range at notice.days",
    "mean-out-of-range at cover.expected",
    "count-not-whole at seed",
  ]);
  const year = { from: "2027-03-02", until: "2027-03-01", weekday: 2 };
  expect(problemsOf({ capacity: 9, year })).toEqual(["year-backwards at year"]);
  expect(problemsOf({ capacity: 9, year: { ...year, weekday: 8 } })).toEqual([
    "weekday-unknown at year.weekday",
  ]);
  expect(problemsOf({ capacity: 9, notice: {} })).toEqual(["notice-without-money at money"]);
  expect(problemsOf({ capacity: 9, tonight: { expected: 3, hall: "9" } })).toEqual([
    "evening-without-money at tonight",
  ]);
  expect(problemsOf({ ...paid, full: { biggerHall: { capacity: 14, extraCost: "9.00" } } })).toEqual([
    "bigger-hall-smaller at full.biggerHall.capacity",
  ]);
  expect(problemsOf({ capacity: 9, money: { yield: "8", cost: "31" }, notice: {} })).toEqual([
    "currency-missing at currency",
  ]);
  expect(problemsOf({ ...paid, happened: [{ date: "2026-09-08", heads: 15 }] })).toEqual([
    "heads-over-capacity at happened[0].heads",
  ]);
});

test("OUTLOOK-67 ten thousand people on mats, and people in halves, cannot be meant", () => {
  const happened = [
    { date: "2026-09-08", heads: 10_000 },
    { date: "2026-09-15", heads: 7.5 },
    { date: "2026-09-22", heads: Number.NaN },
  ];
  expect(problemsOf({ capacity: 14, happened: happened.slice(0, 2) })).toEqual([
    "count-out-of-range at happened[0].heads",
    "count-not-whole at happened[1].heads",
  ]);
  expect(problemsOf({ capacity: 14, happened })).not.toEqual([]);
});

test("OUTLOOK-66 OUTLOOK-37 an opening of nobody, of one, and one that was full and turned people away are answered", () => {
  for (const first of [
    { date: "2026-09-08", heads: 0 },
    { date: "2026-09-08", heads: 1, newcomers: 1 },
    { date: "2026-09-08", heads: 14, turnedAway: 30, newcomers: 14 },
    { date: "2026-09-08", heads: 14, waiting: 9 },
  ]) {
    for (const later of [[], weeks(0, 5, 0, 6).slice(1), weeks(0, 14, 14, 14, 14).slice(1)]) {
      for (const regulars of [0, 6]) {
        const json = answered({ ...asked, regulars, happened: [first, ...later] });
        expect(JSON.stringify(json)).not.toMatch(/NaN|Infinity/);
        expect(json.opening).toBe(regulars === 0 ? first.heads : openingBeside(first));
        expect(json.together.heads.low).toBeLessThanOrEqual(json.together.heads.mean);
      }
    }
  }
});

/** With regulars who followed her the counted newcomers are the opening, where nobody was sent home. */
function openingBeside(first: { readonly newcomers?: number; readonly turnedAway?: number }): number | null {
  return first.turnedAway === undefined ? (first.newcomers ?? null) : null;
}
