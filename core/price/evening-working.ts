import type { ChargedSlot } from "#core/hall";
import {
  type ExactMinor,
  exactNumberText,
  exactText,
  type Minor,
  moneyText,
  type WorkingLine,
} from "#core/words";
import { Fraction } from "fraction.js";
import type { Evening, Payer } from "./evening-types.ts";
import { payerName } from "./payer-key.ts";
import { payerPart } from "./yield.ts";

/** The cost of the evening, line by line; what is nought is left out. */
export function costWorking(evening: Evening, slot: ChargedSlot, cost: Minor): readonly WorkingLine[] {
  const { currency, travelCost, otherCost } = evening;
  const parts = [
    { label: "Hall", amount: slot.hire },
    { label: "Travel", amount: travelCost },
    { label: "Other costs of the evening", amount: otherCost },
  ].filter(({ label, amount }) => label === "Hall" || amount > 0);
  return [
    ...parts.map(({ label, amount }) => ({ label, sum: "", amount: moneyText(amount, currency) })),
    { label: "An evening costs", sum: "", amount: moneyText(cost, currency), total: true },
  ];
}

/** The average that a head brings, one line for each way of paying. */
export function yieldWorking({ payers, currency }: Evening, yielded: ExactMinor): readonly WorkingLine[] {
  const lines = payers.map((payer) => ({
    label: payerName(payer.key),
    sum: `${exactNumberText(payer.share)} × ${priceText(payer, currency)}`,
    amount: exactText(payerPart(payer), currency),
  }));
  return [
    ...lines,
    { label: "One person brings on average", sum: "", amount: exactText(yielded, currency), total: true },
  ];
}

function priceText({ price, classes }: Payer, currency: Evening["currency"]): string {
  const asked = moneyText(price, currency);
  return classes === 1 ? asked : `${asked} ÷ ${classes}`;
}

/** From the average to the heads that pay for the evening. */
export function breakEvenWorking(
  { currency, perHead }: Evening,
  yielded: ExactMinor,
  cost: Minor,
  breakEven: number | null,
): readonly WorkingLine[] {
  const margin = yielded.sub(perHead);
  const each: WorkingLine = {
    label: "One person leaves",
    sum: `${exactText(yielded, currency)} − ${moneyText(perHead, currency)} cost per head`,
    amount: exactText(margin, currency),
  };
  const label = "People who pay for the evening";
  if (breakEven === null) {
    return [each, { label, sum: "one person leaves nothing", amount: "never", total: true }];
  }
  const heads = exactNumberText(new Fraction(cost).div(margin));
  const division = `${moneyText(cost, currency)} ÷ ${exactText(margin, currency)} = ${heads}`;
  const sum = heads === String(breakEven) ? division : `${division}, rounded up`;
  return [each, { label, sum, amount: String(breakEven), total: true }];
}
