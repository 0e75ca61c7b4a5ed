import { plainWriter } from "#core/words";
import { expect, test } from "vitest";
import { cutOff } from "./cut-off.ts";
import { type NoticeRule, readNoticeRule, usualNotice } from "./notice-rule.ts";
import { plainRuleWords } from "./rule-words.ts";

function problemOf(rule: NoticeRule): string {
  const read = readNoticeRule(rule, "rule");
  return read.ok ? "may be" : read.problems.map(({ code, place }) => `${code} at ${place}`).join();
}

test("NOTICE-22 rules that are meant, and rules that cannot be", () => {
  expect([problemOf(usualNotice.student), problemOf(usualNotice.hall)]).toEqual(["may be", "may be"]);
  expect(problemOf({ kind: "elapsed", hours: -1 })).toBe("notice-out-of-range at rule.hours");
  expect(problemOf({ kind: "days", days: 1.5 })).toBe("notice-out-of-range at rule.days");
  expect(problemOf({ kind: "clock", daysBefore: 367, at: "12:00" })).toBe(
    "notice-out-of-range at rule.daysBefore",
  );
  expect(problemOf({ kind: "clock", daysBefore: 0, at: "noon" })).toBe("notice-time-unreadable at rule.at");
});

test("NOTICE-5 a rule as the house rules print it", () => {
  const [uk, us] = [plainWriter("en-GB"), plainWriter("en-US")];
  expect(plainRuleWords({ kind: "elapsed", hours: 1 }, uk)).toBe("1 hour before it starts");
  expect(plainRuleWords({ kind: "days", days: 2 }, uk)).toBe(
    "2 days before it starts, at the same time of day",
  );
  expect(plainRuleWords({ kind: "clock", daysBefore: 0, at: "12:00" }, us)).toBe("12:00 pm on the same day");
  expect(plainRuleWords({ kind: "clock", daysBefore: 1, at: "20:00" }, us)).toBe("8:00 pm on the day before");
});

test("NOTICE-1 what is not an instant, a zone or a time throws with it", () => {
  const rule = usualNotice.student;
  expect(() => cutOff(rule, "2026-11-25 18:30", "Europe/London")).toThrow("2026-11-25 18:30");
  expect(() => cutOff(rule, "2026-11-25T18:30:00Z", "Europe/Marlsford")).toThrow("Europe/Marlsford");
});
