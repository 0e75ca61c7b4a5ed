import type { KeptPosting } from "#app/ports";
import { type MeansOfPaying, meansOfPaying, type SessionState } from "#core/roll";

/** What came in by each means, in minor units, less what went back. */
export type Takings = Readonly<Record<MeansOfPaying, number>>;

/** Money for one session: for places, and from whoever was let in when no mat was left. */
export function takingsOf({ places, cameOver }: SessionState): Takings {
  const parts = [
    ...places.flatMap(({ paid }) => paid),
    ...cameOver.flatMap(({ paid }) => (paid === null ? [] : [paid])),
  ];
  const sum = (means: MeansOfPaying) =>
    parts.reduce((total, { amount, by }) => (by === means ? total + amount : total), 0);
  return { cash: sum("cash"), card: sum("card"), bank: sum("bank") };
}

/** Money of the lines of the books in one currency. */
export function takingsIn(lines: readonly KeptPosting[], currency: string): Takings {
  const sum = (means: MeansOfPaying) =>
    lines
      .filter(({ account, commodity }) => account === means && commodity === currency)
      .reduce((total, { amount }) => total + amount, 0);
  return { cash: sum("cash"), card: sum("card"), bank: sum("bank") };
}

export function totalOf(takings: Takings): number {
  return meansOfPaying.reduce((total, means) => total + takings[means], 0);
}

/** The box should hold the float and the cash; `over` is how much more is in it, below nought how much less. */
export function cashCount(asked: {
  readonly float: number;
  readonly cash: number;
  readonly counted: number;
}) {
  const expected = asked.float + asked.cash;
  return { expected, over: asked.counted - expected };
}
