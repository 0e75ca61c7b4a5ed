import { exactNumberText, moneyText, roundToMinor, type WorkingLine } from "#core/words";
import { Fraction } from "fraction.js";
import type { SlotAmounts, SlotMinutes, SlotTimes } from "./charged-slot-types.ts";
import type { HireRateOnDate } from "./hire-rate.ts";
import type { HireTerms } from "./hire-terms.ts";

/** The sum behind a charged slot, one line for each figure that a clerk would ask about. */
export function chargedSlotWorking(
  terms: HireTerms,
  slot: SlotMinutes,
  times: SlotTimes,
  rate: HireRateOnDate,
  amounts: SlotAmounts,
): readonly WorkingLine[] {
  return [
    neededLine(terms, slot, times),
    chargedLine(terms, times),
    ...unusedBandLines(terms),
    ...moneyLines(terms, times, rate, amounts),
  ];
}

function neededLine(terms: HireTerms, slot: SlotMinutes, times: SlotTimes): WorkingLine {
  const setUp = withFree(slot.setUp, terms.freeBefore, "set-up");
  const packDown = withFree(slot.packDown, terms.freeAfter, "pack-down");
  return {
    label: "Time needed",
    sum: `${setUp} + ${slot.class} class + ${packDown}`,
    amount: `${times.needed} min`,
  };
}

function withFree(count: number, free: number, what: string): string {
  const taken = Math.min(count, free);
  return taken === 0 ? `${count} ${what}` : `(${count} ${what} − ${taken} free)`;
}

function chargedLine(terms: HireTerms, times: SlotTimes): WorkingLine {
  const amount = `${times.charged} min`;
  if (terms.minimum > times.stepped) {
    return { label: "Time charged", sum: `${times.needed} min, at least ${terms.minimum}`, amount };
  }
  const sum =
    times.stepped === times.needed
      ? `${times.needed} min as it is`
      : `${times.needed} min, up to the next ${terms.increment}`;
  return { label: "Time charged", sum, amount };
}

function unusedBandLines(terms: HireTerms): readonly WorkingLine[] {
  if (terms.bands.length === 0 || terms.hoursPerYear !== null) return [];
  return [{ label: "Volume bands", sum: "not used: hours a year are not known", amount: "" }];
}

function moneyLines(
  terms: HireTerms,
  times: SlotTimes,
  rate: HireRateOnDate,
  amounts: SlotAmounts,
): readonly WorkingLine[] {
  const setUp = amounts.setUp === null ? 0 : times.setUp;
  const asked = rateText(terms, rate);
  const hall = rate.price.per === "hour" ? `${hoursText(times.charged - setUp)} × ${asked}` : asked;
  const lines = [line(terms, `Hall, by the ${rate.price.per}`, hall, amounts.hall)];
  if (amounts.setUp !== null) {
    const sum = `${hoursText(setUp)} × ${asked} × ${exactNumberText(terms.setUpFactor)}`;
    lines.push(line(terms, "Set-up at its own rate", sum, amounts.setUp));
  }
  if (amounts.heating !== null && terms.heating !== null) {
    const sum = `${hoursText(times.charged)} × ${moneyText(terms.heating.perHour, terms.currency)}`;
    lines.push(line(terms, "Heating", sum, amounts.heating));
  }
  return lines;
}

function line(terms: HireTerms, label: string, sum: string, exact: Fraction): WorkingLine {
  const rounded = exact.d === 1n ? "" : ", to the nearest coin";
  return { label, sum: `${sum}${rounded}`, amount: moneyText(roundToMinor(exact), terms.currency) };
}

/** "14.00 × 1.5 at the weekend (rate since 2027-01-01)" */
function rateText(terms: HireTerms, rate: HireRateOnDate): string {
  const weekend = rate.weekend === null ? "" : ` × ${exactNumberText(rate.weekend)} at the weekend`;
  const band =
    rate.band === null
      ? ""
      : ` × ${exactNumberText(rate.band.factor)} from ${exactNumberText(rate.band.fromHours)} h a year`;
  const since = rate.since === null ? "" : ` (rate since ${rate.since.toString()})`;
  return `${moneyText(rate.price.amount, terms.currency)}${since}${weekend}${band}`;
}

/** Hours with at most two decimals as a decimal, else as the division that a pencil can do: "95 ÷ 60 h". */
function hoursText(count: number): string {
  const hours = new Fraction(count, 60);
  return hours.mul(100).d === 1n ? `${exactNumberText(hours)} h` : `${count} ÷ 60 h`;
}
