import { expect, test } from "vitest";
import { keepOrClose, type KeepQuestion } from "./keep-or-close.ts";
import { remediesFor, turnedAwayOf } from "./second-class.ts";
import { coverOrCancel, runTonight } from "./tonight.ts";

const thin: KeepQuestion = {
  sessionsHeld: 12,
  intakeSeen: true,
  canPay: true,
  plateauChance: 0.1,
  goingOn: -4000,
  otherUse: 0,
  exitCost: 1000,
};

test("OUTLOOK-50 under four sessions nothing is advised, whatever they were", () => {
  expect(keepOrClose({ ...thin, sessionsHeld: 3 })).toEqual({ kind: "too early", firm: false });
  expect(keepOrClose({ ...thin, sessionsHeld: 4 })).toEqual({ kind: "close", firm: false });
});

test("OUTLOOK-51 advice is firm after ten teaching weeks with a January or September among them", () => {
  expect(keepOrClose(thin)).toEqual({ kind: "close", firm: true });
  expect(keepOrClose({ ...thin, sessionsHeld: 9 }).firm).toBe(false);
  expect(keepOrClose({ ...thin, intakeSeen: false }).firm).toBe(false);
});

test("OUTLOOK-52 below a quarter it is closed, unless the next term is still worth more than its end", () => {
  // going on −40.00 against an end of −10.00
  expect(keepOrClose(thin).kind).toBe("close");
  expect(keepOrClose({ ...thin, goingOn: -900 }).kind).toBe("change");
  expect(keepOrClose({ ...thin, plateauChance: 0.25 }).kind).toBe("change");
});

test("OUTLOOK-52 it is kept when the next term is worth more, or patience is likely to pay", () => {
  expect(keepOrClose({ ...thin, plateauChance: 0.3, goingOn: 500 }).kind).toBe("keep");
  expect(keepOrClose({ ...thin, plateauChance: 0.5 }).kind).toBe("keep");
  // a better use of the slot: 20.00 a session for twelve
  expect(keepOrClose({ ...thin, plateauChance: 0.3, goingOn: 500, otherUse: 24_000 }).kind).toBe("change");
});

test("OUTLOOK-52 where not even a full hall pays, it is the price or the hall that has to change", () => {
  expect(keepOrClose({ ...thin, plateauChance: 0, canPay: false })).toEqual({ kind: "change", firm: true });
});

const evening = { expected: 11, margin: 770, hall: 2700, hallPastNotice: true, cancelling: 0 };

test("OUTLOOK-53 11 expected at 7.70, hall 27.00 past its notice, cover 35.00: cover 22.70, cancel −27.00", () => {
  expect(coverOrCancel({ ...evening, fee: 3500 })).toEqual({ does: 2270, cancels: -2700 });
  // while the hall can still be given back, cancelling costs only what people feel
  expect(coverOrCancel({ ...evening, fee: 3500, hallPastNotice: false, cancelling: 500 }).cancels).toBe(-500);
});

test("OUTLOOK-54 three people pay for a thin evening in a hall that is charged anyway", () => {
  // 3 × 7.70 − 27.00 − 4.00 = −7.90 against −27.00: run it, though it loses
  const thinEvening = runTonight({ ...evening, expected: 3, avoidable: 400 });
  expect(thinEvening).toEqual({ does: -790, cancels: -2700 });
});

test("OUTLOOK-55 a second class for 2.8 turned away does not pay a hall of 27.00, even if all of them came", () => {
  const full = { demand: { kind: "poisson", mean: 16.09 }, capacity: 14, margin: 770 } as const;
  expect(turnedAwayOf(full)).toBeCloseTo(2.82, 2);
  const remedies = remediesFor(full, {
    extraMats: 2,
    absences: 0,
    rise: 100,
    riseLoses: 0,
    biggerHall: { capacity: 20, extraCost: 900 },
    secondClass: { cost: 2700, shareWhoWouldCome: 1, ownPeople: 0 },
  });
  expect(remedies.map(({ kind }) => kind)).toEqual([
    "tighter plan",
    "price rise",
    "bigger hall",
    "second class",
  ]);
  // 2.82 × 7.70 − 27.00 = −5.29
  expect(remedies[3]?.gain).toBeCloseTo(-529, -1);
  // a pound from each of the 13.27 who get a mat
  expect(remedies[1]?.gain).toBeCloseTo(100 * (16.09 - 2.82), -1);
  expect(remedies[0]?.gain).toBeGreaterThan(0);
});

test("OUTLOOK-55 one more mat brings what the fifteenth to come leaves: P(D ≥ 15) × margin", () => {
  // one place, Poisson(1): P(D ≥ 2) = 1 − 2e^(−1)
  const full = { demand: { kind: "poisson", mean: 1 }, capacity: 1, margin: 1000 } as const;
  const one = remediesFor(full, {
    extraMats: 1,
    absences: 1,
    rise: 0,
    riseLoses: 0,
    biggerHall: null,
    secondClass: null,
  });
  expect(one).toEqual([
    { kind: "tighter plan", gain: expect.closeTo(1000 * (1 - 2 / Math.E), 9) },
    { kind: "released absences", gain: expect.closeTo(1000 * (1 - 2 / Math.E), 9) },
  ]);
});
