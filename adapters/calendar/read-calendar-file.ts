import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { CalendarEvent, CalendarNote } from "#core/year";
import { type ContentLine, contentLines } from "./content-lines.ts";
import { readEvent } from "./read-event.ts";

export type CalendarFile = {
  readonly events: readonly CalendarEvent[];
  /** what could not be read, told and passed over */
  readonly notes: readonly CalendarNote[];
};

/** Years of a busy hall are a few megabytes; this much is read in some seconds. */
const MOST_BYTES = 25_000_000;
const MOST_NOTES = 200;

/**
 * The events of an iCalendar file (RFC 5545), in the order of the file. Runs in a browser as in Node.
 * Problems: "calendar-too-large", "calendar-not-text", "calendar-not-one", "calendar-empty". A file that is cut off
 * or has entries that cannot be read gives the others, with notes.
 */
export function readCalendarFile(bytes: Uint8Array): Result<CalendarFile> {
  if (bytes.length > MOST_BYTES) return bad(tooLarge(bytes.length));
  const text = decoded(bytes);
  if (text.slice(0, 2000).includes("\u0000")) return bad(notText());
  if (text.trim() === "") return bad(empty());
  if (!/^\s*BEGIN:VCALENDAR/im.test(text.slice(0, 100_000))) return bad(notOne());
  const { blocks, places, open } = blocksOf(text);
  const read = blocks.map(({ lines, line }) => readEvent(lines, places, line));
  const notes = read.flatMap((it) => it.notes);
  const cut = open === null ? [] : [{ line: open, says: "the file is cut off: its last entry is left out" }];
  return good({ events: read.flatMap((it) => it.event ?? []), notes: shortened([...notes, ...cut]) });
}

function decoded(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    // every byte is a letter there: a title may come out wrong, a date does not
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

type Block = { readonly lines: readonly ContentLine[]; readonly line: number };
type Blocks = {
  readonly blocks: readonly Block[];
  readonly places: ReadonlyMap<string, string>;
  /** the line of an entry that never ends */
  readonly open: number | null;
};

const NEEDED = new Set([
  "UID",
  "SUMMARY",
  "DTSTART",
  "DTEND",
  "DURATION",
  "RRULE",
  "RDATE",
  "EXDATE",
  "RECURRENCE-ID",
  "STATUS",
  "TRANSP",
]);

/** The lines of each VEVENT, without those of what stands inside it, and the places that zones are named for. */
function blocksOf(text: string): Blocks {
  const blocks: Block[] = [];
  const places = new Map<string, string>();
  const inside: string[] = [];
  let lines: ContentLine[] = [];
  let begun: number | null = null;
  let zone = "";
  for (const it of contentLines(text)) {
    const kind = inside.at(-1);
    if (it.name === "BEGIN") {
      inside.push(it.value.trim().toUpperCase());
      if (inside.at(-1) === "VEVENT") [lines, begun] = [[], it.line];
    } else if (it.name === "END") {
      inside.pop();
      if (kind === "VEVENT" && begun !== null) {
        blocks.push({ lines, line: begun });
        begun = null;
      }
    } else if (kind === "VEVENT") {
      if (NEEDED.has(it.name)) lines.push(it);
    } else if (kind === "VTIMEZONE") {
      if (it.name === "TZID") zone = it.value;
      if (it.name === "X-LIC-LOCATION") places.set(zone, it.value.trim());
    }
  }
  return { blocks, places, open: begun };
}

/** The same said of many entries is said of the first few. */
function shortened(notes: readonly CalendarNote[]): readonly CalendarNote[] {
  if (notes.length <= MOST_NOTES) return notes;
  const more = `${notes.length - MOST_NOTES} more could not be read as they stand`;
  return [...notes.slice(0, MOST_NOTES), { line: 0, says: more }];
}

function tooLarge(bytes: number): Problem {
  const says = `The calendar is ${Math.ceil(bytes / 1_000_000)} million bytes, more than ${MOST_BYTES / 1_000_000}.`;
  return problem("calendar-too-large", "", says, "Have it saved for one year only.");
}

function notText(): Problem {
  const next = "Take the file that the calendar program saves or exports, with the ending .ics.";
  return problem("calendar-not-text", "", "The file is no text.", next);
}

function notOne(): Problem {
  const says = "The file is not a calendar: nothing in it begins one (BEGIN:VCALENDAR).";
  return problem(
    "calendar-not-one",
    "",
    says,
    "Take the file with the ending .ics, not a page or a picture of it.",
  );
}

function empty(): Problem {
  return problem("calendar-empty", "", "The file is empty.", "Look whether it was saved whole.");
}
