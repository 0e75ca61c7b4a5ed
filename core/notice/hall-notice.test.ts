import { plainWriter } from "#core/words";
import { dateOfDay, dayNumberOf } from "#kernels/calendar";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { hallCancels } from "./hall-cancels.ts";
import { type HallNoticeAsked, hallNotice } from "./hall-notice.ts";

const uk = plainWriter("en-GB");

// Thursday 10 December 2026 18:30; hire 27.00; all back 28 days before, half from 14, a quarter after that
const asked: HallNoticeAsked = {
  schedule: [
    { daysBefore: 28, percentBack: 100 },
    { daysBefore: 14, percentBack: 50 },
    { daysBefore: 0, percentBack: 25 },
  ],
  zone: "Europe/London",
  starts: "2026-12-10T18:30:00Z",
  made: "2026-11-12T23:10:00Z",
  hire: 2700,
  currency: "GBP",
};

function daysBeforeIt(days: number): string {
  return dateOfDay((dayNumberOf("2026-12-10") ?? 0) - days);
}

const chargedOn = (made: string) => hallNotice({ ...asked, made }, uk).charged;

test("NOTICE-20 told late in the evening of the 28th day before, nothing is charged; the next morning half is", () => {
  expect(hallNotice(asked, uk)).toEqual({
    daysBefore: 28,
    percentBack: 100,
    charged: 0,
    back: 2700,
    lastFreeDay: "2026-11-12",
    dearer: { from: "2026-11-13", charged: 1350 },
    sentence:
      "Told on Thursday 12 November 2026, 28 days before, the hall charges nothing of 27.00 GBP. From Friday 13 November 2026 it would be 13.50 GBP.",
  });
  expect(chargedOn("2026-11-13T08:00:00Z")).toBe(1350);
  // 27.00 × 75 % = 20.25
  expect(chargedOn("2026-11-27T08:00:00Z")).toBe(2025);
});

test("NOTICE-20 with less notice than the last step all is charged, and it gets no dearer", () => {
  const schedule = [{ daysBefore: 7, percentBack: 50 }];
  const found = hallNotice({ ...asked, schedule, made: "2026-12-08T09:00:00Z" }, uk);
  expect(found).toMatchObject({ charged: 2700, back: 0, lastFreeDay: null, dearer: null });
  expect(() => hallNotice({ ...asked, schedule: [{ daysBefore: 7, percentBack: 101 }] }, uk)).toThrow("101");
});

test("NOTICE-20 the last free day is the latest of those at which all comes back; half a coin goes to the hall", () => {
  const schedule = [
    { daysBefore: 28, percentBack: 100 },
    { daysBefore: 21, percentBack: 100 },
    { daysBefore: 0, percentBack: 50 },
  ];
  expect(hallNotice({ ...asked, schedule }, uk).lastFreeDay).toBe("2026-11-19");
  // half of 27.01 is 13.505
  expect(hallNotice({ ...asked, hire: 2701, made: "2026-11-13T08:00:00Z" }, uk)).toMatchObject({
    charged: 1351,
    back: 1350,
  });
});

test("NOTICE-20 days are counted in the hall's zone: at 23:30 in Chicago it is still that day", () => {
  // 12 November 23:30 CST is 13 November 05:30 UTC
  const found = hallNotice(
    { ...asked, zone: "America/Chicago", starts: "2026-12-11T00:30:00Z", made: "2026-11-13T05:30:00Z" },
    uk,
  );
  expect(found).toMatchObject({ daysBefore: 28, charged: 0 });
});

test("NOTICE-20 what is charged and what comes back add to the hire, and later is never cheaper", () => {
  fc.assert(
    fc.property(fc.nat(100_000), fc.nat(40), fc.nat(40), (hire, one, other) => {
      const [early, late] = [Math.max(one, other), Math.min(one, other)];
      const at = (days: number) =>
        hallNotice({ ...asked, hire, made: `${daysBeforeIt(days)}T12:00:00Z` }, uk);
      expect(at(early).charged + at(early).back).toBe(hire);
      expect(at(early).charged).toBeLessThanOrEqual(at(late).charged);
    }),
  );
});

test("NOTICE-21 polling day: told twelve days before, the 27.00 is not payable", () => {
  const found = hallCancels(
    {
      zone: "Europe/London",
      starts: "2027-05-06T17:30:00Z",
      told: "2027-04-24T09:00:00Z",
      promised: null,
      hire: 2700,
      currency: "GBP",
    },
    uk,
  );
  expect(found).toEqual({
    daysBefore: 12,
    short: false,
    payable: 0,
    sentence:
      "The hall said on Saturday 24 April 2027, 12 days before, that it is shut on Thursday 6 May 2027. The hire of 27.00 GBP is not payable. Its conditions let it close without notice; look whether they promise more than the hire back.",
  });
});

test("NOTICE-21 a hall that promised 28 days and gave twelve was late, and that is said", () => {
  const found = hallCancels(
    {
      zone: "Europe/London",
      starts: "2027-05-06T17:30:00Z",
      told: "2027-04-24T09:00:00Z",
      promised: { kind: "days", days: 28 },
      hire: 2700,
      currency: "GBP",
    },
    uk,
  );
  expect(found.short).toBe(true);
  expect(found.sentence).toContain(
    "It promised to say so 28 days before it starts, at the same time of day, so it was late",
  );
});
