import { hallBookings } from "#core/year";
import * as fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { readCalendarFile } from "./read-calendar-file.ts";

const SPAN = { from: Temporal.PlainDate.from("2026-09-01"), until: Temporal.PlainDate.from("2027-08-31") };
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

function file(...events: readonly (readonly string[])[]): string {
  const lines = events.flatMap((it) => ["BEGIN:VEVENT", ...it, "END:VEVENT"]);
  return ["BEGIN:VCALENDAR", "VERSION:2.0", ...lines, "END:VCALENDAR", ""].join("\r\n");
}

function seen(text: string, zone = "Europe/London"): readonly string[] {
  const read = readCalendarFile(bytes(text));
  if (!read.ok) return read.problems.map(({ code }) => code);
  const { booked, notes } = hallBookings(read.value.events, SPAN, zone);
  return [
    ...booked.map(({ title, from, until }) => `${from} ${until} ${title}`),
    ...[...read.value.notes, ...notes].map(({ line, says }) => `${line}: ${says}`),
  ];
}

test("whole days, several days, times in a zone, in UTC and by the clock on the wall are read (YEAR-11)", () => {
  const text = file(
    ["UID:1", "SUMMARY:Fair", "DTSTART;VALUE=DATE:20260905"],
    ["UID:2", "SUMMARY:Panto\\, with supper", "DTSTART;VALUE=DATE:20270222", "DTEND;VALUE=DATE:20270228"],
    ["UID:3", "SUMMARY:Talk", 'DTSTART;TZID="America/New_York":20261026T140000', "DURATION:PT1H30M"],
    ["UID:4", "SUMMARY:Choir", "DTSTART:20261027T190000Z", "DTEND:20261027T210000Z"],
    ["UID:5", "SUMMARY:Bridge", "DTSTART:20261028T100000", "DTEND:20261028T120000"],
  );
  expect(seen(text)).toEqual([
    "2026-09-05 2026-09-05 Fair",
    // 14:00 in New York is UTC-4, in London, which has changed already, 18:00
    "2026-10-26T18:00 2026-10-26T19:30 Talk",
    "2026-10-27T19:00 2026-10-27T21:00 Choir",
    "2026-10-28T10:00 2026-10-28T12:00 Bridge",
    "2027-02-22 2027-02-27 Panto, with supper",
  ]);
});

test("what repeats keeps its time by the clock over the change, less what was taken out, with what was moved (YEAR-11)", () => {
  const text = file(
    [
      "UID:weekly@example.org",
      "SUMMARY:Badminton",
      "DTSTART;TZID=Europe/London:20190101T190000",
      "DTEND;TZID=Europe/London:20190101T203000",
      "RRULE:FREQ=WEEKLY;UNTIL=20261124T235959Z",
      "EXDATE;TZID=Europe/London:20260908T190000,20260915T190000",
      "EXDATE;VALUE=DATE:20260922",
      "RDATE;TZID=Europe/London:20261203T190000",
    ],
    [
      "UID:weekly@example.org",
      "RECURRENCE-ID;TZID=Europe/London:20261020T190000",
      "SUMMARY:Badminton\\, moved",
      "DTSTART;TZID=Europe/London:20261021T200000",
      "DTEND;TZID=Europe/London:20261021T213000",
    ],
    [
      "UID:weekly@example.org",
      "RECURRENCE-ID;TZID=Europe/London:20261103T190000",
      "STATUS:CANCELLED",
      "DTSTART;TZID=Europe/London:20261103T190000",
    ],
  );
  expect(seen(text).map((it) => it.slice(0, 16))).toEqual([
    "2026-09-01T19:00",
    "2026-09-29T19:00",
    "2026-10-06T19:00",
    "2026-10-13T19:00",
    "2026-10-21T20:00",
    "2026-10-27T19:00",
    "2026-11-10T19:00",
    "2026-11-17T19:00",
    "2026-11-24T19:00",
    "2026-12-03T19:00",
  ]);
});

test("what is cancelled, takes no time, or lies in another year is no booking (YEAR-11)", () => {
  const text = file(
    ["UID:1", "SUMMARY:Off", "STATUS:CANCELLED", "DTSTART;VALUE=DATE:20260905"],
    ["UID:2", "SUMMARY:Note", "TRANSP:TRANSPARENT", "DTSTART;VALUE=DATE:20260906"],
    ["UID:3", "SUMMARY:Reminder", "DTSTART:20260907T100000Z"],
    ["UID:4", "SUMMARY:Long ago", "DTSTART;VALUE=DATE:20190101", "RRULE:FREQ=WEEKLY;COUNT=10"],
    ["UID:5", "SUMMARY:Ends as the year begins", "DTSTART:20260831T220000", "DTEND:20260901T000000"],
    ["UID:6", "SUMMARY:Over the beginning", "DTSTART:20260831T220000", "DTEND:20260901T020000"],
  );
  expect(seen(text)).toEqual(["2026-08-31T22:00 2026-09-01T02:00 Over the beginning"]);
});

const at = (id: string): readonly string[] => [
  `UID:${id}`,
  `SUMMARY:${id}`,
  `DTSTART;TZID=${id}:20260905T100000`,
  "DURATION:PT1H",
];

