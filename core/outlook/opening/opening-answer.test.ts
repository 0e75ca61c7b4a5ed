import { expect, test } from "vitest";
import { nightOf } from "./cost-view.ts";
import { asMuchAs, learnedShare } from "./learned-shares.ts";
import { openingAnswer } from "./opening-answer.ts";
import type { OpeningDocumentInput } from "./opening-document.ts";

function answered(input: OpeningDocumentInput) {
  const found = openingAnswer(input);
  if (!found.ok) throw new Error(found.problems.map(({ code, place }) => `${code} at ${place}`).join());
  return found.value.json;
}

function problemsOf(input: unknown): readonly string[] {
  const found = openingAnswer(input);
  return found.ok ? [] : found.problems.map(({ code, place }) => `${code} at ${place}`);
}

const barn: OpeningDocumentInput = {
  mats: 18,
  ownCap: 16,
  postedCapacity: 60,
  turnUp: 0.6,
  pairs: true,
  guesses: ["turnUp"],
};

test("OUTLOOK-1 OUTLOOK-2 the number to accept comes first, then the stop at the door", () => {
  const { accept, acceptIfAlone, room, hardStop, limitedBy, sentences } = answered(barn);
  // the hall's 60 less the teacher
  expect({ accept, acceptIfAlone, room, hardStop, limitedBy }).toEqual({
    accept: 19,
    acceptIfAlone: 21,
    room: 16,
    hardStop: 59,
    limitedBy: "own cap",
  });
  expect(sentences.slice(0, 2)).toEqual([
    "Accept 19: there is room for 16 by your own cap, and 60 % of those accepted are expected.",
    "At the door stop at 59 people besides those not on mats, whatever was accepted.",
  ]);
});

test("OUTLOOK-4 one mat, two accepted, half come: a quarter of a person is sent home and a quarter of a mat empty", () => {
  // 0, 1 and 2 come with 1/4, 1/2, 1/4
  const night = nightOf({ room: 1, turnUp: 0.5, together: { kind: "alone" } }, 2);
  expect(night).toEqual({ accepted: 2, expected: 1, chanceOver: 0.25, turnedAway: 0.25, emptyMats: 0.25 });
});

test("OUTLOOK-4 by cost the number grows until one more costs more than it saves", () => {
  // one mat, half come: costs of 0, 1, 2, 3 accepted with 9 for one sent home and 4 for an empty mat:
  // 4; 4/2 = 2; 4/4 + 9/4 = 3.25
  const { byCost } = answered({
    mats: 1,
    turnUp: 0.5,
    currency: "GBP",
    costs: { turnedAway: "9.00", emptyMat: "4.00" },
  });
  expect(byCost).toEqual({ accept: 1, cost: "2.00", currency: "GBP" });
  // 3 for one sent home: 1 accepted 2; 2 accepted 1 + 0.75 = 1.75; 3 accepted 4/8 + 3 × (3/8 + 2/8) = 2.375
  const cheaper = answered({
    mats: 1,
    turnUp: 0.5,
    currency: "GBP",
    costs: { turnedAway: "3.00", emptyMat: "4.00" },
  });
  expect(cheaper.byCost).toEqual({ accept: 2, cost: "1.75", currency: "GBP" });
});

test("OUTLOOK-5 the first of the waiting list finds a mat unless the room is full", () => {
  // 2 mats, 2 accepted, half come: full with 1/4, one mat left with 1/2, two with 1/4
  const { waitingList } = answered({ mats: 2, turnUp: 0.5, risk: 0.01 });
  expect(waitingList.slice(0, 3)).toEqual([0.75, 0.25, 0]);
});

