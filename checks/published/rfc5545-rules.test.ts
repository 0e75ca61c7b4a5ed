// RFC 5545, Internet Calendaring and Scheduling Core Object Specification, September 2009, section 3.8.5.3
// "Recurrence Rule": its examples, each from 2 September 1997, 09:00, America/New_York unless the row says
// otherwise. Dates from memory of the section; the weekly ones stand in rfc5545.test.ts as read there. The
// example "every 3 hours" contradicts itself there and is left out.
import { ruleStarts } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";

const ZONE = "America/New_York";

function dates(rule: string, first = "1997-09-02", most = 40): readonly string[] {
  const start = Temporal.PlainDateTime.from(`${first}T09:00`).toZonedDateTime(ZONE);
  const read = ruleStarts({ rule, start }, start, start.add({ years: 12 }));
  if (read.kind !== "starts") throw new Error(read.kind);
  for (const it of read.starts) expect(it.toPlainTime().toString()).toBe("09:00:00");
  return read.starts.slice(0, most).map((it) => it.toPlainDate().toString());
}

function days(month: string, from: number, until: number): readonly string[] {
  return Array.from(
    { length: until - from + 1 },
    (_, at) => `${month}-${String(from + at).padStart(2, "0")}`,
  );
}

test("daily for ten occurrences", () => {
  expect(dates("FREQ=DAILY;COUNT=10")).toEqual(days("1997-09", 2, 11));
});

test("daily until 24 December 1997", () => {
  const all = dates("FREQ=DAILY;UNTIL=19971224T000000Z", undefined, 200);
  // 29 in September, 31, 30, 23 in December
  expect(all).toHaveLength(113);
  expect(all.at(-1)).toBe("1997-12-23");
});

test("every ten days, five occurrences", () => {
  expect(dates("FREQ=DAILY;INTERVAL=10;COUNT=5")).toEqual([
    "1997-09-02",
    "1997-09-12",
    "1997-09-22",
    "1997-10-02",
    "1997-10-12",
  ]);
});

test.each([
  "FREQ=YEARLY;UNTIL=20000131T140000Z;BYMONTH=1;BYDAY=SU,MO,TU,WE,TH,FR,SA",
  "FREQ=DAILY;UNTIL=20000131T140000Z;BYMONTH=1",
])("every day in January, for three years: %s", (rule) => {
  const all = dates(rule, "1998-01-01", 200);
  expect(all).toEqual([...days("1998-01", 1, 31), ...days("1999-01", 1, 31), ...days("2000-01", 1, 31)]);
});

