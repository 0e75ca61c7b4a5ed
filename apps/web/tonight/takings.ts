import type { Takings as DayTakings } from "#core/books";
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

/** A day of the books as its takings by means: what came in for classes less what went back. */
export function takingsIn({ means }: DayTakings): Takings {
  const of = (asked: MeansOfPaying) => {
    const row = means.find((it) => it.means === asked);
    return row === undefined ? 0 : row.taken - row.givenBack;
  };
  return { cash: of("cash"), card: of("card"), bank: of("bank") };
}

export function totalOf(takings: Takings): number {
  return meansOfPaying.reduce((total, means) => total + takings[means], 0);
}
