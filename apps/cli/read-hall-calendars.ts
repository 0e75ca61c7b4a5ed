import { readCalendarFile } from "#adapters/calendar";
import { hallBookings } from "#core/year";
import { bad, good, type Problem, problem, readDate, type Result, together } from "#core/words";
import { type Limit, readBytes } from "./read-bytes.ts";
import type { World } from "./world.ts";
import type { YearFile } from "./year-document.ts";

type Calendar = NonNullable<YearFile["calendar"]>;

/** A calendar of a hall that was read: how much is booked in the year, and what of it could not be read. */
export type HallCalendar = {
  readonly hall: string;
  readonly file: string;
  readonly booked: number;
  readonly notes: readonly { readonly line: number; readonly says: string }[];
};

export type WithHallCalendars = { readonly calendar: Calendar; readonly halls: readonly HallCalendar[] };

const MOST: Limit = {
  bytes: 25_000_000,
  says: "is larger than twenty-five million bytes.",
  next: "Have the hall's calendar saved for one year only.",
};

/**
 * "quay-street=quay.ics,tithe-barn=barn.ics": what the halls' own calendars have is added to what is booked there.
 * Problems: "hall-calendar-unreadable", "hall-unknown", those of files and calendars.
 */
export async function readHallCalendars(
  option: string,
  calendar: Calendar,
  world: World,
): Promise<Result<WithHallCalendars>> {
  const span = together({
    from: readDate(calendar.from, "calendar.from"),
    until: readDate(calendar.until, "calendar.until"),
  });
  if (!span.ok) return span;
  let current = calendar;
  const halls: HallCalendar[] = [];
  for (const piece of option.split(",")) {
    const [id, name] = piece.split("=").map((it) => it.trim());
    if (id === undefined || name === undefined || name === "") return bad(unreadable(piece));
    const hall = current.halls.find((it) => it.id === id);
    if (hall === undefined) return bad(hallUnknown(id));
    // one after the other: a calendar may be large
    // oxlint-disable-next-line no-await-in-loop -- on purpose
    const bytes = await readBytes(name, world, MOST);
    if (!bytes.ok) return bytes;
    const read = readCalendarFile(bytes.value);
    if (!read.ok) return bad(...read.problems.map((it) => ({ ...it, place: name })));
    const zone = hall.zone ?? calendar.zone;
    const { booked, notes } = hallBookings(read.value.events, span.value, zone);
    halls.push({ hall: id, file: name, booked: booked.length, notes: [...read.value.notes, ...notes] });
    const changed = { ...hall, booked: [...hall.booked, ...booked] };
    current = { ...current, halls: current.halls.map((it) => (it.id === id ? changed : it)) };
  }
  return good({ calendar: current, halls });
}

function unreadable(piece: string): Problem {
  const says = `“${piece.slice(0, 60)}” names no hall and its file.`;
  const next = "Write it like --hall-calendar quay-street=quay.ics, several with commas between.";
  return problem("hall-calendar-unreadable", "--hall-calendar", says, next);
}

function hallUnknown(id: string): Problem {
  const says = `“${id.slice(0, 60)}” is none of the halls of the calendar.`;
  return problem("hall-unknown", "--hall-calendar", says, "Give the id of a hall that is there.");
}
