import { guessedWay } from "./guessed-way.ts";
import type { WeekDocument } from "./week-document.ts";

/** One way as the document tells it, for a list to be filled in. */
export type WayTold = {
  /** ids of places */
  readonly from: string;
  readonly to: string;
  /** position in the document's travel; null where nobody stated it */
  readonly stated: number | null;
  /** null where it is neither stated nor to be guessed from the map */
  readonly minutes: number | null;
  readonly km: number | null;
  /** worked out from the map */
  readonly guess: boolean;
};

/**
 * Every way that the week needs, and every other that is stated, in the order of the places, home first; one for both
 * directions unless the way back is stated too. Takes any document: places that are none are left out.
 */
export function waysTold(document: WeekDocument): readonly WayTold[] {
  const ids = [document.home, ...document.places.map(({ id }) => id).filter((id) => id !== document.home)];
  return ids.flatMap((from, at) => ids.slice(at + 1).flatMap((to) => between(document, from, to)));
}

function between(document: WeekDocument, from: string, to: string): readonly WayTold[] {
  const stated = [statedWay(document, from, to), statedWay(document, to, from)].flatMap((it) =>
    it === null ? [] : [it],
  );
  if (stated.length > 0) return stated;
  return isNeeded(document, from, to) ? [guessed(document, from, to)] : [];
}

function statedWay({ travel }: WeekDocument, from: string, to: string): WayTold | null {
  const at = travel.findIndex((it) => it.from === from && it.to === to);
  const way = travel[at];
  return way === undefined ? null : { from, to, stated: at, minutes: way.minutes, km: way.km, guess: false };
}

/** Between home and every place of a candidate, and between any two places of candidates on one day. */
function isNeeded({ home, candidates }: WeekDocument, from: string, to: string): boolean {
  const days = (place: string) => candidates.filter((it) => it.place === place).map((it) => it.weekday);
  if (from === home) return days(to).length > 0;
  const there = new Set(days(to));
  return days(from).some((day) => there.has(day));
}

function guessed({ places, estimate }: WeekDocument, from: string, to: string): WayTold {
  const [here, there] = [from, to].map((id) => places.find((it) => it.id === id)?.at);
  if (here === undefined || there === undefined)
    return { from, to, stated: null, minutes: null, km: null, guess: false };
  return { from, to, stated: null, ...guessedWay(here, there, estimate) };
}
