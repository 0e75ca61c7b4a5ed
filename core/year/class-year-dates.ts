import { Temporal } from "temporal-polyfill";
import { classDays } from "./class-days.ts";
import { reasonsAgainst } from "./reasons-against.ts";
import { sessionOf } from "./session-of.ts";
import type { Change, ClassYearDates, LostDate, Session, Year, YearClass } from "./year-types.ts";

/**
 * The sessions of a class in the year, and each date that it loses with all that takes it. A session that she moves
 * is not lost, whatever closes its own day; one that she adds is there whatever closes it.
 */
export function classYearDates(one: YearClass, year: Year): ClassYearDates {
  const changes = year.changes.filter((it) => it.class === one.id);
  const days = classDays(one, year);
  const there = new Set(days.map(String));
  const sessions: Session[] = changes.flatMap((it) =>
    it.kind === "extra" && !there.has(it.date.toString()) ? [changed(one, it)] : [],
  );
  const lost: LostDate[] = [];
  for (const date of days) {
    const change = changes.find((it) => it.date.equals(date));
    if (change?.kind === "move" || change?.kind === "extra") {
      sessions.push(changed(one, change));
      continue;
    }
    const planned = sessionOf(one, { original: date, date, start: null, change: null, times: 0 });
    const reasons = [
      ...(change === undefined ? [] : [{ kind: "cancelled" as const, why: change.why }]),
      ...reasonsAgainst(planned, year),
    ];
    if (reasons.length === 0) sessions.push(planned);
    else lost.push({ date, reasons });
  }
  return { class: one, sessions: sessions.toSorted(byStart), lost, days: days.length };
}

/** Moves and cancellations of sessions that the class does not have: nothing would come of them, so they are told. */
export function idleChanges(year: Year): readonly Change[] {
  const days = new Map(
    year.classes.map((one) => [one.id, new Set(classDays(one, year).map(String))] as const),
  );
  return year.changes.filter(
    (it) => it.kind !== "extra" && days.get(it.class)?.has(it.date.toString()) !== true,
  );
}

function byStart(a: Session, b: Session): number {
  return Temporal.ZonedDateTime.compare(a.begins, b.begins);
}

/** A session that was moved is called by its own day still; one that was added, or is held all the same, by its day. */
function changed(one: YearClass, change: Exclude<Change, { readonly kind: "cancel" }>): Session {
  const { date: original, start } = change;
  return change.kind === "move"
    ? sessionOf(one, { original, date: change.to, start, change: "moved", times: change.times })
    : sessionOf(one, { original, date: original, start, change: "extra", times: 0 });
}
