import { exactNumberText, exactText, moneyText, type WorkingLine } from "#core/words";
import { Fraction } from "fraction.js";
import { plainDecimal } from "../chance-text.ts";
import { type AmountWriter, coinText } from "../reply.ts";
import type { TargetJson } from "./price-json.ts";
import type { PriceQuestion } from "./price-question.ts";
import type { PriceSums } from "./price-sums.ts";

const ASK_TAX = "What tax takes is an estimate: ask the tax authority.";

/** The price that pays her what she wants for an hour from door to door, after tax; null when it is not asked. */
export function targetJson(
  { target: sums }: PriceSums,
  { target, currency }: PriceQuestion,
  write: AmountWriter,
): TargetJson | null {
  if (target === null) return null;
  const asked = {
    perHour: coinText(new Fraction(target.perHour), currency),
    taxShare: target.taxShare.valueOf(),
  };
  const hour = write(new Fraction(target.perHour), currency);
  if (sums === null) {
    const says = `Nobody can be expected, so no price pays ${hour} an hour.`;
    return { ...asked, yield: null, single: null, says };
  }
  const tax = target.taxShare.equals(0) ? "" : ` after ${exactNumberText(target.taxShare.mul(100))} % tax`;
  const single =
    sums.single === null
      ? ""
      : `; with the same mix and as many people that is a single of ${write(sums.single, currency)}`;
  return {
    ...asked,
    yield: coinText(sums.yield, currency),
    single: sums.single === null ? null : coinText(sums.single, currency),
    says: `For ${hour} an hour from door to door${tax} one person must bring ${write(sums.yield, currency)} on average${single}. ${ASK_TAX}`,
  };
}

/** (C + H·w ÷ (1 − t)) ÷ E[n] + v, line by line. */
export function targetLines(
  { target: sums, heads, yield: brings, single }: PriceSums,
  { target, currency, cost, perHead, doorToDoor }: PriceQuestion,
): readonly WorkingLine[] {
  if (target === null || sums === null || doorToDoor === null) return [];
  const kept = new Fraction(1).sub(target.taxShare);
  const pay = new Fraction(target.perHour).mul(doorToDoor).div(60).div(kept);
  const taxed = kept.equals(1) ? "" : ` ÷ ${exactNumberText(kept)} kept after tax`;
  const expected = plainDecimal(heads.expectedHeads, 4);
  const text = (exact: Fraction): string => exactText(exact, currency);
  return [
    {
      label: "Your pay for the evening, before tax",
      sum: `${doorToDoor} min ÷ 60 × ${moneyText(target.perHour, currency)}${taxed}`,
      amount: text(pay),
    },
    { label: "An evening costs", sum: "", amount: moneyText(cost, currency) },
    {
      label: "Of each person who can be expected",
      sum: `(${text(pay)} + ${moneyText(cost, currency)}) ÷ ${expected}`,
      amount: text(sums.yield.sub(perHead)),
    },
    {
      label: "One person must bring",
      sum: `with ${moneyText(perHead, currency)} cost per head`,
      amount: text(sums.yield),
      total: true,
    },
    ...(sums.single === null || single === null
      ? []
      : [
          {
            label: "As a single, the mix as it is",
            sum: `${text(sums.yield)} × ${text(single)} ÷ ${text(brings)}`,
            amount: text(sums.single),
          },
        ]),
  ];
}
