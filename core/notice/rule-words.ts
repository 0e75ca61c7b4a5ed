import type { Writer } from "#core/words";
import { cutOff } from "./cut-off.ts";
import { inZone } from "./instants.ts";
import type { NoticeRule } from "./notice-rule.ts";

/** "24 hours before it starts"; says so when a change of the clocks makes that another time of day. */
export function ruleWords(rule: NoticeRule, starts: string, zone: string, writer: Writer): string {
  const last = cutOff(rule, starts, zone);
  switch (rule.kind) {
    case "elapsed":
      return `${counted(rule.hours, "hour")} before it starts${overChange(last, starts, zone)}`;
    case "days":
      return `${counted(rule.days, "day")} before it starts, at the same time of day`;
    case "clock":
      return last === starts ? "when it starts" : clockRule(rule.daysBefore, writer.time(rule.at));
  }
}

/** The rule as the house rules print it, without any one session. */
export function plainRuleWords(rule: NoticeRule, writer: Writer): string {
  switch (rule.kind) {
    case "elapsed":
      return `${counted(rule.hours, "hour")} before it starts`;
    case "days":
      return `${counted(rule.days, "day")} before it starts, at the same time of day`;
    case "clock":
      return clockRule(rule.daysBefore, writer.time(rule.at));
  }
}

function clockRule(daysBefore: number, time: string): string {
  if (daysBefore === 0) return `${time} on the same day`;
  if (daysBefore === 1) return `${time} on the day before`;
  return `${time} on the day ${daysBefore} days before`;
}

function overChange(last: string, starts: string, zone: string): string {
  const [before, after] = [inZone(last, zone), inZone(starts, zone)];
  if (before.offsetNanoseconds === after.offsetNanoseconds) return "";
  const way = before.offsetNanoseconds < after.offsetNanoseconds ? "forward" : "back";
  return `, and the clocks go ${way} in between`;
}

function counted(count: number, unit: string): string {
  return count === 1 ? `1 ${unit}` : `${count} ${unit}s`;
}
