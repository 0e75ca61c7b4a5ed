import { expect, test } from "vitest";
import { compareAnswer, type CompareJson } from "./compare-answer.ts";
import type { CompareDocumentInput } from "./compare-document.ts";

// Ten Tuesdays from 12 January to 16 March 2027. A head leaves 8.00; always 10 people.
const barn = {
  name: "Tithe Barn Hall",
  capacity: 20,
  hire: { perSession: "30.00" },
  travelMinutes: 90,
  travelCost: "4.00",
  free: [{ weekday: 2, from: "17:00", until: "22:00" }],
};
const quay = {
  name: "Quay Street Mission Room",
  capacity: 9,
  hire: { perHour: "14.00", incrementMinutes: 30 },
  travelMinutes: 25,
  closures: [{ from: "2027-02-15", until: "2027-02-19", why: "half-term" }],
};
const lesson: Omit<CompareDocumentInput, "halls"> = {
  currency: "GBP",
  slots: [{ weekday: 2, start: "18:30" }],
  minutes: { setUp: 20, class: 60, packDown: 15 },
  year: { from: "2027-01-12", until: "2027-03-16" },
  perHead: "0.50",
  prices: { single: "8.50" },
  mix: { single: 1 },
  heads: 10,
  dispersion: 0,
};

function answered(input: unknown): CompareJson {
  const found = compareAnswer(input);
  if (!found.ok) throw new Error(found.problems.map(({ code, place }) => `${code} at ${place}`).join());
  return found.value.json;
}

