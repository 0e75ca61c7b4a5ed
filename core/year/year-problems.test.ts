import { expect, test } from "vitest";
import { evening, smallYear } from "./small-year.ts";
import { yearAnswer } from "./year-answer.ts";
import type { YearDocumentInput } from "./year-document.ts";

type Class = YearDocumentInput["classes"][number];

function codes(change: Partial<YearDocumentInput>): readonly string[] {
  const read = yearAnswer({ ...smallYear, ...change });
  return read.ok ? [] : read.problems.map(({ code, place }) => `${code} ${place}`);
}

const only = (change: Partial<Class>): readonly string[] => codes({ classes: [{ ...evening, ...change }] });

test("each thing that is wrong is told at its place", () => {
  expect(codes({ from: "2027-09-01" })).toEqual(["span-backwards until"]);
  expect(codes({ until: "2028-09-01" })).toEqual(["year-too-long until"]);
  expect(codes({ zone: "Europe/Marlsford" })).toEqual(["zone-unknown zone"]);
  expect(codes({ halls: [{ id: "barn", zone: "Mars" }] })).toEqual(["zone-unknown halls[0].zone"]);
  expect(only({ hall: "mill" })).toEqual(["hall-unknown classes[0].hall"]);
  expect(only({ start: "25:00" })).toEqual(["time-unreadable classes[0].start"]);
  expect(only({ weekday: 0 })).toEqual(["class-weekday classes[0].weekday"]);
  expect(only({ weekday: undefined })).toEqual(["repeat-missing classes[0]"]);
  expect(only({ rule: "FREQ=WEEKLY" })).toEqual(["repeat-twice classes[0].rule"]);
  expect(only({ weekday: undefined, rule: "every Tuesday" })).toEqual(["rule-unreadable classes[0].rule"]);
  expect(only({ weekday: undefined, rule: "FREQ=HOURLY" })).toEqual(["rule-too-often classes[0].rule"]);
  expect(only({ weekday: undefined, rule: "FREQ=SECONDLY" })).toEqual(["rule-too-often classes[0].rule"]);
  expect(only({ minutes: { teach: 1400, before: 60 } })).toEqual([
    "class-longer-than-a-day classes[0].minutes",
  ]);
  expect(only({ from: "2027-05-01", until: "2027-04-01" })).toEqual(["span-backwards classes[0].until"]);
  expect(codes({ classes: [evening, evening] })).toEqual(["id-twice classes[1].id"]);
  expect(codes({ sick: { share: 3 } })).toEqual(["share-out-of-range sick.share"]);
  expect(codes({ runs: [{ class: "friday" }] })).toEqual(["class-unknown runs[0].class"]);
  expect(codes({ elections: ["6 May"] })).toEqual(["date-unreadable elections[0]"]);
  expect(codes({ timeOff: { days: [{ from: "2027-02-30", why: "" }] } })).toEqual([
    "date-unreadable timeOff.days[0].from",
    "date-unreadable timeOff.days[0].until",
  ]);
  expect(codes({ timeOff: { text: "x".repeat(60_000) } })).toEqual(["list-too-long timeOff.text"]);
  const change = { kind: "cancel", class: "tuesday", date: "2026-09-08" } as const;
  expect(codes({ changes: [change, change] })).toEqual(["change-twice changes[1].date"]);
  expect(codes({ changes: [{ ...change, class: "friday" }] })).toEqual(["class-unknown changes[0].class"]);
  const booked = (from: string, until: string) =>
    codes({ halls: [{ id: "barn", booked: [{ title: "", from, until }] }] });
  expect(booked("2027-02-30T18:00", "2027-03-01")).toEqual(["booking-unreadable halls[0].booked[0]"]);
  expect(booked("2027-02-20T18:00", "2027-02-20T18:00")).toEqual(["booking-backwards halls[0].booked[0]"]);
  expect(codes({ classes: Array.from({ length: 101 }, (_, at) => ({ ...evening, id: `c${at}` })) })).toEqual([
    "too-many-classes classes",
  ]);
});
