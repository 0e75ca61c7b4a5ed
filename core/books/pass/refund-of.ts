import { plainWriter, type WorkingLine, type Writer } from "#core/words";
import { splitRefund } from "./apply-pass-event.ts";
import { shareOfNext } from "./pass-entries.ts";
import { moneyKept, type PassState } from "./pass-state.ts";
import { refundSentences } from "./refund-sentences.ts";

/**
 * What giving classes back would bring, by both ways of reckoning. A pass of ten at 85.00 with four used: by equal
 * shares 85.00 × 6 ÷ 10 = 51.00; by a written rule that counts classes taken at the single price,
 * 85.00 − 4 × 10.00 = 45.00. Both stand side by side with their workings; she decides, with advice.
 */
export type RefundFound = {
  readonly classes: number;
  readonly currency: string;
  readonly byShares: RefundWay;
  /** null when no rule was agreed at the sale, or only a part of what is left is given back */
  readonly byRule: RefundWay | null;
  /** the larger of the two: what was promised in writing stands, and keeping more than the loss may not */
  readonly suggested: RefundWay;
  readonly sentences: readonly string[];
};

export type RefundWay = {
  readonly amount: number;
  /** of the amount, what only lets go of a debt, and what is really paid out */
  readonly letGo: number;
  readonly paidOut: number;
  readonly working: readonly WorkingLine[];
};

/** So many of the classes left, given back on a day. Throws when more are given back than are left. */
export function refundOf(
  state: PassState,
  { classes, on }: { readonly classes: number; readonly on: string },
  writer: Writer,
): RefundFound {
  if (!Number.isInteger(classes) || classes < 1 || classes > state.left)
    throw new RangeError(`${classes} given back of ${state.left} left`);
  const byShares = sharesWay(state, classes);
  const byRule = ruleWay(state, classes);
  const suggested = byRule !== null && byRule.amount > byShares.amount ? byRule : byShares;
  const found = { classes, currency: state.currency, byShares, byRule, suggested };
  return { ...found, sentences: refundSentences(state, found, on, writer) };
}

function sharesWay(state: PassState, classes: number): RefundWay {
  const { size, price } = state;
  const owed = shareOfNext(state, classes);
  const sum = `${coins(state, price)} × ${classes} ÷ ${size}`;
  return way(state, owed, [{ label: sharesLabel(state, classes), sum, amount: coins(state, owed) }]);
}

function ruleWay(state: PassState, classes: number): RefundWay | null {
  const { terms, price, used, letGo, paidBack, left } = state;
  if (terms.perClassOnRefund === null || classes !== left) return null;
  const taken = used.length * terms.perClassOnRefund;
  const before = letGo + paidBack;
  const amount = Math.max(0, price - taken - before);
  const takenSum = `${used.length} × ${coins(state, terms.perClassOnRefund)}`;
  return way(state, amount, [
    { label: "Price", sum: "", amount: coins(state, price) },
    { label: "Less the classes taken, by the written rule", sum: takenSum, amount: coins(state, -taken) },
    ...(before === 0
      ? []
      : [{ label: "Less what went back before", sum: "", amount: coins(state, -before) }]),
    {
      label: "Back by the written rule",
      sum: "never below nought",
      amount: coins(state, amount),
      total: true,
    },
  ]);
}

/** No more goes back than came in or is still to be paid. */
function way(state: PassState, amount: number, working: readonly WorkingLine[]): RefundWay {
  const most = state.unpaid + moneyKept(state);
  const back = Math.min(amount, most);
  const cut = {
    label: "At most what came in or is unpaid",
    sum: "",
    amount: coins(state, most),
    total: true,
  };
  return {
    amount: back,
    ...splitRefund(state.unpaid, back),
    working: back === amount ? working : [...working, cut],
  };
}

function sharesLabel({ size, form }: PassState, classes: number): string {
  const what = form === "block" ? "sessions" : "classes";
  return `Back by equal shares: ${classes} of ${size} ${what}`;
}

/** "51.00", without its currency. */
function coins({ currency }: PassState, amount: number): string {
  return plainWriter("en-GB").money(amount, currency).replace(` ${currency}`, "");
}
