import { hallCancels, hallNotice, usualNotice } from "#core/notice";
import type { CancelReason } from "#core/roll";
import type { Writer } from "#core/words";

export type HallChargeAsked = {
  readonly why: CancelReason;
  readonly zone: string;
  /** ISO instants, UTC: when the session begins, and when the hall is told or has told her */
  readonly starts: string;
  readonly now: string;
  /** the hire of that date, in whole minor units */
  readonly hire: number;
  readonly currency: string;
  /** days before, until which the hall asks nothing; null where her class sheet does not say */
  readonly noticeDays: number | null;
};

/** What a date costs that does not take place, by the notice between her and the hall, and why. */
export type HallCharge = { readonly charged: number; readonly sentence: string };

/** Nothing where the hall takes the date back; else all of it, once its notice is past. Its conditions decide. */
export function hallCharge(asked: HallChargeAsked, writer: Writer): HallCharge {
  const { why, zone, starts, now, hire, currency, noticeDays } = asked;
  const date = { zone, starts, hire, currency };
  if (why === "hall shut") {
    const { payable, sentence } = hallCancels({ ...date, told: now, promised: null }, writer);
    return { charged: payable, sentence };
  }
  const schedule = [{ daysBefore: noticeDays ?? usualDays(), percentBack: 100 }];
  return hallNotice({ ...date, made: now, schedule }, writer);
}

function usualDays(): number {
  if (usualNotice.hall.kind !== "days") throw new Error("a hall's notice is counted in days");
  return usualNotice.hall.days;
}
