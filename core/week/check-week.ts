import { exactNumber, roundToMinor } from "#core/words";
import type { Candidate, Week } from "./week-types.ts";

/** What a choice of candidates comes to, and what it breaks: counted from the document, not from the programme. */
export type CountedWeek = {
  readonly faults: readonly string[];
  /** coins a year: contributions less travel, and the price of wishes not met */
  readonly earns: number;
  readonly wishes: number;
  readonly classes: number;
  readonly days: number;
  readonly evenings: number;
  /** from door to door, preparation too, in a week in which all is held */
  readonly minutes: number;
  readonly walks: readonly DayWalk[];
};

/** One day as it goes; `stops` in the order of time. */
export type DayWalk = {
  readonly weekday: number;
  readonly leaves: number;
  readonly home: number;
  readonly stops: readonly Stop[];
};

export type Stop = {
  readonly candidate: number;
  /** she was at home before it */
  readonly fromHome: boolean;
  /** between the one before it and this, in minutes since midnight; null where she goes straight on, or it is the first */
  readonly atHome: { readonly from: number; readonly until: number } | null;
  readonly travel: number;
  readonly km: number;
  readonly waiting: number;
};

/** Names every limit that the choice breaks; nothing where it is sound. */
export function checkWeek(week: Week, chosen: readonly number[]): readonly string[] {
  return countWeek(week, chosen).faults;
}

export function countWeek(week: Week, chosen: readonly number[]): CountedWeek {
  const faults: string[] = [];
  const walks = [1, 2, 3, 4, 5, 6, 7].flatMap((day) => walkOf(week, chosen, day, faults));
  const { limits } = week;
  const evenings = walks.filter((walk) => isEvening(week, walk)).length;
  for (const [at, one] of week.candidates.entries())
    if (one.fixed && !chosen.includes(at)) faults.push(`${one.name} is promised and left out`);
  if (chosen.length > (limits.classesAWeek ?? Infinity)) faults.push(`${chosen.length} classes a week`);
  if (evenings > (limits.evenings ?? Infinity)) faults.push(`${evenings} evenings`);
  if (7 - walks.length < limits.freeDays) faults.push(`${7 - walks.length} free days`);
  faults.push(...restFaults(week, walks), ...busyFaults(week, walks));
  const earned = chosen.reduce((sum, at) => sum + yearly(candidateAt(week, at)), 0);
  return {
    faults,
    earns: earned - walks.reduce((sum, walk) => sum + travelCost(week, walk), 0),
    wishes: wishesOf(week, chosen, walks),
    classes: chosen.length,
    days: walks.length,
    evenings,
    minutes: walks.reduce((sum, walk) => sum + walkMinutes(week, walk), 0),
    walks,
  };
}

function candidateAt(week: Week, at: number): Candidate {
  const one = week.candidates[at];
  if (one === undefined) throw new RangeError(`no candidate ${at}`);
  return one;
}

function yearly({ contribution, sessions }: Candidate): number {
  return contribution * sessions;
}

function walkOf(week: Week, chosen: readonly number[], day: number, faults: string[]): readonly DayWalk[] {
  const order = chosen
    .filter((at) => candidateAt(week, at).weekday === day)
    .sort((one, other) => candidateAt(week, one).accessFrom - candidateAt(week, other).accessFrom);
  const [first, last] = [order[0], order.at(-1)];
  if (first === undefined || last === undefined) return [];
  const { limits } = week;
  if (order.length > (limits.classesADay ?? Infinity)) faults.push(`${order.length} classes on day ${day}`);
  const stops = order.map((at, place) => stopAt(week, at, order[place - 1], faults));
  let run = 0;
  for (const [place, stop] of stops.entries()) {
    const free = place === 0 || stop.fromHome ? freeBefore(week, order[place - 1], stop) : stop.waiting;
    run = place > 0 && free < limits.breakMinutes ? run + 1 : 1;
    if (run > (limits.backToBack ?? Infinity)) faults.push(`${run} classes in a row on day ${day}`);
  }
  const out = way(week, week.home, candidateAt(week, first).place);
  const leaves =
    candidateAt(week, first).accessFrom -
    out.minutes -
    spare(week, week.home, candidateAt(week, first).place);
  const home =
    candidateAt(week, last).accessUntil + way(week, candidateAt(week, last).place, week.home).minutes;
  return [{ weekday: day, leaves, home, stops }];
}

/** Minutes at home before the stop, or any number of them before the first of the day. */
function freeBefore(week: Week, before: number | undefined, { candidate, travel }: Stop): number {
  if (before === undefined) return Infinity;
  const [from, to] = [candidateAt(week, before), candidateAt(week, candidate)];
  return to.accessFrom - from.accessUntil - travel - spare(week, week.home, to.place);
}

