import { hallBookings, yearAnswer } from "#core/year";
import * as fc from "fast-check";
// the second reader of the same files, which shares no code with ours
import ICAL from "ical.js";
import { Temporal } from "temporal-polyfill";
import { describe, expect, test } from "vitest";
import { readCalendarFile } from "./read-calendar-file.ts";
import { writeCalendarFile } from "./write-calendar-file.ts";

const day = (text: string): Temporal.PlainDate => Temporal.PlainDate.from(text);
const MADE = Temporal.Instant.from("2026-08-20T09:00:00Z");

const places = [
  { zone: "Europe/London", locale: "en-GB" },
  { zone: "America/Chicago", locale: "en-US" },
] as const;

function written(zone: string, locale: "en-GB" | "en-US", name = "Tuesday evening"): string {
  const classes = [{ id: "tuesday", name, hall: "barn", start: "18:30", minutes: { teach: 75 }, weekday: 2 }];
  const year = {
    from: "2026-09-01",
    until: "2027-08-31",
    zone,
    locale,
    halls: [{ id: "barn", name: "Grange, Hall; 2" }],
  };
  const changes = [{ kind: "cancel", class: "tuesday", date: "2026-09-08" }];
  const read = yearAnswer({ ...year, classes, changes }, "marlsford");
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return writeCalendarFile(read.value.entries, { name: "Classes", made: MADE });
}

describe.each(places)("a file written for $zone", ({ zone, locale }) => {
  test("is read by a second library with the same times, on both sides of each change of the clocks", () => {
    const events = new ICAL.Component(ICAL.parse(written(zone, locale)))
      .getAllSubcomponents("vevent")
      .map((it) => new ICAL.Event(it));
    expect(events).toHaveLength(53);
    for (const it of events) {
      const local = Temporal.Instant.fromEpochMilliseconds(
        it.startDate.toJSDate().getTime(),
      ).toZonedDateTimeISO(zone);
      expect(local.toPlainTime().toString()).toBe("18:30:00");
      expect(it.uid).toBe(`${local.toPlainDate().toString().replaceAll("-", "")}-tuesday@marlsford`);
      // 75 minutes
      expect(it.endDate.subtractDate(it.startDate).toSeconds()).toBe(4500);
      expect([it.summary, it.location]).toEqual(["Tuesday evening", "Grange, Hall; 2"]);
    }
    const cancelled = events.filter((it) => it.component.getFirstPropertyValue("status") === "CANCELLED");
    expect(cancelled.map((it) => it.uid)).toEqual(["20260908-tuesday@marlsford"]);
  });

  test("comes back by our own reader as what it was, the cancelled one left out", () => {
    const read = readCalendarFile(new TextEncoder().encode(written(zone, locale)));
    if (!read.ok) throw new Error("not read");
    const span = { from: day("2026-09-01"), until: day("2027-08-31") };
    const { booked, notes } = hallBookings(read.value.events, span, zone);
    expect([booked.length, notes, read.value.notes]).toEqual([52, [], []]);
    expect(booked[0]).toEqual({
      title: "Tuesday evening",
      from: "2026-09-01T18:30",
      until: "2026-09-01T19:45",
    });
  });
});

test("no line is longer than 75 bytes, whatever the class is called, and the name comes back whole", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", minLength: 1, maxLength: 120 }), (name) => {
      // a title is one line without control signs, and a reader may trim it
      const plain = name.replace(/\p{C}|\p{Z}/gu, " ").trim();
      const text = written("Europe/London", "en-GB", plain === "" ? "x" : plain);
      const longest = Math.max(...text.split("\r\n").map((it) => new TextEncoder().encode(it).length));
      expect(longest).toBeLessThanOrEqual(75);
      const first = new ICAL.Component(ICAL.parse(text)).getFirstSubcomponent("vevent");
      expect(first?.getFirstPropertyValue("summary")).toBe(plain === "" ? "x" : plain);
    }),
    { numRuns: 20 },
  );
});

// each begins on a day that its rule has: RFC 5545 leaves the other case open, and the two readers differ in it
const RULES = [
  ["20260901", "FREQ=WEEKLY;BYDAY=TU,TH"],
  ["20260831", "FREQ=WEEKLY;INTERVAL=2;WKST=SU;BYDAY=MO,SU"],
  ["20240106", "FREQ=MONTHLY;BYDAY=1SA"],
  ["20260925", "FREQ=MONTHLY;BYDAY=-1FR;COUNT=9"],
  ["20250131", "FREQ=MONTHLY;BYMONTHDAY=31"],
  ["20260901", "FREQ=DAILY;INTERVAL=3;UNTIL=20270401T000000Z"],
  ["20100503", "FREQ=YEARLY;BYMONTH=5;BYDAY=1MO"],
  ["20260831", "FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-1"],
] as const;

test.each(RULES)(
  "what repeats from %s by %s falls on the days that a second library finds",
  (first, rule) => {
    const lines = [
      "BEGIN:VCALENDAR",
      "BEGIN:VEVENT",
      "UID:one@example.org",
      `DTSTART:${first}T173000`,
      "DURATION:PT1H",
      `RRULE:${rule}`,
      "EXDATE:20261006T173000",
      "END:VEVENT",
      "END:VCALENDAR",
    ];
    const text = `${lines.join("\r\n")}\r\n`;
    const event = new ICAL.Event(
      new ICAL.Component(ICAL.parse(text)).getFirstSubcomponent("vevent") ?? undefined,
    );
    const steps = event.iterator();
    const expected: string[] = [];
    for (let it = steps.next(); it !== null && it !== undefined && it.year < 2028; it = steps.next())
      if (it.toString() >= "2026-09-01" && it.toString() < "2027-09-01")
        expected.push(it.toString().slice(0, 16));
    const read = readCalendarFile(new TextEncoder().encode(text));
    if (!read.ok) throw new Error("not read");
    const span = { from: day("2026-09-01"), until: day("2027-08-31") };
    expect(hallBookings(read.value.events, span, "Europe/London").booked.map(({ from }) => from)).toEqual(
      expected,
    );
  },
);
