import { type Minor, type Minutes, minor, minutes, roundToMinor, type WorkingLine } from "#core/words";
import { Fraction } from "fraction.js";
import type { Temporal } from "temporal-polyfill";
import { chargedSlotWorking } from "./charged-slot-working.ts";
import type { SlotAmounts, SlotMinutes, SlotTimes } from "./charged-slot-types.ts";
import { type HireRateOnDate, hireRateOn } from "./hire-rate.ts";
import type { HireTerms } from "./hire-terms.ts";

/**
 * A 60-minute class with 20 to set up and 15 to pack down needs the hall for 95 minutes; with half-hour
 * steps and 14.00 an hour it is charged 120 minutes, 28.00.
 * Invariant: charged ≥ needed, and charged is the hall's minimum or a multiple of its increment.
 */
export type ChargedSlot = {
  readonly needed: Minutes;
  readonly charged: Minutes;
  /** the sum of the lines, each rounded half up to the coin */
  readonly hire: Minor;
  readonly working: readonly WorkingLine[];
};

/** What one session in the hall is charged on its date: methods 2. Minutes are whole and not negative. */
export function chargedSlot(terms: HireTerms, slot: SlotMinutes, date: Temporal.PlainDate): ChargedSlot {
  const times = slotTimes(terms, slot);
  const rate = hireRateOn(terms, date);
  const amounts = slotAmounts(terms, times, rate, date);
  const hire = [amounts.hall, amounts.setUp, amounts.heating]
    .filter((amount) => amount !== null)
    .reduce((sum, amount) => sum + roundToMinor(amount), 0);
  return {
    needed: minutes(times.needed),
    charged: minutes(times.charged),
    hire: minor(hire),
    working: chargedSlotWorking(terms, slot, times, rate, amounts),
  };
}

/**
 * Free minutes before eat only set-up and free minutes after only pack-down: a hall that lets her in
 * half an hour early does not give half an hour of the class away.
 */
function slotTimes(terms: HireTerms, slot: SlotMinutes): SlotTimes {
  const setUp = Math.max(0, slot.setUp - terms.freeBefore);
  const packDown = Math.max(0, slot.packDown - terms.freeAfter);
  const needed = setUp + slot.class + packDown;
  const stepped = Math.ceil(needed / terms.increment) * terms.increment;
  return { setUp, packDown, needed, stepped, charged: Math.max(terms.minimum, stepped) };
}

/** Minutes added by rounding or by the minimum are billed at the full rate: only set-up carries its factor. */
function slotAmounts(
  terms: HireTerms,
  times: SlotTimes,
  rate: HireRateOnDate,
  date: Temporal.PlainDate,
): SlotAmounts {
  const ownSetUp = rate.price.per === "hour" && !terms.setUpFactor.equals(1) && times.setUp > 0;
  const full = hours(times.charged - (ownSetUp ? times.setUp : 0));
  const { heating } = terms;
  return {
    hall: rate.price.per === "hour" ? rate.amount.mul(full) : rate.amount,
    setUp: ownSetUp ? rate.amount.mul(hours(times.setUp)).mul(terms.setUpFactor) : null,
    heating: heating?.months.includes(date.month) === true ? hours(times.charged).mul(heating.perHour) : null,
  };
}

function hours(count: number): Fraction {
  return new Fraction(count, 60);
}