function stopAt(week: Week, at: number, before: number | undefined, faults: string[]): Stop {
  const one = candidateAt(week, at);
  if (before === undefined) {
    const out = way(week, week.home, one.place);
    return { candidate: at, fromHome: true, atHome: null, travel: out.minutes, km: out.km, waiting: 0 };
  }
  const last = candidateAt(week, before);
  const gap = one.accessFrom - last.accessUntil;
  const [back, out] = [way(week, last.place, week.home), way(week, week.home, one.place)];
  const there = back.minutes + out.minutes;
  const early = spare(week, week.home, one.place);
  if (gap - there - early >= week.homeBetween) {
    const atHome = { from: last.accessUntil + back.minutes, until: one.accessFrom - out.minutes - early };
    return { candidate: at, fromHome: true, atHome, travel: there, km: back.km + out.km, waiting: 0 };
  }
  const on = way(week, last.place, one.place);
  if (gap < on.minutes + spare(week, last.place, one.place))
    faults.push(`no time from ${last.name} to ${one.name}`);
  return {
    candidate: at,
    fromHome: false,
    atHome: null,
    travel: on.minutes,
    km: on.km,
    waiting: gap - on.minutes,
  };
}

function way(week: Week, from: number, to: number): { readonly minutes: number; readonly km: number } {
  const found = week.ways[from]?.[to];
  if (found == null) throw new RangeError(`no way from ${from} to ${to}`);
  return found;
}

function spare(week: Week, from: number, to: number): number {
  return from === to ? 0 : week.limits.buffer;
}

function isEvening(week: Week, { stops }: DayWalk): boolean {
  return stops.some(({ candidate }) => candidateAt(week, candidate).end > week.limits.eveningFrom);
}

function restFaults(week: Week, walks: readonly DayWalk[]): readonly string[] {
  return walks.flatMap((walk) => {
    const next = walks.find(({ weekday }) => weekday === (walk.weekday % 7) + 1);
    if (next === undefined) return [];
    const rest = next.leaves + 1440 - walk.home;
    return rest < week.limits.restMinutes ? [`${rest} minutes of rest after day ${walk.weekday}`] : [];
  });
}

/** What is fixed besides and finds her away from home. The days are walked again, in minutes of the whole week. */
function busyFaults(week: Week, walks: readonly DayWalk[]): readonly string[] {
  const away = walks.flatMap((walk) => {
    const turns = walk.stops.flatMap(({ atHome }) => (atHome === null ? [] : [atHome.from, atHome.until]));
    const times = [walk.leaves, ...turns, walk.home].map((minute) => (walk.weekday - 1) * 1440 + minute);
    return times.flatMap((from, at) => (at % 2 === 0 ? [{ from, until: times[at + 1] ?? from }] : []));
  });
  return week.commitments.flatMap(({ name, weekday, from, until }) => {
    const [starts, ends] = [(weekday - 1) * 1440 + from, (weekday - 1) * 1440 + until];
    const hit = away.some((span) =>
      [-WEEK, 0, WEEK].some((turn) => span.from + turn < ends && span.until + turn > starts),
    );
    return hit ? [`${name} is not kept free`] : [];
  });
}

const WEEK = 7 * 1440;

/** Each leg of the day to the coin, as often a year as the busier of the two classes at its ends. */
function travelCost(week: Week, { stops }: DayWalk): number {
  const legs = stops.map(({ candidate, travel, waiting, km }, place) => {
    const before = stops[place - 1]?.candidate;
    const here = candidateAt(week, candidate).sessions;
    const times = before === undefined ? here : Math.max(here, candidateAt(week, before).sessions);
    return coins(week, km, travel + waiting, times);
  });
  const last = candidateAt(week, stops.at(-1)?.candidate ?? -1);
  const back = way(week, last.place, week.home);
  return legs.reduce((sum, leg) => sum + leg, coins(week, back.km, back.minutes, last.sessions));
}

function coins(week: Week, km: number, minutes: number, times: number): number {
  const byWay = exactNumber(km).mul(times).mul(week.perKm);
  const byTime = exactNumber(minutes).mul(times).mul(week.perHour).div(60);
  return roundToMinor(byWay.add(byTime));
}

function walkMinutes(week: Week, { stops }: DayWalk): number {
  const last = candidateAt(week, stops.at(-1)?.candidate ?? -1);
  const out = stops.reduce((sum, { candidate, travel, waiting }) => {
    const one = candidateAt(week, candidate);
    return sum + travel + waiting + one.accessUntil - one.accessFrom + one.preparation;
  }, 0);
  return out + way(week, last.place, week.home).minutes;
}

function wishesOf(week: Week, chosen: readonly number[], walks: readonly DayWalk[]): number {
  return week.wishes.reduce((sum, wish) => {
    switch (wish.kind) {
      case "day-free":
        return sum + (walks.some(({ weekday }) => weekday === wish.weekday) ? wish.price : 0);
      case "evening-free": {
        const that = walks.some((walk) => walk.weekday === wish.weekday && isEvening(week, walk));
        return sum + (that ? wish.price : 0);
      }
      case "rather-not":
        return sum + (chosen.includes(wish.candidate) ? wish.price : 0);
      case "fewer-classes":
        return sum + Math.max(0, chosen.length - wish.than) * wish.price;
    }
  }, 0);
}
