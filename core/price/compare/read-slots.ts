import { bad, good, problem, type Result, together, togetherInOrder } from "#core/words";
import { readPlainTime } from "#kernels/calendar";
import { readWeekday } from "../pass/read-pass.ts";
import type { CompareDocument } from "./compare-document.ts";
import type { Slot } from "./compare-types.ts";

/** Problems: "slots-missing", "slot-twice", and those of weekdays and times. */
export function readSlots(slots: CompareDocument["slots"]): Result<readonly Slot[]> {
  if (slots.length === 0) {
    const says = "No time of the week is given for the class.";
    return bad(problem("slots-missing", "slots", says, "Give a weekday and a start, like Tuesday 18:30."));
  }
  const read = togetherInOrder(slots.map(readSlot));
  if (!read.ok) return read;
  const said = read.value.map((slot) => slot.said);
  const twice = said.findIndex((it, index) => said.indexOf(it) < index);
  if (twice < 0) return read;
  const says = `${said[twice] ?? ""} is there twice.`;
  return bad(problem("slot-twice", `slots[${twice}]`, says, "Keep one of them."));
}

function readSlot({ weekday, start }: CompareDocument["slots"][number], index: number): Result<Slot> {
  const read = together({
    weekday: readWeekday(weekday, `slots[${index}].weekday`),
    start: readClock(start, `slots[${index}].start`),
  });
  return read.ok ? good({ ...read.value, said: `${WEEKDAYS[weekday - 1] ?? ""} ${start}` }) : read;
}

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

/** Problem: "time-unreadable". */
export function readClock(text: string, place: string): Result<number> {
  // a hall may be had until midnight, which no clock shows
  if (text === "24:00") return good(1440);
  const time = readPlainTime(text);
  if (time !== undefined) return good(time.hour * 60 + time.minute);
  const says = `“${text.slice(0, 40)}” is not a time of day.`;
  return bad(problem("time-unreadable", place, says, "Write hours and minutes like 18:30."));
}
