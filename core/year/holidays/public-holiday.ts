import type { Temporal } from "temporal-polyfill";

/**
 * Where holidays are counted: the parts of the United Kingdom, the federal holidays of the United States, and those
 * of the state of Illinois; "none" counts none.
 */
export const regions = ["GB-ENG", "GB-WLS", "GB-SCT", "GB-NIR", "US", "US-IL", "none"] as const;
export type Region = (typeof regions)[number];

/**
 * { date: 28 December 2026, name: "Boxing Day", standsFor: 26 December 2026 }: a substitute day for a holiday at a
 * weekend. { date: 26 December 2026, movedTo: 28 December 2026 }: the day itself, which official lists leave out but
 * on which nobody teaches either. At most one of the two is there.
 */
export type PublicHoliday = {
  readonly date: Temporal.PlainDate;
  readonly name: string;
  readonly standsFor?: Temporal.PlainDate;
  readonly movedTo?: Temporal.PlainDate;
};
