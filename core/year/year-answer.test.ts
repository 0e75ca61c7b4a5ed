import { expect, test } from "vitest";
import { evening, smallAnswer as answer } from "./small-year.ts";
import type { YearDocumentInput } from "./year-document.ts";

type Class = YearDocumentInput["classes"][number];

const one = (change: Partial<YearDocumentInput> = {}) => answer(change).json.classes[0];

test("a Tuesday class in a year from a Tuesday to a Tuesday is there 53 times (YEAR-1)", () => {
  // 1 September 2026 and 31 August 2027 are both Tuesdays, 52 weeks apart
  expect(one()?.sessions).toBe(53);
  expect(one()?.dates[0]).toEqual({
    date: "2026-09-01",
    start: "18:30",
    end: "19:45",
    movedFrom: null,
    extra: false,
  });
});

test("a calendar year of 53 weeks has 53 Thursdays and says so; a leap year has 53 Tuesdays when it begins on Monday", () => {
  const thursday = { from: "2026-01-01", until: "2026-12-31", classes: [{ ...evening, weekday: 4 }] };
  expect(one(thursday)?.sessions).toBe(53);
  expect(answer(thursday).json.sentences).toContain(
    "2026 has 53 weeks: a day of the week can come 53 times in it.",
  );
  // 1 January 2024 is a Monday, 31 December a Tuesday; 29 February a Thursday
  expect(one({ from: "2024-01-01", until: "2024-12-31" })?.sessions).toBe(53);
  const leap = one({ from: "2024-01-01", until: "2024-12-31", classes: [{ ...evening, weekday: 4 }] });
  expect(leap?.dates.map(({ date }) => date)).toContain("2024-02-29");
});

test("a date has each reason that takes it, the weightiest first, and is counted once (YEAR-2, YEAR-3)", () => {
  const found = one({
    holidays: { region: "GB-ENG" },
    timeOff: { days: [{ from: "2026-12-20", until: "2027-01-03", why: "away" }] },
    school: { text: "21 December 2026 to 1 January 2027 Christmas holidays" },
    halls: [{ id: "barn", closed: { days: [{ from: "2026-12-24", until: "2026-12-31", why: "floor" }] } }],
    classes: [{ ...evening, weekday: 5 }],
    runs: [{ class: "tuesday", schoolHolidays: false }],
  });
  // Fridays: 25 December is all of them, 1 January is no day of the floor; 26 March 2027 is Good Friday
  expect(found?.lost.map(({ date, reasons }) => [date, ...reasons.map(({ why }) => why)])).toEqual([
    ["2026-12-25", "Christmas Day", "away", "floor", "Christmas holidays"],
    ["2027-01-01", "New Year’s Day", "away", "Christmas holidays"],
    ["2027-03-26", "Good Friday"],
  ]);
  // 52 Fridays from 4 September 2026 to 27 August 2027
  expect(found?.sessions).toBe(49);
});

test("a Monday class in England loses the Monday holidays, and one that runs on them loses none (YEAR-3, YEAR-4)", () => {
  const monday = { holidays: { region: "GB-ENG" as const }, classes: [{ ...evening, weekday: 1 }] };
  expect(one(monday)?.lost.map(({ date }) => date)).toEqual([
    "2026-12-28",
    "2027-03-29",
    "2027-05-03",
    "2027-05-31",
    "2027-08-30",
  ]);
  expect(one({ ...monday, runs: [{ class: "tuesday", publicHolidays: true }] })?.lost).toEqual([]);
  const added = {
    region: "GB-ENG" as const,
    also: [{ from: "2027-06-14", why: "proclaimed" }],
    not: ["2027-05-03"],
  };
  const lost = one({ ...monday, holidays: added })?.lost.map(({ date }) => date);
  expect(lost).toEqual(["2026-12-28", "2027-03-29", "2027-05-31", "2027-06-14", "2027-08-30"]);
});

test("in Chicago a holiday at a weekend takes its own day and the day kept for it (YEAR-4)", () => {
  const cedarFork: Partial<YearDocumentInput> = {
    from: "2026-06-01",
    until: "2026-07-31",
    zone: "America/Chicago",
    locale: "en-US",
    holidays: { region: "US-IL" },
    classes: [
      { ...evening, id: "friday", weekday: 5 },
      { ...evening, id: "saturday", weekday: 6 },
    ],
  };
  const { json } = answer(cedarFork);
  expect(json.classes.map(({ lost }) => lost.map(({ date }) => date))).toEqual([
    ["2026-06-19", "2026-07-03"],
    ["2026-07-04"],
  ]);
  expect(json.sentences[0]).toBe(
    // none in the week of July 4
    "From June 1, 2026 to July 31, 2026 you teach in 8 of 9 weeks: 14 sessions of 2 classes.",
  );
});