function problemsOf(input: unknown): readonly string[] {
  const found = compareAnswer(input);
  return found.ok ? [] : found.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("PRICE-70 each hall is worked out a session, a year and an hour, as it is and full", () => {
  const { halls } = answered({ ...lesson, halls: [barn, quay] });
  // Barn: 10 × 8 − 34 = 46.00; 10 dates 460.00; 90 + 95 = 185 min: 14.92. Full 20 × 8 − 34 = 126.00
  expect(halls[0]).toMatchObject({
    sessions: 10,
    lostDates: 0,
    costPerSession: "34.00",
    doorToDoorMinutes: 185,
    expected: { heads: 10, perSession: "46.00", perYear: "460.00", perHour: "14.92" },
    full: { heads: 20, perSession: "126.00", perYear: "1260.00", perHour: "40.86" },
  });
  // Quay: 120 charged minutes 28.00; 9 × 8 − 28 = 44.00; half-term leaves 9 dates, 396.00; 120 min: 22.00
  expect(halls[1]).toMatchObject({
    sessions: 9,
    lostDates: 1,
    costPerSession: "28.00",
    doorToDoorMinutes: 120,
    expected: { heads: 9, perSession: "44.00", perYear: "396.00", perHour: "22.00" },
    full: { heads: 9, perSession: "44.00", perYear: "396.00", perHour: "22.00" },
  });
});

test("PRICE-71 the orders are given and where they differ is told with why", () => {
  const { orders, differences, sentences } = answered({ ...lesson, halls: [quay, barn] });
  expect(orders.expected).toEqual({
    perSession: ["Tithe Barn Hall", "Quay Street Mission Room"],
    perYear: ["Tithe Barn Hall", "Quay Street Mission Room"],
    perHour: ["Quay Street Mission Room", "Tithe Barn Hall"],
  });
  expect(differences).toEqual([
    {
      first: "Tithe Barn Hall",
      second: "Quay Street Mission Room",
      by: "hour",
      says: "By the session Tithe Barn Hall leaves 2.00 GBP more than Quay Street Mission Room, but by the hour Quay Street Mission Room leaves 7.08 GBP more: it takes 120 minutes from door to door and Tithe Barn Hall 185.",
    },
  ]);
  expect(sentences[0]).toBe(
    "With 10 people who would like to come, Tithe Barn Hall leaves most a year: 46.00 GBP a session, 460.00 GBP a year of 10 sessions, 14.92 GBP an hour from door to door.",
  );
  expect(sentences).toContain(
    "When it is free has not been stated for: Quay Street Mission Room. Ask before you choose.",
  );
});

test("PRICE-71 closures can turn the year against the session, and fullness the leader", () => {
  // St Brannoc's: 10 × 8 − 33 = 47.00 a session but six dates, 282.00; full 11 × 8 − 33 = 55.00
  const brannoc = {
    ...barn,
    name: "St Brannoc’s",
    capacity: 11,
    hire: { perSession: "29.00" },
    terms: [{ from: "2027-01-12", until: "2027-02-16" }],
  };
  const { differences } = answered({ ...lesson, halls: [barn, brannoc] });
  expect(differences.map(({ by, says }) => `${by}: ${says}`)).toEqual([
    "year: By the session St Brannoc’s leaves 1.00 GBP more than Tithe Barn Hall, but by the year Tithe Barn Hall leaves 178.00 GBP more: it can be had on 10 dates and St Brannoc’s on 6, with 4 lost to days outside its terms.",
    "full hall: By the session St Brannoc’s leaves 1.00 GBP more than Tithe Barn Hall, but when both are full Tithe Barn Hall leaves 71.00 GBP more: it takes 20 people and St Brannoc’s 11.",
  ]);
});

test("PRICE-71 one order everywhere is told as one", () => {
  const { differences, sentences } = answered({
    ...lesson,
    halls: [barn, { ...barn, name: "Dear Hall", hire: { perSession: "40.00" } }],
  });
  expect(differences).toEqual([]);
  expect(sentences[1]).toBe(
    "By the session, the year and the hour, as it is and full, the order is the same: Tithe Barn Hall; Dear Hall.",
  );
});

test("PRICE-72 a hall that is not free from letting in to locking up is left out and says why", () => {
  const late = { ...barn, name: "Late Hall", free: [{ weekday: 2, from: "18:15", until: "22:00" }] };
  const { excluded, halls } = answered({ ...lesson, halls: [late, quay] });
  expect(halls).toHaveLength(1);
  expect(excluded).toEqual([
    {
      said: "Late Hall",
      why: "it is not free on Tuesday 18:30 from 18:10, when it must be let in, to 19:45: on a Tuesday it is free from 18:15 to 22:00",
    },
  ]);
  expect(problemsOf({ ...lesson, halls: [late] })).toEqual(["halls-none-left at halls"]);
});

test("PRICE-72 each time of the week is looked at in each hall", () => {
  const slots = [...lesson.slots, { weekday: 4, start: "18:30" }];
  const { halls, excluded } = answered({ ...lesson, slots, halls: [barn, quay] });
  // Thursdays 14 January to 11 March are 9, and half-term takes one of them too
  expect(halls.map(({ said, sessions }) => `${said}: ${sessions}`)).toEqual([
    "Tithe Barn Hall (Tuesday 18:30): 10",
    "Quay Street Mission Room (Tuesday 18:30): 9",
    "Quay Street Mission Room (Thursday 18:30): 8",
  ]);
  expect(excluded).toEqual([
    {
      said: "Tithe Barn Hall (Thursday 18:30)",
      why: "it is not free on Thursday 18:30 from 18:10, when it must be let in, to 19:45: it is never free on a Thursday",
    },
  ]);
  const again = { ...lesson, slots: [...lesson.slots, ...lesson.slots], halls: [barn] };
  expect(problemsOf(again)).toEqual(["slot-twice at slots[1]"]);
});

test("PRICE-72 free for two spans that only meet is not free for a class over both", () => {
  const spans = [
    { weekday: 2, from: "17:00", until: "19:00" },
    { weekday: 2, from: "19:00", until: "22:00" },
  ];
  const { excluded } = answered({ ...lesson, halls: [{ ...barn, free: spans }, quay] });
  expect(excluded[0]?.why).toMatch(/on a Tuesday it is free from 17:00 to 19:00 and from 19:00 to 22:00$/);
});

test("PRICE-76 each way for the mats to stand is compared for itself, on the same dates at the same cost", () => {
  const ways = [
    { name: "staggered", capacity: 16 },
    { name: "in a ring", capacity: 8 },
  ];
  const { halls, orders } = answered({ ...lesson, halls: [{ ...barn, arrangements: ways }, quay] });
  // 8 × 8.00 − 34.00 = 30.00 in a ring, which turns two away; 16 and 20 places take all ten
  expect(halls.map(({ said, capacity, expected }) => `${said}: ${capacity}, ${expected.perSession}`)).toEqual(
    [
      "Tithe Barn Hall (in lines): 20, 46.00",
      "Tithe Barn Hall (staggered): 16, 46.00",
      "Tithe Barn Hall (in a ring): 8, 30.00",
      "Quay Street Mission Room: 9, 44.00",
    ],
  );
  expect(orders.full.perSession[0]).toBe("Tithe Barn Hall (in lines)");
  const twice = { ...barn, arrangement: "staggered", arrangements: ways };
  expect(problemsOf({ ...lesson, halls: [twice] })).toEqual([
    "arrangement-twice at halls[0].arrangements[0].name",
  ]);
  const none = { ...barn, arrangements: [{ name: "in a ring", capacity: 0 }] };
  expect(problemsOf({ ...lesson, halls: [none] })).toEqual([
    "capacity-zero at halls[0].arrangements[0].capacity",
  ]);
});

test("PRICE-72 a hall whose terms miss the year has no date left", () => {
  const summer = { ...barn, terms: [{ from: "2027-06-01", until: "2027-08-31" }] };
  expect(answered({ ...lesson, halls: [summer, quay] }).excluded[0]?.why).toBe(
    "no date of the year is left: 10 to days outside its terms",
  );
});

test("PRICE-70 heating and new rates count on their own dates, and volume bands by the hours of the class", () => {
  // 2 h on 10 dates are 20 hours: the band halves the rate; heating 1.00 an hour on three January dates
  // 14.00 × 2 × 0.5 = 14.00; from 1 March 16.00 on three dates: 7 × 14.00 + 3 × 16.00 + 3 × 2.00 = 152.00
  const hire = {
    perHour: "14.00",
    incrementMinutes: 30,
    heating: { perHour: "1.00", months: [1] },
    bands: [{ fromHoursPerYear: 20, factor: 0.5 }],
    rates: [{ from: "2027-03-01", perHour: "16.00" }],
  };
  const { halls } = answered({ ...lesson, halls: [{ ...barn, travelCost: "0", hire }, quay] });
  expect(halls[0]?.costPerSession).toBe("15.20");
});

test("PRICE-73 the nearest figure that would change the leader is told, marked guess or known", () => {
  // Barn 460.00 and Quay 396.00 a year. Quay leads when a session in the Barn costs 40.41 or more (+18.9 %),
  // when the Barn has 8 sessions (368.00; −20 %), or when fewer would like to come
  const { changes } = answered({ ...lesson, halls: [barn, quay], guesses: ["heads", "halls[0]"] });
  const of = (path: string) => changes.find((it) => it.path === path);
  // n × 80 − 340 < 396 from n = 9.1: 388.00
  expect(of("heads")).toMatchObject({
    now: 10,
    at: 9.1,
    becomes: "Quay Street Mission Room comes first",
    guess: true,
  });
  expect(of("halls[0].hire")).toMatchObject({ now: "34.00", at: "40.41", guess: true });
  expect(of("halls[1].hire")).toMatchObject({ now: "28.00", at: "20.88", guess: false });
  expect(of("halls[0].closures")).toMatchObject({ now: 10, at: 8 });
  // one place more in Quay Street is 52.00 × 9 = 468.00
  expect(of("halls[1].capacity")).toMatchObject({ now: 9, at: 10 });
  expect(of("halls[1].travelMinutes")).toMatchObject({ at: null, nearness: null });
  expect(changes[0]?.path).toBe("heads");
  expect(changes[0]?.says).toBe(
    "The people who would like to come, now 10 (a guess): at 9.1 or less Quay Street Mission Room comes first.",
  );
});

test("PRICE-71 two halls at several times are told of once for each measure", () => {
  const slots = [
    { weekday: 2, start: "18:30" },
    { weekday: 3, start: "18:30" },
  ];
  const { free: _, ...open } = barn;
  const { differences } = answered({ ...lesson, slots, halls: [quay, open] });
  // 46.00 in 185 min against 44.00 in 120 on either day: four pairs, one sentence
  expect(differences.map(({ first, second, by }) => [first, second, by])).toEqual([
    ["Tithe Barn Hall (Tuesday 18:30)", "Quay Street Mission Room (Tuesday 18:30)", "hour"],
  ]);
});

test("PRICE-73 by the hour the travel is what counts", () => {
  const { changes, sentences } = answered({ ...lesson, halls: [barn, quay], by: "hour" });
  expect(sentences[0]).toContain("Quay Street Mission Room leaves most an hour from door to door");
  // 46.00 in 125 minutes is 22.08 an hour: 30 minutes of travel
  expect(changes.find(({ path }) => path === "halls[0].travelMinutes")).toMatchObject({ now: 90, at: 30 });
});

test("PRICE-74 the working of each hall can be followed with a pencil", () => {
  const { working } = answered({ ...lesson, halls: [quay, barn] });
  expect(
    working
      .filter(({ part }) => part === "Quay Street Mission Room")
      .map((it) => `${it.label}: ${it.sum} = ${it.amount}`),
  ).toEqual([
    "People on average: 10 would like to come, 9 places = 9",
    "They leave: 9 × 8.00 = 72.00",
    "A session costs on average: 252.00 ÷ 9 = 28.00",
    "A session leaves:  = 44.00",
    "A year leaves: 9 of 10 dates; lost: 1 to half-term = 396.00",
    "An hour leaves: ÷ 120 min × 60 = 22.00",
  ]);
});

test("PRICE-75 free hours that run backwards and a class that goes over midnight are told, not passed over", () => {
  const backwards = { ...barn, free: [{ weekday: 2, from: "22:00", until: "17:00" }] };
  expect(problemsOf({ ...lesson, halls: [backwards, quay] })).toEqual([
    "free-hours-backwards at halls[0].free[0]",
  ]);
  expect(problemsOf({ ...lesson, slots: [{ weekday: 2, start: "23:30" }], halls: [barn, quay] })).toEqual([
    "class-over-midnight at slots[0].start",
  ]);
});

test("PRICE-75 every problem of a comparison is told at once, each at its place", () => {
  expect(
    problemsOf({
      ...lesson,
      slots: [{ weekday: 9, start: "6pm" }],
      year: { from: "2027-03-16", until: "2027-01-12" },
      heads: -1,
      dispersion: 0.5,
      halls: [
        { ...barn, capacity: 0 },
        { ...quay, currency: "EUR" },
        { ...barn, capacity: 2.5, free: [{ weekday: 0, from: "25:00", until: "24:00" }] },
      ],
    }),
  ).toEqual([
    "weekday-unknown at slots[0].weekday",
    "time-unreadable at slots[0].start",
    "span-backwards at year",
    "heads-out-of-range at heads",
    "capacity-zero at halls[0].capacity",
    "currencies-mixed at halls[1].currency",
    "capacity-out-of-range at halls[2].capacity",
    "weekday-unknown at halls[2].free[0].weekday",
    "time-unreadable at halls[2].free[0].from",
  ]);
  expect(problemsOf({ ...lesson, dispersion: 0.5, slots: [], halls: [] })).toEqual([
    "slots-missing at slots",
    "dispersion-out-of-range at dispersion",
    "halls-missing at halls",
  ]);
  const century = { from: "2027-01-01", until: "2127-01-01" };
  expect(problemsOf({ ...lesson, year: century, halls: [barn] })).toEqual(["span-too-long at year"]);
});
