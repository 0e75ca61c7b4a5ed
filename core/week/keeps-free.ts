import type { Arc } from "./week-arcs.ts";
import type { Candidate, Way, Week } from "./week-types.ts";

// Wednesday 15:00 to 16:30 is not free. A class there until 14:20 and 30 minutes home are well; a class until 14:40 is
// not, and neither is going straight on from a class at 13:00 to one at 18:00.

type Span = { readonly from: number; readonly until: number };

/** Whether a piece of a day leaves all that is fixed besides alone: she is at home from its beginning to its end. */
export function keepsFree(week: Week, arc: Arc): boolean {
  if (week.commitments.length === 0) return true;
  return awayOn(week, arc).every((span) => isFree(week, arc.weekday, span));
}

/** When she is away from home on a piece of a day, the class at its end with it. */
function awayOn(week: Week, { from, to, homeAt, byHome }: Arc): readonly Span[] {
  const [before, after] = [candidateAt(week, from), candidateAt(week, to)];
  if (before === null || after === null) {
    const home = homeAt ?? 0;
    return [{ from: before?.accessUntil ?? home, until: after?.accessUntil ?? home }];
  }
  if (!byHome) return [{ from: before.accessUntil, until: after.accessUntil }];
  const back = wayOf(week, before.place, week.home).minutes;
  const out = wayOf(week, week.home, after.place).minutes + week.limits.buffer;
  const early = after.place === week.home ? 0 : out;
  return [
    { from: before.accessUntil, until: before.accessUntil + back },
    { from: after.accessFrom - early, until: after.accessUntil },
  ];
}

function candidateAt({ candidates }: Week, at: number | null): Candidate | null {
  return at === null ? null : (candidates[at] ?? null);
}

function wayOf(week: Week, from: number, to: number): Way {
  const way = week.ways[from]?.[to];
  if (way == null) throw new RangeError(`no way from place ${from} to place ${to}`);
  return way;
}

/** A way may begin the day before or end the day after: Sunday comes before Monday. */
function isFree({ commitments }: Week, weekday: number, span: Span): boolean {
  return commitments.every((one) =>
    [-1, 0, 1].every((later) => {
      if ((weekday + later + 6) % 7 !== one.weekday - 1) return true;
      const [from, until] = [one.from + later * A_DAY, one.until + later * A_DAY];
      return span.until <= from || span.from >= until;
    }),
  );
}

const A_DAY = 1440;
