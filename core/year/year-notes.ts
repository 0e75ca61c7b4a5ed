import { clockOf, countText, dateText, dayText, listText } from "./date-text.ts";
import type { OwnClash, YearFound } from "./year-found.ts";
import type { Session, Year } from "./year-types.ts";

/** What she should look at before she relies on the year, a sentence each. */
export function yearNotes(year: Year, found: YearFound): readonly string[] {
  const sessions = found.classes.flatMap((it) => it.sessions);
  return [
    ...sessions.flatMap((it) => clockNote(it, year)),
    ...midnightNotes(sessions),
    ...zoneNotes(year),
    ...clashNotes(found.clashes, year),
    ...bookingNotes(found, year),
    ...found.against.map(({ session, reasons }) => {
      const how = session.change === "moved" ? "was moved to" : "is held on";
      const why = listText(reasons.map((it) => it.why));
      return `${session.class.name} ${how} ${dateText(session.date, year.locale)} all the same: ${why}.`;
    }),
    ...found.idle.map(({ class: id, date, kind }) => {
      const name = year.classes.find((it) => it.id === id)?.name ?? id;
      const what = kind === "move" ? "moved" : "cancelled";
      return `${name} has no session on ${dateText(date, year.locale)} that could be ${what}.`;
    }),
    ...lineNote(year.notUnderstood.length),
  ];
}

function lineNote(count: number): readonly string[] {
  if (count === 0) return [];
  const lines =
    count === 1
      ? "1 pasted line is not understood and takes"
      : `${count} pasted lines are not understood and take`;
  return [`${lines} no date.`];
}

/** A time that the clocks skip or show twice, and a session during which they change. */
function clockNote({ class: one, date, shown, begins, ends }: Session, { locale }: Year): readonly string[] {
  const day = dateText(date, locale);
  const start = clockOf(begins, locale);
  if (shown === "never")
    return [
      `The clocks of ${one.hall.name} are put forward over the start of ${one.name} on ${day}: that time is not shown; it begins at ${start} by the new time.`,
    ];
  const changes = begins.offsetNanoseconds !== ends.offsetNanoseconds;
  const end = `it ends at ${clockOf(ends, locale)} by the new time`;
  if (shown === "twice")
    return [
      `The clocks of ${one.hall.name} show ${start} twice on ${day}: ${one.name} begins at the first of the two${changes ? `, and ${end}` : ""}. Say which you mean.`,
    ];
  return changes ? [`The clocks change during ${one.name} on ${day}: ${end}.`] : [];
}

function midnightNotes(sessions: readonly Session[]): readonly string[] {
  const late = sessions.filter(({ date, leaves, access }) => {
    const last = leaves.subtract({ nanoseconds: 1 }).toPlainDate();
    return !last.equals(date) || !access.toPlainDate().equals(date);
  });
  const classes = [...new Set(late.map((it) => it.class))];
  return classes.map((one) => {
    const count = late.filter((it) => it.class === one).length;
    return `${one.name} runs over midnight ${count === 1 ? "once" : `${count} times`}: each is counted for the day on which it begins, and what is booked on both days is looked at.`;
  });
}

function zoneNotes({ classes, zone }: Year): readonly string[] {
  const other = classes.filter((one) => one.hall.zone !== zone);
  return other.map(
    (one) =>
      `The times of ${one.name} are by the clocks of ${one.hall.name}, ${one.hall.zone}, not of ${zone}.`,
  );
}

function clashNotes(clashes: readonly OwnClash[], { locale }: Year): readonly string[] {
  const pairs = new Map<string, readonly OwnClash[]>();
  for (const it of clashes) {
    const name = [it.first.class.id, it.second.class.id].toSorted().join(" ");
    pairs.set(name, [...(pairs.get(name) ?? []), it]);
  }
  return [...pairs.values()].flatMap((same) => {
    const names = [...new Set(same.flatMap((it) => [it.first.class.name, it.second.class.name]))];
    const both = names.length === 1 ? `Two sessions of ${names[0] ?? ""}` : listText(names);
    const days = same.map((it) => dayText(it.first.date, locale));
    const first = `${countText(days.length, "day")}, the first ${days[0] ?? ""}`;
    const when = days.length > 3 ? first : listText(days);
    return [`${both} are at one time, with coming and leaving, on ${when}. You cannot be at both.`];
  });
}

/** What the halls' own calendars take, so that her own hire among it can be told apart. */
function bookingNotes({ classes }: YearFound, { locale }: Year): readonly string[] {
  return classes.flatMap(({ class: one, lost }) => {
    const booked = lost.filter(({ reasons }) => reasons.some(({ kind }) => kind === "hall booked"));
    if (booked.length === 0) return [];
    const told = booked.slice(0, 6).map(({ date, reasons }) => {
      const why = reasons.find(({ kind }) => kind === "hall booked")?.why ?? "";
      return `${dayText(date, locale)} (${why})`;
    });
    const more = booked.length > told.length ? [`${booked.length - told.length} more`] : [];
    const count = countText(booked.length, "session");
    return [
      `The calendar of ${one.hall.name} clashes with ${count} of ${one.name}: ${listText([...told, ...more])}. If one of them is your own hire, give a word of its title.`,
    ];
  });
}