test("a hall where people vote is closed on the days of elections", () => {
  const thursday = { elections: ["2027-05-06"], classes: [{ ...evening, weekday: 4 }] };
  expect(one(thursday)?.lost).toEqual([]);
  const polling = one({ ...thursday, halls: [{ id: "barn", polling: true }] });
  expect(polling?.lost.map(({ date }) => date)).toEqual(["2027-05-06"]);
});

test("a session that is moved, added or held all the same is there, and what is against it is told (YEAR-5)", () => {
  const { json } = answer({
    holidays: { region: "GB-ENG" },
    timeOff: { days: [{ from: "2026-12-21", until: "2027-01-03", why: "away" }] },
    changes: [
      { kind: "move", class: "tuesday", date: "2026-12-22", to: "2026-12-25", start: "10:00" },
      { kind: "extra", class: "tuesday", date: "2026-12-29" },
      { kind: "extra", class: "tuesday", date: "2026-09-03", start: "07:00" },
      { kind: "cancel", class: "tuesday", date: "2026-09-08", why: "training day" },
      { kind: "cancel", class: "tuesday", date: "2026-09-09" },
    ],
  });
  const found = json.classes[0];
  expect(found?.dates.filter(({ movedFrom, extra }) => movedFrom !== null || extra)).toEqual([
    { date: "2026-09-03", start: "07:00", end: "08:15", movedFrom: null, extra: true },
    { date: "2026-12-25", start: "10:00", end: "11:15", movedFrom: "2026-12-22", extra: false },
    { date: "2026-12-29", start: "18:30", end: "19:45", movedFrom: null, extra: true },
  ]);
  expect(found?.lost).toEqual([
    { date: "2026-09-08", reasons: [{ kind: "cancelled", why: "training day" }] },
  ]);
  expect(json.notes).toEqual([
    "Tuesday evening was moved to Friday 25 December 2026 all the same: Christmas Day and away.",
    "Tuesday evening is held on Tuesday 29 December 2026 all the same: away.",
    "Tuesday evening has no session on Wednesday 9 September 2026 that could be cancelled.",
  ]);
  expect(json.sentences[1]).toBe(
    "Tuesday evening: 53 sessions (1 moved and 2 added or held all the same), of 53 Tuesdays; 1 falls out: 1 cancelled by you.",
  );
});

test.each([
  [
    "2026-03-29",
    "01:30",
    "The clocks of Tithe Barn Hall are put forward over the start of Night class on Sunday 29 March 2026: that time is not shown; it begins at 02:30 by the new time.",
  ],
  [
    "2026-10-25",
    "01:30",
    "The clocks of Tithe Barn Hall show 01:30 twice on Sunday 25 October 2026: Night class begins at the first of the two, and it ends at 01:45 by the new time. Say which you mean.",
  ],
  [
    "2026-10-25",
    "00:30",
    "The clocks change during Night class on Sunday 25 October 2026: it ends at 01:45 by the new time.",
  ],
])("a class on %s at %s meets the change of the clocks, and is told (YEAR-6)", (date, start, told) => {
  // 00:30 and 75 minutes: 01:45 is the first or the second showing of it; from 01:30, 15 minutes of the first are over
  const night = {
    ...evening,
    name: "Night class",
    start,
    weekday: 7,
    minutes: { teach: start === "00:30" ? 135 : 75 },
  };
  const { json } = answer({ from: date, until: date, classes: [night] });
  expect(json.notes).toContain(told);
});

test("in Chicago the same hours are those of its own change (YEAR-6)", () => {
  const night = { ...evening, name: "Night class", start: "02:30", weekday: 7 };
  const chicago = { zone: "America/Chicago", locale: "en-US" as const, classes: [night] };
  const { json } = answer({ ...chicago, from: "2026-03-08", until: "2026-03-08" });
  expect(json.notes[0]).toBe(
    "The clocks of Tithe Barn Hall are put forward over the start of Night class on Sunday, March 8, 2026: that time is not shown; it begins at 3:30 am by the new time.",
  );
  expect(answer({ ...chicago, from: "2026-03-29", until: "2026-03-29" }).json.notes).toEqual([]);
});

test("a class over midnight is counted for the day on which it begins, and clashes on the day after (YEAR-6, YEAR-7)", () => {
  const late: Class = { ...evening, id: "late", name: "New moon", start: "23:00", weekday: 1 };
  const early: Class = {
    ...evening,
    id: "early",
    name: "Before dawn",
    start: "00:20",
    weekday: 2,
    hall: "barn",
  };
  const { json } = answer({ from: "2026-09-07", until: "2026-09-08", classes: [late, early] });
  // the first is left at 00:30, the second wants her at 00:00
  expect(json.clashes).toEqual([
    { first: { class: "late", date: "2026-09-07" }, second: { class: "early", date: "2026-09-08" } },
  ]);
  expect(json.notes).toEqual([
    "New moon runs over midnight once: each is counted for the day on which it begins, and what is booked on both days is looked at.",
    "New moon and Before dawn are at one time, with coming and leaving, on 7 September 2026. You cannot be at both.",
  ]);
});

