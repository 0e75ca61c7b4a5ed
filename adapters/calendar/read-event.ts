import type { CalendarEvent, CalendarNote, CalendarTime } from "#core/year";
import type { ContentLine } from "./content-lines.ts";
import { readTimes } from "./read-time.ts";
import { zoneOfId } from "./zone-of-id.ts";

export type EventRead = {
  /** null when it has no beginning that can be read */
  readonly event: CalendarEvent | null;
  readonly notes: readonly CalendarNote[];
};

/** One VEVENT from its lines; `places` are the zones that the file's own VTIMEZONEs name, by their TZID. */
export function readEvent(
  lines: readonly ContentLine[],
  places: ReadonlyMap<string, string>,
  line: number,
): EventRead {
  const notes: CalendarNote[] = [];
  const text = (name: string): string => lines.find((it) => it.name === name)?.value ?? "";
  const title = plainText(text("SUMMARY"));
  const times = (name: string): readonly CalendarTime[] =>
    lines
      .filter((it) => it.name === name)
      .flatMap((it) => {
        const id = it.parameters.get("TZID");
        const zone = id === undefined ? undefined : zoneOfId(id, places);
        const isLocal = /T\d{6}(?!Z)/.test(it.value);
        if (id !== undefined && zone === undefined && isLocal) notes.push(zoneNote(title, id, it.line));
        const read = readTimes(it, zone);
        notes.push(...read.unreadable.map((bad) => timeNote(title, name, bad, it.line)));
        return read.times;
      });
  const [start] = times("DTSTART");
  if (start === undefined) {
    if (notes.length === 0) notes.push({ line, says: `${called(title)} has no beginning and is left out` });
    return { event: null, notes };
  }
  const rules = lines.filter((it) => it.name === "RRULE");
  const second = rules[1];
  if (second !== undefined)
    notes.push({ line: second.line, says: `${called(title)} has a second rule, which is passed over` });
  const later = lines.find((it) => it.name === "RECURRENCE-ID" && it.parameters.has("RANGE"));
  if (later !== undefined) {
    const says = `${called(title)} changes one of a series and all after it: only the one is changed here`;
    notes.push({ line: later.line, says });
  }
  return {
    event: {
      uid: text("UID"),
      title,
      start,
      end: times("DTEND")[0] ?? null,
      duration: text("DURATION") === "" ? null : text("DURATION"),
      rule: rules[0]?.value ?? null,
      also: times("RDATE"),
      without: times("EXDATE"),
      stands: times("RECURRENCE-ID")[0] ?? null,
      free: text("STATUS").toUpperCase() === "CANCELLED" || text("TRANSP").toUpperCase() === "TRANSPARENT",
      line,
    },
    notes,
  };
}

/** "Fair\, all day" as it was meant (RFC 5545, 3.3.11). */
function plainText(value: string): string {
  const plain = value.replace(/\\([nN,;\\])/g, (_, sign: string) =>
    sign.toLowerCase() === "n" ? " " : sign,
  );
  return plain.trim().slice(0, 200);
}

function called(title: string): string {
  return title === "" ? "an entry without a title" : `“${title.slice(0, 60)}”`;
}

function zoneNote(title: string, id: string, line: number): CalendarNote {
  const says = `the zone “${id.slice(0, 60)}” of ${called(title)} is not known: its times are taken by the clocks of the hall`;
  return { line, says };
}

function timeNote(title: string, name: string, bad: string, line: number): CalendarNote {
  return { line, says: `“${bad.slice(0, 40)}” of ${called(title)} is no time (${name})` };
}
