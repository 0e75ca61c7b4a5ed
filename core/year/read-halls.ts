import { isZone } from "#kernels/calendar";
import { bad, good, type Problem, problem, type Result, together, togetherInOrder } from "#core/words";
import { Temporal } from "temporal-polyfill";
import type { ListContext } from "./lists/day-list-types.ts";
import { type LostAt, readDays } from "./read-days.ts";
import type { BookedDocument, YearDocument } from "./year-document.ts";
import type { Booking, YearHall } from "./year-types.ts";

type HallDocument = YearDocument["halls"][number];
type Read = { readonly hall: YearHall; readonly lost: readonly LostAt[] };

/** A hall of the year. Problems: "zone-unknown", "booking-unreadable", "booking-backwards" and those of days off. */
export function readHall(
  hall: HallDocument,
  zone: string,
  context: ListContext,
  place: string,
): Result<Read> {
  const own = hall.zone ?? zone;
  if (!isZone(own)) return bad(zoneUnknown(own, `${place}.zone`));
  const read = together({
    closed: readDays(hall.closed, { ...context, called: "the hall is closed" }, `${place}.closed`),
    booked: togetherInOrder(hall.booked.map((it, at) => readBooking(it, own, `${place}.booked[${at}]`))),
  });
  if (!read.ok) return read;
  const { closed, booked } = read.value;
  return good({
    hall: {
      id: hall.id,
      name: hall.name ?? hall.id,
      zone: own,
      closed: closed.days,
      polling: hall.polling,
      booked: booked.filter(({ title }) => !isMine(title, hall.mine)),
    },
    lost: closed.lost,
  });
}

/** Her own hires stand in the hall's calendar too; a word of their title tells them. */
function isMine(title: string, words: readonly string[]): boolean {
  const plain = title.toLowerCase();
  return words.some((word) => word.trim() !== "" && plain.includes(word.trim().toLowerCase()));
}

function readBooking({ title, from, until }: BookedDocument, zone: string, place: string): Result<Booking> {
  const wholeDays = !from.includes("T") && !until.includes("T");
  const begin = momentOf(from, zone);
  const last = momentOf(until, zone);
  if (begin === undefined || last === undefined)
    return bad(unreadable(begin === undefined ? from : until, place));
  const end = wholeDays ? last.add({ days: 1 }) : last;
  if (Temporal.ZonedDateTime.compare(begin, end) >= 0) return bad(backwards(title, from, until, place));
  return good({ title: title.trim() === "" ? "booked" : title.trim(), from: begin, end, wholeDays });
}

const WRITTEN = /^\d{4}-\d{2}-\d{2}(?:T([01]\d|2[0-3]):[0-5]\d)?$/;

function momentOf(text: string, zone: string): Temporal.ZonedDateTime | undefined {
  if (!WRITTEN.test(text)) return undefined;
  try {
    return Temporal.PlainDateTime.from(text, { overflow: "reject" }).toZonedDateTime(zone);
  } catch {
    return undefined;
  }
}

/** Problem: "zone-unknown". */
export function zoneUnknown(zone: string, place: string): Problem {
  const says = `“${zone.slice(0, 60)}” is not a time zone.`;
  return problem("zone-unknown", place, says, "Give it like Europe/London or America/Chicago.");
}

function unreadable(text: string, place: string): Problem {
  const says = `“${text.slice(0, 40)}” is no moment of what is booked.`;
  return problem(
    "booking-unreadable",
    place,
    says,
    "Write it like 2027-01-12T18:00, or 2027-01-12 for a whole day.",
  );
}

function backwards(title: string, from: string, until: string, place: string): Problem {
  const says = `“${title.slice(0, 60)}” ends at ${until}, not after it begins at ${from}.`;
  return problem("booking-backwards", place, says, "Change one of the two.");
}
