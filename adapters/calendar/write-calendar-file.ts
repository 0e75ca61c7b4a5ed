import type { CalendarEntry } from "#core/year";
import type { Temporal } from "temporal-polyfill";

/** What stands at the head of the file: what calendars call it, and when it was made. */
export type CalendarHead = { readonly name: string; readonly made: Temporal.Instant };

/**
 * An iCalendar file (RFC 5545) of sessions, each an entry of its own with times in UTC, so that no calendar has to
 * know a zone. The same entries and head give the same bytes.
 */
export function writeCalendarFile(entries: readonly CalendarEntry[], { name, made }: CalendarHead): string {
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Hallful//Year//EN",
    "CALSCALE:GREGORIAN",
    "METHOD:PUBLISH",
    `NAME:${escaped(name)}`,
    `X-WR-CALNAME:${escaped(name)}`,
    ...entries.flatMap((it) => eventLines(it, utc(made))),
    "END:VCALENDAR",
  ];
  return lines.map((it) => `${folded(it)}\r\n`).join("");
}

function eventLines(entry: CalendarEntry, stamp: string): readonly string[] {
  return [
    "BEGIN:VEVENT",
    `UID:${entry.uid}`,
    `DTSTAMP:${stamp}`,
    `SEQUENCE:${entry.sequence}`,
    `DTSTART:${utc(entry.begins)}`,
    `DTEND:${utc(entry.ends)}`,
    `SUMMARY:${escaped(entry.title)}`,
    `LOCATION:${escaped(entry.place)}`,
    `STATUS:${entry.cancelled ? "CANCELLED" : "CONFIRMED"}`,
    "END:VEVENT",
  ];
}

/** "20270112T183000Z" */
function utc(moment: Temporal.Instant): string {
  return moment.toString({ smallestUnit: "second" }).replace(/[-:]/g, "");
}

function escaped(text: string): string {
  const plain = text.replace(/[\\;,]/g, (sign) => `\\${sign}`).replace(/\r\n|\r|\n/g, "\\n");
  // other control signs are not allowed in a line (3.1)
  // oxlint-disable-next-line no-control-regex -- these very signs are taken out
  return plain.replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, "");
}

const LONGEST = 75;

/** No line has more than 75 bytes; the rest goes on the next after a space, and no letter is cut in two (3.1). */
function folded(line: string): string {
  const encoder = new TextEncoder();
  const pieces: string[] = [];
  let piece = "";
  let bytes = 0;
  for (const letter of line) {
    const size = encoder.encode(letter).length;
    if (bytes + size > LONGEST) {
      pieces.push(piece);
      [piece, bytes] = [" ", 1];
    }
    piece += letter;
    bytes += size;
  }
  return [...pieces, piece].join("\r\n");
}