test("two halls in two zones clash by moments, not by clocks (YEAR-6, YEAR-7)", () => {
  const halls = [
    { id: "barn", name: "Tithe Barn Hall" },
    { id: "far", name: "Calais room", zone: "Europe/Paris" },
  ];
  const far: Class = {
    ...evening,
    id: "far",
    name: "By video",
    hall: "far",
    start: "19:30",
    minutes: { teach: 60 },
  };
  const day = { from: "2026-09-01", until: "2026-09-01", halls };
  // 19:30 in Paris is 18:30 in London
  const same = answer({ ...day, classes: [evening, far] }).json;
  expect(same.clashes).toHaveLength(1);
  expect(same.notes[0]).toBe(
    "The times of By video are by the clocks of Calais room, Europe/Paris, not of Europe/London.",
  );
  // left at 20:00 in London is 21:00 in Paris: touching is no clash
  expect(answer({ ...day, classes: [evening, { ...far, start: "21:00" }] }).json.clashes).toEqual([]);
});

test("what others have booked from coming to leaving takes the session, her own hire does not (YEAR-7)", () => {
  const booked = [
    { title: "Badminton", from: "2026-09-08T16:00", until: "2026-09-08T18:10" },
    { title: "Supper", from: "2026-09-15T19:59", until: "2026-09-15T22:00" },
    { title: "Fair", from: "2026-09-21", until: "2026-09-22" },
    { title: "Yoga (Tamsett)", from: "2026-09-29T18:00", until: "2026-09-29T20:15" },
  ];
  const { json } = answer({ halls: [{ id: "barn", name: "Tithe Barn Hall", booked, mine: ["tamsett"] }] });
  expect(json.classes[0]?.lost.map(({ date, reasons }) => `${date} ${reasons[0]?.why ?? ""}`)).toEqual([
    "2026-09-15 Supper, 19:59 to 22:00",
    "2026-09-22 Fair, all day",
  ]);
  expect(json.notes[0]).toBe(
    "The calendar of Tithe Barn Hall clashes with 2 sessions of Tuesday evening: 15 September 2026 (Supper, 19:59 to 22:00) and 22 September 2026 (Fair, all day). If one of them is your own hire, give a word of its title.",
  );
});

test("being ill is a guess beside the sessions and takes none of them (YEAR-9)", () => {
  const { json } = answer({ sick: { share: 0.1 } });
  // 0.1 × 53
  expect([json.sessions, json.sick]).toEqual([53, { share: 0.1, sessions: 5.3, guess: true }]);
  expect(json.sentences[2]).toBe(
    "Being ill may take 5.3 of the 53 sessions more: a guess of 10 %, on no date and taken off nothing above.",
  );
});

test("the weeks without a session are named, and the months add to the year", () => {
  const { json } = answer({ timeOff: { days: [{ from: "2026-12-21", until: "2027-01-10", why: "away" }] } });
  expect(json.weeks).toEqual({ inYear: 53, taught: 50, without: ["2026-W52", "2026-W53", "2027-W01"] });
  const months = json.classes[0]?.months ?? [];
  expect(months.map(({ month }) => month).slice(0, 2)).toEqual(["2026-09", "2026-10"]);
  expect(months.reduce((sum, it) => sum + it.sessions, 0)).toBe(50);
});

test("a class by a rule is on its own dates, counted from its own first day", () => {
  const second: Class = {
    ...evening,
    weekday: undefined,
    rule: "RRULE:FREQ=WEEKLY;INTERVAL=2;BYDAY=TU",
    from: "2026-08-25",
  };
  expect(
    one({ classes: [second] })
      ?.dates.slice(0, 2)
      .map(({ date }) => date),
  ).toEqual(["2026-09-08", "2026-09-22"]);
});

test("the picture has the same sessions as the words, each day once (YEAR-12)", () => {
  const { json, picture } = answer({ holidays: { region: "GB-ENG" } });
  const days = picture.months.flatMap((month) => month.days);
  const held = days.filter((it) => it.held.length > 0).map(({ date }) => date);
  expect(held).toEqual(json.classes[0]?.dates.map(({ date }) => date));
  // every day of twelve months
  expect([picture.months.length, days.length]).toEqual([12, 365]);
  expect(picture.months[3]?.words).toEqual(["A, Tuesday evening: 5 sessions, on 1, 8, 15, 22 and 29."]);
  // 1 September 2026 is a Tuesday, the second column, in the United States the third
  expect(days[0]).toMatchObject({ column: 1, row: 0 });
  expect(answer({ locale: "en-US" }).picture.months[0]?.days[0]).toMatchObject({ column: 2, row: 0 });
});
