import type { Writer } from "#core/words";
import type { PassTerms } from "./pass-event.ts";

/** The terms of a pass as three lines for its card and for the moment it is sold: giving back, pausing, handing on. */
export function termsInWords(
  { perClassOnRefund, pauses, transferable }: PassTerms,
  currency: string,
  writer: Writer,
): readonly string[] {
  return [
    perClassOnRefund === null
      ? "Given back: the share of the classes that are left."
      : `Given back: the price less ${writer.money(perClassOnRefund, currency)} for each class taken.`,
    pauseWords(pauses),
    transferable
      ? "It can be handed on to somebody else, who fills in a health form first."
      : "It is for one person and cannot be handed on.",
  ];
}

function pauseWords(pauses: number | null): string {
  const moves = "the use-by moves by the teaching dates that are missed, and no reason is asked";
  if (pauses === 0) return "It cannot be paused.";
  if (pauses === null) return `It can be paused: ${moves}.`;
  return `It can be paused ${pauses === 1 ? "once" : `${pauses} times`}: ${moves}.`;
}
