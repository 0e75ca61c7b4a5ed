import { type ChargedSlot, chargedSlot } from "#core/hall";
import { type ExactMinor, type Minor, minor, minutes } from "#core/words";
import { Fraction } from "fraction.js";
import { breakEvenHeads } from "./break-even.ts";
import type { Evening, EveningAnswer, HeadsLine } from "./evening-types.ts";
import { breakEvenWorking, costWorking, yieldWorking } from "./evening-working.ts";
import { hourly } from "./hourly.ts";
import { yieldOf } from "./yield.ts";

/** Answers a sound evening: methods 2 and 3. */
export function eveningAnswer(evening: Evening): EveningAnswer {
  // the room
  const { slot, cost } = sessionCosts(evening);
  // the people
  const yielded = yieldOf(evening.payers);
  const margin = yielded.sub(evening.perHead);
  const breakEven = breakEvenHeads(cost, margin);
  const contribution = contributionOf(evening.heads, margin, cost);
  // her time
  const time = hourly(evening, margin, cost, contribution);
  return {
    currency: evening.currency,
    date: evening.date,
    neededMinutes: slot.needed,
    chargedMinutes: slot.charged,
    hire: slot.hire,
    cost,
    costPerHead: evening.perHead,
    yield: yielded,
    breakEven,
    heads: evening.heads,
    contribution,
    doorToDoorMinutes: minutes(time.doorToDoor),
    otherMinutes: evening.minutes.other,
    perDoorToDoorHour: time.perDoorToDoorHour,
    trueHourly: time.trueHourly,
    table: headsTable(mostHeads(evening, breakEven), yielded, evening.perHead, cost),
    working: {
      hire: slot.working,
      cost: costWorking(evening, slot, cost),
      yield: yieldWorking(evening, yielded),
      breakEven: breakEvenWorking(evening, yielded, cost, breakEven),
      hourly: time.working,
    },
  };
}

export type SessionCosts = { readonly slot: ChargedSlot; readonly hire: Minor; readonly cost: Minor };

/** C of methods 2, on the evening's date: the hire and what else the session costs whoever comes. */
export function sessionCosts(evening: Evening): SessionCosts {
  const slot = chargedSlot(evening.hire, evening.minutes, evening.date);
  const cost = minor(slot.hire + evening.travelCost + evening.otherCost);
  return { slot, hire: slot.hire, cost };
}

/** n(y − v) − C, exact, in minor units. */
export function contributionOf(heads: Fraction, margin: ExactMinor, cost: Minor): ExactMinor {
  return heads.mul(margin).sub(cost);
}

const LEAST_ROWS = 20;
const MOST_ROWS = 200;

/** Far enough to see her ordinary evening and the break-even, and no further than a hall is large. */
function mostHeads(evening: Evening, breakEven: number | null): number {
  const ordinary = Number(evening.heads.ceil());
  return Math.min(MOST_ROWS, Math.max(LEAST_ROWS, ordinary, breakEven ?? 0));
}

function headsTable(most: number, yielded: ExactMinor, perHead: Minor, cost: Minor): readonly HeadsLine[] {
  const margin = yielded.sub(perHead);
  return Array.from({ length: most + 1 }, (_, heads) => ({
    heads,
    takings: yielded.mul(heads),
    contribution: contributionOf(new Fraction(heads), margin, cost),
  }));
}
