import { plainWriter } from "#core/words";
import * as fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { cutOff } from "./cut-off.ts";
import { madeAt } from "./device-clock.ts";
import { noticeOf } from "./notice-of.ts";
import type { NoticeRule } from "./notice-rule.ts";

const zone = fc.constantFrom("Europe/London", "America/Chicago", "Australia/Lord_Howe", "Asia/Kathmandu");
// any minute of ten years, changes of the clocks included
const FIRST = Temporal.Instant.from("2024-01-01T00:00:00Z").epochMilliseconds;
const minute = fc.integer({ min: 0, max: 10 * 366 * 24 * 60 });
const instant = minute.map((it) => textAt(FIRST + it * 60_000));
const rule: fc.Arbitrary<NoticeRule> = fc.oneof(
  fc.record({ kind: fc.constant("elapsed" as const), hours: fc.nat(96) }),
  fc.record({ kind: fc.constant("days" as const), days: fc.nat(40) }),
  fc.record({
    kind: fc.constant("clock" as const),
    daysBefore: fc.nat(7),
    at: fc.constantFrom("00:00", "01:30", "02:15", "12:00", "23:59"),
  }),
);

function textAt(milliseconds: number): string {
  return Temporal.Instant.fromEpochMilliseconds(milliseconds).toString();
}

function millisecondsOf(text: string): number {
  return Temporal.Instant.from(text).epochMilliseconds;
}

test("NOTICE-1 NOTICE-3 no cut-off is after the start; hours are exact, and days keep the time of day or miss it by a change", () => {
  fc.assert(
    fc.property(rule, instant, zone, (asked, start, where) => {
      const last = cutOff(asked, start, where);
      const before = millisecondsOf(start) - millisecondsOf(last);
      expect(before).toBeGreaterThanOrEqual(0);
      if (asked.kind === "elapsed") expect(before).toBe(asked.hours * 3_600_000);
      // a change of the clocks is an hour at most, or half an hour on Lord Howe
      if (asked.kind === "days")
        expect(Math.abs(before - asked.days * 86_400_000)).toBeLessThanOrEqual(3_600_000);
    }),
  );
});

test("NOTICE-4 late is a matter of the instant alone: at the cut-off in time, a millisecond after it late, whenever it arrived", () => {
  const writer = plainWriter("en-GB");
  fc.assert(
    fc.property(rule, instant, zone, fc.nat(1_000_000), (asked, starts, where, delay) => {
      const last = millisecondsOf(cutOff(asked, starts, where));
      const at = (made: number) =>
        noticeOf(
          { rule: asked, zone: where, starts, made: textAt(made), arrived: textAt(made + delay) },
          writer,
        );
      expect(at(last)).toMatchObject({ late: false, minutes: 0, arrivedAfter: delay > 0 });
      expect(at(last + 1)).toMatchObject({ late: true, minutes: 1, arrivedAfter: false });
      expect(at(last).sentence).toContain("in time");
    }),
  );
});

test("NOTICE-6 however a device's clock stands, what was made is put right to within two minutes, and never after it arrived", () => {
  fc.assert(
    fc.property(
      instant,
      fc.integer({ min: -1_000_000, max: 1_000_000 }),
      fc.nat(100_000),
      (truly, ahead, waited) => {
        const [made, sent] = [millisecondsOf(truly), millisecondsOf(truly) + waited * 1000];
        const found = madeAt({
          deviceMade: textAt(made + ahead * 1000),
          deviceSent: textAt(sent + ahead * 1000),
          serverReceived: textAt(sent),
        });
        const out = millisecondsOf(found.made) - made;
        expect(Math.abs(out)).toBeLessThanOrEqual(120_000);
        expect(millisecondsOf(found.made)).toBeLessThanOrEqual(sent);
        expect(found.byArrival).toBe(false);
        if (Math.abs(ahead) > 120) expect(out).toBe(0);
      },
    ),
  );
});
