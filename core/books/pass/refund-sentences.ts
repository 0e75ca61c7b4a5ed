import type { Writer } from "#core/words";
import { dayNumberOf } from "#kernels/calendar";
import type { PassState } from "./pass-state.ts";
import type { RefundFound } from "./refund-of.ts";

type Found = Omit<RefundFound, "sentences">;

/** Both amounts first, then what to weigh: fairness, what is unpaid, the first fourteen days, who decides. */
export function refundSentences(
  state: PassState,
  found: Found,
  on: string,
  writer: Writer,
): readonly string[] {
  return [
    amountsSentence(state, found, writer),
    fairnessSentence(state, found, writer),
    ...unpaidSentence(state, found, writer),
    ...earlySentence(state, on),
  ];
}

function amountsSentence(state: PassState, { byShares, byRule, classes }: Found, writer: Writer): string {
  const say = (amount: number) => writer.money(amount, state.currency);
  const what = state.form === "block" ? "sessions" : "classes";
  const main = `For ${classes} of ${state.size} ${what}, ${say(byShares.amount)} would go back by equal shares`;
  if (byRule === null) return `${main}.`;
  if (byRule.amount === byShares.amount) return `${main}, and as much by the written rule.`;
  return `${main}; the written rule says another amount, ${say(byRule.amount)}.`;
}

// consumer guidance on unfair terms: keep only the real loss; a term that keeps everything may not bind
function fairnessSentence({ currency }: PassState, { byShares, byRule }: Found, writer: Writer): string {
  const advice = "Take advice where you are: a consumer adviser or your insurer's legal line.";
  if (byRule === null || byRule.amount === byShares.amount)
    return `Keeping more than your real loss, or refusing to give anything back, may be unfair. ${advice}`;
  if (byRule.amount > byShares.amount)
    return `The written rule gives more than equal shares, and what was promised in writing stands. ${advice}`;
  const more = writer.money(byShares.amount - byRule.amount, currency);
  return `The rule keeps ${more} more than the share of the classes taken. A rule that keeps more than your real loss, or refuses to give anything back, may be unfair and not bind the holder. ${advice}`;
}

function unpaidSentence(
  { unpaid, currency }: PassState,
  { byShares }: Found,
  writer: Writer,
): readonly string[] {
  if (unpaid === 0) return [];
  const still = writer.money(unpaid, currency);
  const after = writer.money(unpaid - byShares.letGo, currency);
  const paidOut = writer.money(byShares.paidOut, currency);
  return [
    `${still} of the price is still unpaid: by equal shares that falls to ${after}, and ${paidOut} is paid out.`,
  ];
}

const EARLY_DAYS = 14;

function earlySentence({ form, soldOn }: PassState, on: string): readonly string[] {
  const days = (dayNumberOf(on) ?? 0) - (dayNumberOf(soldOn) ?? 0);
  if (form === "block" || days > EARLY_DAYS) return [];
  const sold = days === 0 ? "today" : `${days} ${days === 1 ? "day" : "days"} ago`;
  return [
    `It was sold ${sold}. A pass for no fixed date that was bought at a distance can in many places be given back within 14 days, less the classes taken: check the local law.`,
  ];
}
