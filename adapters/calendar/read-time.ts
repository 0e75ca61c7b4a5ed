import type { CalendarTime } from "#core/year";
import { Temporal } from "temporal-polyfill";
import type { ContentLine } from "./content-lines.ts";

const WRITTEN = /^(\d{4})(\d{2})(\d{2})(?:T(\d{2})(\d{2})(\d{2})(Z)?)?$/;

export type ReadTimes = { readonly times: readonly CalendarTime[]; readonly unreadable: readonly string[] };

/** The times of a line, several with commas between; of a period its beginning. `zone` is that of its TZID, if known. */
export function readTimes({ value }: Pick<ContentLine, "value">, zone: string | undefined): ReadTimes {
  const texts = value.split(",").map((it) => it.trim().split("/")[0] ?? "");
  const read = texts.map((it) => readTime(it, zone));
  return {
    times: read.flatMap((it) => it ?? []),
    unreadable: texts.filter((_, at) => read[at] === undefined),
  };
}

/** "20270112" is a day, "20270112T183000Z" in UTC, "20270112T183000" in the zone or by whatever clock hangs there. */
export function readTime(text: string, zone: string | undefined): CalendarTime | undefined {
  const read = WRITTEN.exec(text);
  if (read === null) return undefined;
  const [year, month, day, hour, minute, second] = read.slice(1, 7).map(Number);
  try {
    const date = Temporal.PlainDate.from(
      { year: year ?? 0, month: month ?? 0, day: day ?? 0 },
      { overflow: "reject" },
    );
    if (read[4] === undefined) return { kind: "day", date };
    // a leap second is the second before it
    const time = Temporal.PlainTime.from(
      { hour: hour ?? 0, minute: minute ?? 0, second: Math.min(second ?? 0, 59) },
      { overflow: "reject" },
    );
    const wall = date.toPlainDateTime(time);
    if (read[7] === "Z") return { kind: "utc", at: wall.toZonedDateTime("UTC").toInstant() };
    return zone === undefined ? { kind: "floating", wall } : { kind: "zoned", wall, zone };
  } catch {
    return undefined;
  }
}
