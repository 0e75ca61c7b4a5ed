import { dateOfDay, dayNumberOf } from "#kernels/calendar";
import { fitBgNbd } from "#kernels/survival";
import { comingPeople, weeklyPeople } from "#testing";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { comingAnswer, comingJson } from "./coming-answer.ts";
import type { Visit } from "./coming-types.ts";
import { chanceWords, personSentence } from "./coming-words.ts";
import { type ComingQuestion, stillComing } from "./still-coming.ts";

/** A Tuesday. */
const START = dayNumberOf("2026-09-01") ?? 0;

/** Visits on the Tuesdays of these weeks: { Nell: [0, 1, 3] }. */
function tuesdays(weeks: Readonly<Record<string, readonly number[]>>): readonly Visit[] {
  return Object.entries(weeks).flatMap(([person, list]) =>
    list.map((week) => ({ person, date: dateOfDay(START + week * 7) })),
  );
}

function coming(question: ComingQuestion) {
  const found = stillComing(question);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

const regulars = {
  Nell: [0, 1, 2, 3, 4, 5, 6, 7],
  Owen: [0, 2, 4],
  Iris: [1],
  Thea: [1, 2, 5, 7],
  Bram: [0, 3, 7],
};

test("COMING-7: weeks since the last visit are whole, and who was not seen for four is listed", () => {
  // until Tuesday of week 7: Owen last in week 4, three weeks ago; Iris in week 1, six
  const found = coming({ visits: tuesdays(regulars) });
  expect(found.until).toBe("2026-10-20");
  expect(found.people.map((it) => [it.person, it.visits, it.weeksSince])).toEqual([
    ["Bram", 3, 0],
    ["Iris", 1, 6],
    ["Nell", 8, 0],
    ["Owen", 3, 3],
    ["Thea", 4, 0],
  ]);
  expect(found.notSeen.map((it) => it.person)).toEqual(["Iris"]);
  expect(coming({ visits: tuesdays(regulars), notSeenFor: 3 }).notSeen.map((it) => it.person)).toEqual([
    "Iris",
    "Owen",
  ]);
});

function owensWeeks(question: ComingQuestion): number | undefined {
  return coming(question).people.find((it) => it.person === "Owen")?.weeksSince;
}

test("COMING-1: three closed weeks are no absence", () => {
  // weeks 3 to 5 closed, from a Wednesday to a Monday after: touched, and nobody came
  const visits = tuesdays({ Nell: [0, 1, 2, 6, 7], Owen: [0, 2] });
  const closed = [{ from: dateOfDay(START + 3 * 7 - 1), until: dateOfDay(START + 5 * 7 + 3) }];
  expect(owensWeeks({ visits })).toBe(5);
  expect(owensWeeks({ visits, closed })).toBe(2);
  expect(owensWeeks({ visits, emptyWeeksClosed: true })).toBe(2);
});

test("COMING-1: a day that somebody came to was not closed", () => {
  const visits = tuesdays({ Nell: [0, 1, 2, 3], Owen: [0] });
  const closed = [{ from: dateOfDay(START), until: dateOfDay(START + 28) }];
  expect(coming({ visits, closed }).people.find((it) => it.person === "Owen")?.weeksSince).toBe(3);
});

test("COMING-1: without closures time is days ÷ 7, and the fit that of the plain records", () => {
  const truth = { r: 0.8, alpha: 2, a: 0.6, b: 3 };
  const people = comingPeople(truth, 200, { newFor: 60, until: 200 }, 3);
  const visits = people.flatMap(({ firstDay, days }, at) =>
    [firstDay, ...days].map((day) => ({ person: `Person ${at}`, date: dateOfDay(START + day) })),
  );
  const found = coming({ visits, until: dateOfDay(START + 200), model: "bg-nbd" });
  const plain = fitBgNbd(
    people.map(({ firstDay, days }) => ({
      repeats: days.length,
      last: days.length === 0 ? 0 : ((days.at(-1) ?? 0) - firstDay) / 7,
      span: (200 - firstDay) / 7,
    })),
  );
  expect(found.fit?.fitted.logLikelihood).toBeCloseTo(plain.logLikelihood, 6);
});

test("COMING-2: later visits are told and not counted, and two on one day are one", () => {
  const visits = [...tuesdays(regulars), ...tuesdays({ Nell: [7] })];
  const found = coming({ visits, until: dateOfDay(START + 4 * 7) });
  // Nell 5, Owen 3, Iris 1, Thea 2, Bram 2
  expect(found.visits).toBe(13);
  // Nell 3 and the one twice, Thea 2, Bram 1
  expect(found.visitsLater).toBe(7);
});

test("COMING-3: below four people who came again there are no chances, and it says so", () => {
  const answer = comingAnswer({ visits: tuesdays({ Nell: [0, 1], Owen: [0, 1], Iris: [0, 1], Thea: [0] }) });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  expect(answer.value.coming.fit).toBeNull();
  expect(answer.value.coming.people.every((it) => it.expectedVisits === null)).toBe(true);
  expect(answer.value.sentences).toContain(
    "Only 3 people came more than once: below 4 such people no chances are worked out.",
  );
});

test("COMING-3: by BG/BB a week is one chance, and the same people are found coming", () => {
  const found = coming({ visits: tuesdays(regulars) });
  expect(found.fit?.model).toBe("bg-bb");
  const chanceOf = (name: string): number =>
    found.people.find((it) => it.person === name)?.stillComing?.value ?? 0;
  expect(chanceOf("Nell")).toBeGreaterThan(chanceOf("Owen"));
  expect(found.people.every((it) => (it.expectedVisits?.value ?? 99) <= 12)).toBe(true);
});

test("COMING-3: of somebody new as many visits are expected as the drawn people made in their first weeks", () => {
  const people = comingPeople({ r: 0.8, alpha: 2, a: 0.6, b: 3 }, 1500, { newFor: 30, until: 200 }, 9);
  const visits = people.flatMap(({ firstDay, days }, at) =>
    [firstDay, ...days].map((day) => ({ person: `Person ${at}`, date: dateOfDay(START + day) })),
  );
  const found = coming({ visits, until: dateOfDay(START + 200), model: "bg-nbd" });
  const made = people.map(({ firstDay, days }) => days.filter((day) => day <= firstDay + 84).length);
  const mean = made.reduce((sum, count) => sum + count, 0) / people.length;
  // a standard error of some 3 / √1500 = 0.08
  expect(Math.abs((found.expectedOfNew ?? 0) - mean)).toBeLessThan(0.25);
});

test("COMING-5: of one who came once only the chance of another visit is given", () => {
  const iris = coming({ visits: tuesdays(regulars), model: "bg-nbd" }).people.find(
    (it) => it.person === "Iris",
  );
  expect(iris?.stillComing).toBeNull();
  expect(iris?.comesAgain?.value).toBeGreaterThan(0);
  expect(iris === undefined ? "" : personSentence(iris)).toMatch(
    /^Iris came once, 6 teaching weeks ago: comes again with a chance of [\d.]+ %; [\d.]+ visits to expect\.$/,
  );
});

function sentencesOf(visits: readonly Visit[], model: "bg-nbd" | "bg-bb"): readonly string[] {
  const answer = comingAnswer({ visits, model });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value.sentences;
}

test("COMING-5: by BG/NBD it is said that too much is expected of those who came once, long ago", () => {
  const sentence =
    "By bg-nbd nobody stops before a second visit, so that it expects too much of the one person who came once and was not seen since; bg-bb does not.";
  // one visit on a Thursday, so that the dates are not those of a weekly class
  const visits = [...tuesdays(regulars), { person: "Nell", date: dateOfDay(START + 9) }];
  expect(sentencesOf(visits, "bg-nbd")).toContain(sentence);
  expect(sentencesOf(visits, "bg-bb")).not.toContain(sentence);
});

test("COMING-5: visits on one weekday alone are called those of a weekly class, by BG/NBD", () => {
  const sentence =
    "All visits fall on one weekday, as in a weekly class, of which bg-nbd expects too many visits; bg-bb fits it better.";
  expect(sentencesOf(tuesdays(regulars), "bg-nbd")).toContain(sentence);
  expect(sentencesOf(tuesdays(regulars), "bg-bb")).not.toContain(sentence);
});

test("COMING-6: people come by name, and the answer says for whose eyes it is", () => {
  const answer = comingAnswer({ visits: tuesdays({ ...regulars, abel: [0, 7] }) });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const names = answer.value.coming.people.map((it) => it.person);
  expect(names).toEqual(["abel", "Bram", "Iris", "Nell", "Owen", "Thea"]);
  expect(comingJson(answer.value).caution).toContain("the teacher’s own eyes");
  expect(chanceWords(0.61)).toBe("may or may not still come");
});

test("COMING-9: weeks in which nobody came are told, and not when the class is known to have been closed", () => {
  const visits = tuesdays({ Nell: [0, 1, 2, 5, 6], Owen: [0, 2, 6] });
  expect(coming({ visits }).emptyWeeks).toEqual(["2026-09-21", "2026-09-28"]);
  const closed = [{ from: "2026-09-21", until: "2026-10-04" }];
  expect(coming({ visits, closed }).emptyWeeks).toEqual([]);
});

const anybody: fc.Arbitrary<readonly Visit[]> = fc.array(
  fc.record({
    person: fc.constantFrom("Nell", "Owen", "Iris", "Thea", "Bram", "Wren"),
    date: fc.nat(300).map((day) => dateOfDay(START + day)),
  }),
  { minLength: 1, maxLength: 60 },
);

test("COMING-4: whatever the records, every figure is a number within its band and its range", () => {
  fc.assert(
    fc.property(anybody, fc.constantFrom("bg-nbd" as const, "bg-bb" as const), (visits, model) => {
      for (const { stillComing: chance, comesAgain, expectedVisits } of coming({ visits, model }).people) {
        for (const figure of [chance, comesAgain, expectedVisits]) {
          if (figure === null) continue;
          expect(figure.value).toBeGreaterThanOrEqual(0);
          expect(figure.low).toBeLessThanOrEqual(figure.value + 1e-9);
          expect(figure.high).toBeGreaterThanOrEqual(figure.value - 1e-9);
        }
        for (const share of [chance, comesAgain]) expect(share?.high ?? 1).toBeLessThanOrEqual(1);
        if (model === "bg-bb") expect(expectedVisits?.value ?? 0).toBeLessThanOrEqual(12 + 1e-9);
      }
    }),
    { numRuns: 25 },
  );
});

test.each([
  ["everybody once", Object.fromEntries(Array.from({ length: 30 }, (_, at) => [`P${at}`, [at % 9]])), null],
  [
    "everybody every week",
    Object.fromEntries(
      Array.from({ length: 30 }, (_, at) => [`P${at}`, Array.from({ length: 20 }, (_week, week) => week)]),
    ),
    12,
  ],
  ["one person", { Nell: [0, 1, 5] }, null],
] as const)("COMING-4: %s", (_, weeks, each) => {
  const found = coming({ visits: tuesdays(weeks) });
  const [first] = found.people;
  if (each === null) expect(first?.expectedVisits).toBeNull();
  // twelve weeks, one visit in each
  else expect(first?.expectedVisits?.value).toBeCloseTo(each, 0);
  if (found.fit !== null) expect(found.fit.fitted.settled).toBe(false);
});

test("COMING-11: what cannot be used is told, each at its place", () => {
  const bad = stillComing({
    visits: [{ person: "Nell", date: "06/04/2027" }],
    until: "soon",
    closed: [{ from: "2027-05-02", until: "2027-05-01" }],
    ahead: 0,
    notSeenFor: 1.5,
  });
  expect(!bad.ok && bad.problems.map(({ code, place }) => [code, place])).toEqual([
    ["weeks-ahead-out-of-range", "ahead"],
    ["not-seen-out-of-range", "notSeenFor"],
    ["date-unreadable", "visits[0].date"],
    ["closure-backwards", "closed[0]"],
    ["date-unreadable", "until"],
  ]);
  expect(stillComing({ visits: [] })).toMatchObject({ problems: [{ code: "visits-none" }] });
  const before = stillComing({ visits: tuesdays(regulars), until: "2026-01-01" });
  expect(before).toMatchObject({
    problems: [{ code: "visits-none", says: "Nobody was seen until that day." }],
  });
});

/** How many of forty drawn classes of sixty people came, in twelve weeks the fit was not shown, as often as the band says. */
function insideOfForty(
  model: "bg-nbd" | "bg-bb",
  daysOf: (seed: number) => readonly (readonly number[])[],
): number {
  const shown = 19 * 7;
  let inside = 0;
  for (let seed = 1; seed <= 40; seed += 1) {
    const days = daysOf(seed);
    const visits = days.flatMap((list, at) =>
      list.map((day) => ({ person: `Person ${at}`, date: dateOfDay(START + day) })),
    );
    const { low = 0, high = 0 } =
      coming({ visits, until: dateOfDay(START + shown), model }).expectedVisits ?? {};
    const later = days.flat().filter((day) => day > shown && day <= shown + 84).length;
    if (later >= low && later <= high) inside += 1;
  }
  return inside;
}

// Of 40, 32 on average, with a standard deviation of 2.5.
test("COMING-4: by BG/NBD the visits of all together lie in their band some four times of five", () => {
  const inside = insideOfForty("bg-nbd", (seed) =>
    comingPeople({ r: 1.5, alpha: 3, a: 0.8, b: 6 }, 60, { newFor: 70, until: 224 }, seed).map(
      ({ firstDay, days }) => [firstDay, ...days],
    ),
  );
  expect(inside).toBeGreaterThanOrEqual(27);
  expect(inside).toBeLessThanOrEqual(38);
});

test("COMING-4: by BG/BB the visits of all together lie in their band some four times of five", () => {
  const inside = insideOfForty("bg-bb", (seed) =>
    weeklyPeople({ alpha: 2, beta: 1.5, gamma: 0.8, delta: 8 }, 60, { newFor: 10, weeks: 32 }, seed).map(
      (weeks) => weeks.map((week) => week * 7),
    ),
  );
  expect(inside).toBeGreaterThanOrEqual(27);
  expect(inside).toBeLessThanOrEqual(38);
});

test("COMING-7: ten thousand people are answered by either model, every figure a number", () => {
  const people = comingPeople(
    { r: 0.243, alpha: 4.414, a: 0.793, b: 2.426 },
    10_000,
    { newFor: 84, until: 273 },
    1,
  );
  const visits = people.flatMap(({ firstDay, days }, at) =>
    [firstDay, ...days].map((day) => ({ person: `Person ${at}`, date: dateOfDay(START + day) })),
  );
  for (const model of ["bg-bb", "bg-nbd"] as const) {
    const found = comingAnswer({ visits, model });
    if (!found.ok) throw new Error(JSON.stringify(found.problems));
    expect(JSON.stringify(comingJson(found.value))).not.toMatch(/NaN|Infinity|null,"high"/);
    expect(found.value.coming.people).toHaveLength(10_000);
  }
});
