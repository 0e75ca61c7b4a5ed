import {
  type ExactMinor,
  exactNumberText,
  exactText,
  type Minor,
  moneyText,
  type WorkingLine,
} from "#core/words";
import type { Evening } from "./evening-types.ts";

/**
 * What an evening leaves an hour of her time: 28.48 left, 4.50 of fixed costs, 155 minutes → 9.28.
 * Minor units an hour, exact; null when no time is stated.
 */
export type Hourly = {
  readonly doorToDoor: number;
  readonly perDoorToDoorHour: ExactMinor | null;
  readonly trueHourly: ExactMinor | null;
  readonly working: readonly WorkingLine[];
};

/** Methods 3, trade F3: divided by the time from her door to her door and preparation, not by the class hour. */
export function hourly(evening: Evening, margin: ExactMinor, cost: Minor, contribution: ExactMinor): Hourly {
  const { travel, setUp, class: teaching, packDown, other } = evening.minutes;
  const doorToDoor = travel + setUp + teaching + packDown;
  const share = fixedShare(evening);
  const left = share === null ? contribution : contribution.sub(share);
  const trueHourly = perHour(left, doorToDoor + other);
  return {
    doorToDoor,
    perDoorToDoorHour: perHour(contribution, doorToDoor),
    trueHourly,
    working: [
      contributionLine(evening, margin, cost, contribution),
      ...fixedLines(evening, share),
      {
        label: "Door to door",
        sum: `${travel} travel + ${setUp} set-up + ${teaching} class + ${packDown} pack-down`,
        amount: `${doorToDoor} min`,
      },
      ...(other === 0 ? [] : [{ label: "Preparation and messages", sum: "", amount: `${other} min` }]),
      hourlyLine(evening, left, doorToDoor + other, trueHourly),
    ],
  };
}

/** The part of the year's fixed costs that one session carries; null when none are stated. */
function fixedShare({ fixed }: Evening): ExactMinor | null {
  return fixed === null ? null : fixed.sessions.inverse().mul(fixed.perYear);
}

function perHour(amount: ExactMinor, count: number): ExactMinor | null {
  return count === 0 ? null : amount.mul(60).div(count);
}

function contributionLine(
  { heads, currency }: Evening,
  margin: ExactMinor,
  cost: Minor,
  contribution: ExactMinor,
): WorkingLine {
  const sum = `${exactNumberText(heads)} × ${exactText(margin, currency)} − ${moneyText(cost, currency)}`;
  return { label: "An ordinary evening leaves", sum, amount: exactText(contribution, currency) };
}

function fixedLines({ fixed, currency }: Evening, share: ExactMinor | null): readonly WorkingLine[] {
  if (fixed === null || share === null) return [];
  const sum = `${moneyText(fixed.perYear, currency)} a year ÷ ${exactNumberText(fixed.sessions)} sessions`;
  return [{ label: "Its share of fixed costs", sum, amount: exactText(share, currency) }];
}

function hourlyLine(
  { currency }: Evening,
  left: ExactMinor,
  count: number,
  trueHourly: ExactMinor | null,
): WorkingLine {
  const label = "An hour of your time";
  if (trueHourly === null) return { label, sum: "no time is stated", amount: "", total: true };
  const sum = `${exactText(left, currency)} ÷ ${count} min × 60`;
  return { label, sum, amount: exactText(trueHourly, currency), total: true };
}
