import { exactNumber, roundToMinor } from "#core/words";
import { keepsFree } from "./keeps-free.ts";
import type { Candidate, Way, Week } from "./week-types.ts";

// Home → Tuesday 17:30 at Quay Street: 25 minutes and 18 km before 17:10 make leaving 16:45; at 0.40 a km and 40
// sessions the way costs 40 × 18 × 0.40 = 288.00 a year. A day is a path: home, candidates by time, home.

/** A piece of a day: from one candidate, or home (null), straight to the next. */
export type Arc = {
  readonly weekday: number;
  /** positions in the week's candidates; null is home */
  readonly from: number | null;
  readonly to: number | null;
  /** coins a year, for kilometres and for hours of travel and waiting */
  readonly cost: number;
  readonly km: number;
  /** so often a year */
  readonly times: number;
  /** two candidates with home between them */
  readonly byHome: boolean;
  /** travelling and waiting, a week */
  readonly minutes: number;
  /** minutes since midnight when she leaves home, or is home again; null between two candidates */
  readonly homeAt: number | null;
  /** no break between the two classes */
  readonly tight: boolean;
};

/**
 * Every piece that a day may be made of: home and back for each candidate, and all pairs that time allows. A piece that
 * keeps her from home while she is not free is none.
 */
export function weekArcs(week: Week): readonly Arc[] {
  const all = week.candidates.flatMap((one, at) => [
    fromHome(week, one, at),
    toHome(week, one, at),
    ...week.candidates.flatMap((next, to) => between(week, one, next, at, to)),
  ]);
  return all.filter((arc) => keepsFree(week, arc));
}

function fromHome(week: Week, one: Candidate, at: number): Arc {
  const way = wayOf(week, week.home, one.place);
  return {
    weekday: one.weekday,
    from: null,
    to: at,
    cost: costAYear(week, way.km, way.minutes, one.sessions),
    km: way.km,
    times: one.sessions,
    byHome: false,
    minutes: way.minutes,
    homeAt: one.accessFrom - way.minutes - bufferOn(week, week.home, one.place),
    tight: false,
  };
}

function toHome(week: Week, one: Candidate, at: number): Arc {
  const way = wayOf(week, one.place, week.home);
  return {
    weekday: one.weekday,
    from: at,
    to: null,
    cost: costAYear(week, way.km, way.minutes, one.sessions),
    km: way.km,
    times: one.sessions,
    byHome: false,
    minutes: way.minutes,
    homeAt: one.accessUntil + way.minutes,
    tight: false,
  };
}

/** She goes home between when she has the stated minutes there; else straight on, where there is time for the way. */
function between(week: Week, one: Candidate, next: Candidate, at: number, to: number): readonly Arc[] {
  if (at === to || one.weekday !== next.weekday || one.accessUntil > next.accessFrom) return [];
  const gap = next.accessFrom - one.accessUntil;
  const sessions = Math.max(one.sessions, next.sessions);
  const shared = { weekday: one.weekday, from: at, to, homeAt: null, times: sessions };
  const [back, out] = [wayOf(week, one.place, week.home), wayOf(week, week.home, next.place)];
  const atHome = gap - back.minutes - out.minutes - bufferOn(week, week.home, next.place);
  if (atHome >= week.homeBetween) {
    const minutes = back.minutes + out.minutes;
    const km = back.km + out.km;
    const cost = costAYear(week, km, minutes, sessions);
    return [{ ...shared, cost, km, minutes, byHome: true, tight: atHome < week.limits.breakMinutes }];
  }
  const way = wayOf(week, one.place, next.place);
  if (way.minutes + bufferOn(week, one.place, next.place) > gap) return [];
  const tight = gap - way.minutes < week.limits.breakMinutes;
  const cost = costAYear(week, way.km, gap, sessions);
  return [{ ...shared, cost, km: way.km, minutes: gap, byHome: false, tight }];
}

/** Throws where no way is known: reading a week has looked at all that are needed. */
export function wayOf(week: Week, from: number, to: number): Way {
  const way = week.ways[from]?.[to];
  if (way == null) throw new RangeError(`no way from place ${from} to place ${to}`);
  return way;
}

function bufferOn(week: Week, from: number, to: number): number {
  return from === to ? 0 : week.limits.buffer;
}

/** Whole coins a year for one piece of the way, so that sums of them are exact. */
function costAYear(week: Week, km: number, minutes: number, sessions: number): number {
  const once = exactNumber(km).mul(week.perKm).add(exactNumber(minutes).mul(week.perHour).div(60));
  return roundToMinor(once.mul(sessions));
}