test.each<readonly [string, string, string, readonly string[]]>([
  [
    "every other week on Monday, Wednesday and Friday until 24 December 1997",
    "FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR",
    "1997-09-01",
    ["09-01", "09-03", "09-05", "09-15", "09-17", "09-19", "09-29", "10-01", "10-03", "10-13", "10-15"]
      .concat(["10-17", "10-27", "10-29", "10-31", "11-10", "11-12", "11-14", "11-24", "11-26", "11-28"])
      .concat(["12-08", "12-10", "12-12", "12-22"])
      .map((day) => `1997-${day}`),
  ],
  [
    "monthly on the first Friday for ten occurrences",
    "FREQ=MONTHLY;COUNT=10;BYDAY=1FR",
    "1997-09-05",
    ["1997-09-05", "1997-10-03", "1997-11-07", "1997-12-05"].concat([
      "1998-01-02",
      "1998-02-06",
      "1998-03-06",
      "1998-04-03",
      "1998-05-01",
      "1998-06-05",
    ]),
  ],
  [
    "monthly on the first Friday until 24 December 1997",
    "FREQ=MONTHLY;UNTIL=19971224T000000Z;BYDAY=1FR",
    "1997-09-05",
    ["1997-09-05", "1997-10-03", "1997-11-07", "1997-12-05"],
  ],
  [
    "every other month on the first and last Sunday for ten occurrences",
    "FREQ=MONTHLY;INTERVAL=2;COUNT=10;BYDAY=1SU,-1SU",
    "1997-09-07",
    ["1997-09-07", "1997-09-28", "1997-11-02", "1997-11-30", "1998-01-04"].concat([
      "1998-01-25",
      "1998-03-01",
      "1998-03-29",
      "1998-05-03",
      "1998-05-31",
    ]),
  ],
  [
    "monthly on the second-to-last Monday for six months",
    "FREQ=MONTHLY;COUNT=6;BYDAY=-2MO",
    "1997-09-22",
    ["1997-09-22", "1997-10-20", "1997-11-17", "1997-12-22", "1998-01-19", "1998-02-16"],
  ],
  [
    "monthly on the third-to-last day",
    "FREQ=MONTHLY;BYMONTHDAY=-3;COUNT=6",
    "1997-09-28",
    ["1997-09-28", "1997-10-29", "1997-11-28", "1997-12-29", "1998-01-29", "1998-02-26"],
  ],
  [
    "monthly on the 2nd and 15th for ten occurrences",
    "FREQ=MONTHLY;COUNT=10;BYMONTHDAY=2,15",
    "1997-09-02",
    ["1997-09-02", "1997-09-15", "1997-10-02", "1997-10-15", "1997-11-02"].concat([
      "1997-11-15",
      "1997-12-02",
      "1997-12-15",
      "1998-01-02",
      "1998-01-15",
    ]),
  ],
  [
    "monthly on the first and last day for ten occurrences",
    "FREQ=MONTHLY;COUNT=10;BYMONTHDAY=1,-1",
    "1997-09-30",
    ["1997-09-30", "1997-10-01", "1997-10-31", "1997-11-01", "1997-11-30"].concat([
      "1997-12-01",
      "1997-12-31",
      "1998-01-01",
      "1998-01-31",
      "1998-02-01",
    ]),
  ],
  [
    "every 18 months on the 10th to the 15th for ten occurrences",
    "FREQ=MONTHLY;INTERVAL=18;COUNT=10;BYMONTHDAY=10,11,12,13,14,15",
    "1997-09-10",
    [...days("1997-09", 10, 15), ...days("1999-03", 10, 13)],
  ],
  [
    "yearly in June and July for ten occurrences",
    "FREQ=YEARLY;COUNT=10;BYMONTH=6,7",
    "1997-06-10",
    [1997, 1998, 1999, 2000, 2001].flatMap((year) => [`${year}-06-10`, `${year}-07-10`]),
  ],
  [
    "every third year on the 1st, 100th and 200th day for ten occurrences",
    "FREQ=YEARLY;INTERVAL=3;COUNT=10;BYYEARDAY=1,100,200",
    "1997-01-01",
    ["1997-01-01", "1997-04-10", "1997-07-19", "2000-01-01", "2000-04-09"].concat([
      "2000-07-18",
      "2003-01-01",
      "2003-04-10",
      "2003-07-19",
      "2006-01-01",
    ]),
  ],
  [
    "every 20th Monday of the year",
    "FREQ=YEARLY;BYDAY=20MO;COUNT=3",
    "1997-05-19",
    ["1997-05-19", "1998-05-18", "1999-05-17"],
  ],
  [
    "Monday of week number 20",
    "FREQ=YEARLY;BYWEEKNO=20;BYDAY=MO;COUNT=3",
    "1997-05-12",
    ["1997-05-12", "1998-05-11", "1999-05-17"],
  ],
  [
    "every Friday the 13th",
    "FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13;COUNT=5",
    "1997-09-02",
    ["1998-02-13", "1998-03-13", "1998-11-13", "1999-08-13", "2000-10-13"],
  ],
  [
    "the first Saturday that follows the first Sunday of the month",
    "FREQ=MONTHLY;BYDAY=SA;BYMONTHDAY=7,8,9,10,11,12,13;COUNT=10",
    "1997-09-13",
    ["1997-09-13", "1997-10-11", "1997-11-08", "1997-12-13", "1998-01-10"].concat([
      "1998-02-07",
      "1998-03-07",
      "1998-04-11",
      "1998-05-09",
      "1998-06-13",
    ]),
  ],
  [
    "every fourth year, the first Tuesday after a Monday in November",
    "FREQ=YEARLY;INTERVAL=4;BYMONTH=11;BYDAY=TU;BYMONTHDAY=2,3,4,5,6,7,8;COUNT=3",
    "1996-11-05",
    ["1996-11-05", "2000-11-07", "2004-11-02"],
  ],
  [
    "the third of Tuesday, Wednesday and Thursday in the month, for three months",
    "FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3",
    "1997-09-04",
    ["1997-09-04", "1997-10-07", "1997-11-06"],
  ],
  [
    "the second-to-last weekday of the month",
    "FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2;COUNT=7",
    "1997-09-29",
    ["1997-09-29", "1997-10-30", "1997-11-27", "1997-12-30", "1998-01-29", "1998-02-26", "1998-03-30"],
  ],
  [
    "an invalid date, 30 February, is passed over",
    "FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5",
    "2007-01-15",
    ["2007-01-15", "2007-01-30", "2007-02-15", "2007-03-15", "2007-03-30"],
  ],
])("%s", (_, rule, first, expected) => {
  expect(dates(rule, first)).toEqual(expected);
});
