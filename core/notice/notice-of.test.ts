import { plainWriter } from "#core/words";
import { expect, test } from "vitest";
import { cutOff } from "./cut-off.ts";
import { noticeOf } from "./notice-of.ts";
import type { NoticeRule } from "./notice-rule.ts";

const LONDON = "Europe/London";
const CHICAGO = "America/Chicago";
const hours: NoticeRule = { kind: "elapsed", hours: 24 };
const day: NoticeRule = { kind: "days", days: 1 };
const noon: NoticeRule = { kind: "clock", daysBefore: 0, at: "12:00" };
const uk = plainWriter("en-GB");

test("NOTICE-3 noon of the same day is noon for an evening class and the start for one at 9:30", () => {
  expect(cutOff(noon, "2026-11-25T18:30:00Z", LONDON)).toBe("2026-11-25T12:00:00Z");
  expect(cutOff(noon, "2026-11-25T09:30:00Z", LONDON)).toBe("2026-11-25T09:30:00Z");
});

test("NOTICE-2 a cut-off at a time that the clocks jump over, or show twice", () => {
  // Monday 30 March 01:30 London: a day before, 01:30 on the 29th is jumped over: read as 02:30 BST, 01:30 UTC
  expect(cutOff(day, "2026-03-30T00:30:00Z", LONDON)).toBe("2026-03-29T01:30:00Z");
  // Monday 26 October 01:30 GMT: a day before comes twice; the first is still BST, 00:30 UTC
  expect(cutOff(day, "2026-10-26T01:30:00Z", LONDON)).toBe("2026-10-25T00:30:00Z");
});

test("NOTICE-4 at the cut-off is in time, a second later is late by a begun minute", () => {
  const asked = { rule: hours, zone: LONDON, starts: "2026-11-25T18:30:00Z" };
  const at = (made: string) => noticeOf({ ...asked, made, arrived: made }, uk);
  expect(at("2026-11-24T18:30:00Z")).toMatchObject({ late: false, minutes: 0 });
  expect(at("2026-11-24T18:30:01Z")).toMatchObject({ late: true, minutes: 1 });
  expect(at("2026-11-24T18:28:30Z")).toMatchObject({ late: false, minutes: 1 });
});

test("NOTICE-4 NOTICE-5 made in time on a phone without a signal is in time, though it arrived that night", () => {
  const found = noticeOf(
    {
      rule: hours,
      zone: LONDON,
      starts: "2026-11-25T18:30:00Z",
      made: "2026-11-24T18:12:00Z",
      arrived: "2026-11-24T22:05:00Z",
    },
    uk,
  );
  expect(found).toEqual({
    late: false,
    cutOff: "2026-11-24T18:30:00Z",
    minutes: 18,
    arrivedAfter: true,
    sentence:
      "You gave up your place on Tuesday 24 November 2026 at 18:12, in time: it could be given up until Tuesday 24 November 2026 at 18:30 (24 hours before it starts). We heard of it on Tuesday 24 November 2026 at 22:05, but what counts is when you did it.",
  });
});

test("NOTICE-5 over the spring change in Chicago 24 hours is an hour earlier by the clock, and the sentence says so", () => {
  // Sunday 8 March 2026 18:00 CDT is 23:00 UTC; 24 hours before is Saturday 17:00 CST
  const asked = { zone: CHICAGO, starts: "2026-03-08T23:00:00Z", made: "2026-03-07T23:20:00Z" };
  const us = plainWriter("en-US");
  const late = noticeOf({ ...asked, rule: hours, arrived: asked.made }, us);
  expect(late).toMatchObject({ late: true, minutes: 20 });
  expect(late.sentence).toBe(
    "You gave up your place on Saturday, March 7, 2026 at 5:20 pm. The last moment was Saturday, March 7, 2026 at 5:00 pm (24 hours before it starts, and the clocks go forward in between), so it was late by 20 minutes.",
  );
  const inTime = noticeOf({ ...asked, rule: day, arrived: asked.made }, us);
  expect(inTime).toMatchObject({ late: false, minutes: 40 });
});
