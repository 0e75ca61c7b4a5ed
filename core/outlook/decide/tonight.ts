// 13 booked, 11 expected, 7.70 left by each, hall 27.00 past its notice, cover 35.00: cover 22.70, cancel −27.00.

/** Amounts in minor units; the hall is charged either way once its notice has run out. */
export type Evening = {
  /** who is expected of those booked */
  readonly expected: number;
  /** y − v */
  readonly margin: number;
  readonly hall: number;
  readonly hallPastNotice: boolean;
  /** what a cancelled evening costs beyond the hall: refunds, goodwill as she feels it */
  readonly cancelling: number;
};

export type Choice = { readonly does: number; readonly cancels: number };

/**
 * Run a thin class or not: only what can still be avoided counts, so a hall that is charged anyway is on both sides.
 * `avoidable` is travel, music and what her own evening is worth to her. Method: trade F15.
 */
export function runTonight(evening: Evening & { readonly avoidable: number }): Choice {
  const { expected, margin, hall, avoidable } = evening;
  return { does: expected * margin - hall - avoidable, cancels: cancelled(evening) };
}

/** Somebody else teaches it for a fee, or it is cancelled: E[n](y − v) − hall − fee. Method: trade F17. */
export function coverOrCancel(evening: Evening & { readonly fee: number }): Choice {
  const { expected, margin, hall, fee } = evening;
  return { does: expected * margin - hall - fee, cancels: cancelled(evening) };
}

function cancelled({ hall, hallPastNotice, cancelling }: Evening): number {
  return 0 - (hallPastNotice ? hall : 0) - cancelling;
}
