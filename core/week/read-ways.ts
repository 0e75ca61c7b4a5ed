import { bad, good, type Problem, problem, readMinutes, type Result, togetherInOrder } from "#core/words";
import { guessedWay } from "./guessed-way.ts";
import type { WeekDocument } from "./week-document.ts";
import type { Candidate, Place, Way } from "./week-types.ts";

export type Ways = readonly (readonly (Way | null)[])[];

/**
 * The ways between places: as stated, back as forth where only one is; guessed from the map where both ends are on it.
 * Problems: "place-unknown", "travel-twice", "distance-out-of-range" and those of minutes.
 */
export function readWays(document: WeekDocument, places: readonly Place[]): Result<Ways> {
  const index = new Map(places.map(({ id }, at) => [id, at]));
  const stated = togetherInOrder(document.travel.map((_, at) => readOne(document, at, index)));
  if (!stated.ok) return stated;
  const known = new Map<string, Way>();
  const twice: Problem[] = [];
  for (const [at, { from, to, way }] of stated.value.entries()) {
    if (known.has(`${from} ${to}`)) twice.push(travelTwice(at, places[from], places[to]));
    known.set(`${from} ${to}`, way);
  }
  if (twice.length > 0) return bad(...twice);
  return good(
    places.map((_, from) =>
      places.map((_, to) => {
        if (from === to) return { minutes: 0, km: 0, guess: false };
        return known.get(`${from} ${to}`) ?? known.get(`${to} ${from}`) ?? guessed(document, from, to);
      }),
    ),
  );
}

type Stated = { readonly from: number; readonly to: number; readonly way: Way };

function readOne(document: WeekDocument, at: number, index: ReadonlyMap<string, number>): Result<Stated> {
  const travel = document.travel[at];
  if (travel === undefined) throw new RangeError(`no travel ${at}`);
  const place = `travel[${at}]`;
  const [from, to] = [index.get(travel.from), index.get(travel.to)];
  if (from === undefined) return bad(placeUnknown(`${place}.from`, travel.from));
  if (to === undefined) return bad(placeUnknown(`${place}.to`, travel.to));
  const minutes = readMinutes(travel.minutes, `${place}.minutes`);
  if (!minutes.ok) return minutes;
  if (!(travel.km >= 0 && travel.km <= 2000)) {
    const says = `${travel.km} km between two places of one week cannot be meant.`;
    return bad(problem("distance-out-of-range", `${place}.km`, says, "Give kilometres by road, 0 to 2000."));
  }
  return good({ from, to, way: { minutes: minutes.value, km: travel.km, guess: false } });
}

function guessed({ places, estimate }: WeekDocument, from: number, to: number): Way | null {
  const [here, there] = [places[from]?.at, places[to]?.at];
  return here === undefined || there === undefined ? null : guessedWay(here, there, estimate);
}

/** Between home and every place, and between any two with candidates on one day. Problem: "travel-missing". */
export function missingWays(
  ways: Ways,
  places: readonly Place[],
  home: number,
  candidates: readonly Candidate[],
): readonly Problem[] {
  const missing = new Map<string, Problem>();
  const need = (from: number, to: number) => {
    const key = `${Math.min(from, to)} ${Math.max(from, to)}`;
    if (ways[from]?.[to] == null && !missing.has(key))
      missing.set(key, travelMissing(places[from], places[to]));
  };
  for (const one of candidates) {
    need(home, one.place);
    for (const other of candidates) if (one.weekday === other.weekday) need(one.place, other.place);
  }
  return [...missing.values()];
}

function travelMissing(from: Place | undefined, to: Place | undefined): Problem {
  const says = `Nobody says how long it takes between ${from?.name} and ${to?.name}.`;
  return problem("travel-missing", "travel", says, "Add a line with its minutes and kilometres.");
}

function travelTwice(at: number, from: Place | undefined, to: Place | undefined): Problem {
  const says = `The way from ${from?.name} to ${to?.name} is stated twice.`;
  return problem("travel-twice", `travel[${at}]`, says, "Keep one of them.");
}

export function placeUnknown(place: string, id: string): Problem {
  const says = `“${id.slice(0, 40)}” is none of the places of this week.`;
  return problem("place-unknown", place, says, "Add it to the places, or look at its spelling.");
}