test("OUTLOOK-6 a guess weighs as much as ten people, and what happened moves it", () => {
  // 0.6 × 10 + 15 of 10 + 20
  expect(learnedShare(0.6, 15, 20)).toMatchObject({ a: 21, b: 9, mean: 0.7 });
  const { low, high } = learnedShare(0.6, 15, 20);
  expect(low).toBeLessThan(0.7);
  expect(high).toBeGreaterThan(0.7);
  // a guess of nought can still be moved: (0.05 + 5) ÷ 15
  expect(learnedShare(0, 5, 5).mean).toBeCloseTo(5.05 / 15, 12);
});

test("OUTLOOK-6 people who come together tell less than as many alone", () => {
  // 21 ÷ (1 + 20 × 0.05) = 10.5; two pairs among four are as good as two people: 16 ÷ 8
  expect(asMuchAs(21, { kind: "alike", correlation: 0.05 })).toBe(10.5);
  expect(asMuchAs(4, { kind: "pairs", pairs: 2 })).toBe(2);
  expect(asMuchAs(0, { kind: "pairs", pairs: 2 })).toBe(0);
});

test("OUTLOOK-6 after the opening the next one is planned with what was learned", () => {
  const { learned } = answered({
    mats: 16,
    turnUp: 0.5,
    happened: { accepted: 30, came: 27, returned: 9 },
    returns: 0.5,
  });
  // (5 + 27) ÷ 40 and (5 + 9) ÷ 37; P(more than 16 of 18 at 0.8) = 0.0991, of 17: 0.8^17 = 0.0225
  expect(learned?.turnUp.mean).toBeCloseTo(0.8, 11);
  expect(learned?.returns?.mean).toBeCloseTo(14 / 37, 11);
  expect(learned?.acceptNext).toBe(17);
});

test("OUTLOOK-7 a stayer's visits fade as regulars stop, and each leaves the margin", () => {
  // half of the regulars stop each week, four weeks, every session: 1/2 + 1/4 + 1/8 + 1/16 = 0.9375 visits
  const stayer = { yield: "8.00", perHead: "1.60", attendance: 1, leaving: 0.5, sessions: 4 };
  expect(answered({ mats: 9, turnUp: 0.5, currency: "GBP", stayer }).stayer).toEqual({
    visits: 0.9375,
    worth: "6.00",
    currency: "GBP",
  });
  const loyal = answered({ mats: 9, turnUp: 0.5, currency: "GBP", stayer: { ...stayer, leaving: 0 } });
  expect(loyal.stayer?.visits).toBe(4);
});

test("OUTLOOK-8 every problem of an opening is told at once, at its place", () => {
  expect(
    problemsOf({
      mats: 18.5,
      turnUp: 60,
      pairs: -1,
      risk: 5,
      currency: "GBP",
      costs: { turnedAway: "-1", emptyMat: "1" },
      happened: { accepted: 5, came: 6 },
      returns: 2,
    }),
  ).toEqual([
    "count-not-whole at mats",
    "share-out-of-range at turnUp",
    "count-out-of-range at pairs",
    "risk-out-of-range at risk",
    "money-negative at costs.turnedAway",
    "came-more-than-accepted at happened.came",
    "share-out-of-range at returns",
  ]);
  expect(problemsOf({ mats: 0, turnUp: 0.5 })).toEqual(["room-none at mats"]);
  expect(problemsOf({ mats: 5, turnUp: 0.5, happened: { accepted: 5, came: 2, returned: 3 } })).toEqual([
    "returned-more-than-came at happened.returned",
  ]);
  expect(problemsOf({ mats: 5, turnUp: 0.5, costs: { turnedAway: "1", emptyMat: "1" } })).toEqual([
    "currency-missing at currency",
  ]);
});

test("OUTLOOK-8 nobody coming, everybody coming and a thousand mats are answered with numbers", () => {
  for (const turnUp of [0, 1, 0.001]) {
    for (const mats of [1, 1000]) {
      const json = answered({ mats, turnUp, pairs: true });
      expect(JSON.stringify(json)).not.toMatch(/NaN|Infinity|null,"null/);
      expect(json.accept).toBeGreaterThanOrEqual(mats);
    }
  }
});