test("zones by an office program's name, by a path and by the file's own word are known; another is told", () => {
  const own = ["BEGIN:VTIMEZONE", "TZID:Home", "X-LIC-LOCATION:America/Chicago", "END:VTIMEZONE"];
  const body = file(
    at("Central Standard Time"),
    at("/example.org/20260101_1/America/Chicago"),
    at("Home"),
    at("Nowhere Time"),
  ).replace("VERSION:2.0", ["VERSION:2.0", ...own].join("\r\n"));
  // 10:00 in Chicago is 16:00 in London
  expect(seen(body).map((it) => it.slice(0, 16))).toEqual([
    "2026-09-05T10:00",
    "2026-09-05T16:00",
    "2026-09-05T16:00",
    "2026-09-05T16:00",
    "28: the zone “No",
  ]);
});

test("what cannot be read is told with its line, and the rest is read (YEAR-11)", () => {
  const text = file(
    ["UID:1", "SUMMARY:No beginning"],
    ["UID:2", "SUMMARY:Thirtieth", "DTSTART;VALUE=DATE:20270230"],
    ["UID:3", "SUMMARY:Often", "DTSTART:20260901T100000", "DURATION:PT1M", "RRULE:FREQ=SECONDLY"],
    ["UID:4", "SUMMARY:Odd rule", "DTSTART:20260901T100000", "DURATION:PT1H", "RRULE:FREQ=FORTNIGHTLY"],
    ["UID:5", "SUMMARY:Backwards", "DTSTART:20260901T100000", "DTEND:20260901T090000"],
    ["UID:6", "SUMMARY:Whenever", "DTSTART:20260901T100000", "DURATION:a while"],
    ["UID:7", "SUMMARY:Fair", "DTSTART;VALUE=DATE:20260905"],
  );
  expect(seen(text)).toEqual([
    "2026-09-05 2026-09-05 Fair",
    "3: “No beginning” has no beginning and is left out",
    "10: “20270230” of “Thirtieth” is no time (DTSTART)",
    "12: Often: it repeats too often to be counted",
    "19: Odd rule: its rule “FREQ=FORTNIGHTLY” cannot be read",
    "26: Backwards: it ends before it begins",
    "32: Whenever: it lasts “a while”, which is no length of time",
  ]);
});

test("a change of one and all later ones is read for the one, and told", () => {
  const text = file(
    ["UID:1", "SUMMARY:Choir", "DTSTART:20260907T190000", "DURATION:PT1H", "RRULE:FREQ=WEEKLY;COUNT=3"],
    [
      "UID:1",
      "SUMMARY:Choir",
      "RECURRENCE-ID;RANGE=THISANDFUTURE:20260914T190000",
      "DTSTART:20260914T200000",
      "DURATION:PT1H",
    ],
  );
  expect(seen(text)).toEqual([
    "2026-09-07T19:00 2026-09-07T20:00 Choir",
    "2026-09-14T20:00 2026-09-14T21:00 Choir",
    "2026-09-21T19:00 2026-09-21T20:00 Choir",
    "13: “Choir” changes one of a series and all after it: only the one is changed here",
  ]);
});

test("a file that is cut off gives what stands before the cut and says so", () => {
  const whole = file(
    ["UID:1", "SUMMARY:Fair", "DTSTART;VALUE=DATE:20260905"],
    ["UID:2", "DTSTART;VALUE=DATE:20260906"],
  );
  expect(seen(whole.slice(0, whole.lastIndexOf("DTSTART")))).toEqual([
    "2026-09-05 2026-09-05 Fair",
    "8: the file is cut off: its last entry is left out",
  ]);
});

test("lines that are folded, ended by LF alone, or in small letters are read; alarms inside an entry are not", () => {
  const text = [
    "begin:VCALENDAR",
    "begin:vevent",
    "uid:1",
    "summary:Parish",
    "  supper",
    "dtstart:20260905T1",
    "\t90000",
    "begin:valarm",
    "summary:Wake up",
    "dtstart:20260101T000000",
    "end:valarm",
    "duration:PT2H",
    "end:vevent",
  ].join("\n");
  expect(seen(text)).toEqual(["2026-09-05T19:00 2026-09-05T21:00 Parish supper"]);
});

test("a file that is no calendar is refused in words", () => {
  expect(seen("")).toEqual(["calendar-empty"]);
  expect(seen("<html><body>Sign in</body></html>")).toEqual(["calendar-not-one"]);
  expect(seen("PK\u0003\u0004\u0000\u0000")).toEqual(["calendar-not-text"]);
  const large = readCalendarFile(new Uint8Array(25_000_001));
  expect(large.ok ? [] : large.problems.map(({ code }) => code)).toEqual(["calendar-too-large"]);
});

test("a title in an old encoding comes out in letters, and no byte breaks the reading", () => {
  const [before = "", after = ""] = file(["UID:1", "SUMMARY:Caf#", "DTSTART;VALUE=DATE:20260905"]).split("#");
  const old = new Uint8Array([...bytes(before), 0xe9, ...bytes(after)]);
  const read = readCalendarFile(old);
  expect(read.ok && read.value.events.map(({ title }) => title)).toEqual(["Café"]);
});

test("whatever the bytes are, reading them gives events or problems and never throws", () => {
  const pieces = fc.constantFrom(
    "BEGIN:VEVENT",
    "END:VEVENT",
    "DTSTART:",
    "20260905",
    "RRULE:FREQ=WEEKLY;",
    "\r\n",
    ";",
    "TZID=",
    ":",
    "Z",
    " ",
  );
  const ugly = fc
    .array(fc.oneof(pieces, fc.string({ maxLength: 12 })), { maxLength: 40 })
    .map((it) => it.join(""));
  fc.assert(
    fc.property(ugly, (text) => {
      const read = readCalendarFile(bytes(`BEGIN:VCALENDAR\r\n${text}`));
      if (read.ok) hallBookings(read.value.events, SPAN, "Europe/London");
    }),
  );
});
