import type { DayJson, WeekDocument, WeekHead } from "#core/week";
import { weekdayWord } from "./date-words.ts";

// Tuesday 18:28 to 20:47 with one class at 19:00: on the way 18:28–18:40, in the hall 18:40–20:30, teaching 19:00–20:15,
// on the way 20:30–20:47. Minutes since midnight; what stands in a day never overlaps but teaching, which lies in its hall.

export type DrawnSpan = {
  readonly kind: "way" | "hall" | "class" | "busy";
  readonly from: number;
  readonly until: number;
};

export type DrawnClass = {
  /** counts through the week, from 1 */
  readonly number: number;
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly from: number;
  readonly until: number;
  /** "12 min and 6 km there, 20 min of waiting" */
  readonly way: string;
};

export type DrawnDay = {
  readonly weekday: number;
  readonly name: string;
  /** null for a day without a class */
  readonly leaves: number | null;
  readonly home: number | null;
  readonly spans: readonly DrawnSpan[];
  readonly classes: readonly DrawnClass[];
  /** what is fixed besides */
  readonly busy: readonly { readonly name: string; readonly from: number; readonly until: number }[];
};

export type WeekDrawing = {
  readonly days: readonly DrawnDay[];
  /** whole hours that hold all of it */
  readonly from: number;
  readonly until: number;
};

/** A week as a picture of seven days, and the same as a list; of the document the places and what is fixed besides. */
export function weekDrawing(
  { days }: Pick<WeekHead, "days">,
  { places, commitments }: Pick<WeekDocument, "places" | "commitments">,
): WeekDrawing {
  const placeName = (id: string) => places.find((it) => it.id === id)?.name ?? id;
  let number = 0;
  const drawn = [1, 2, 3, 4, 5, 6, 7].map((weekday): DrawnDay => {
    const day = days.find((it) => it.weekday === weekday);
    const name = weekdayWord(weekday);
    const fixed = commitments.filter((it) => it.weekday === weekday).map(busyOf);
    const busy = fixed.map(({ from, until }): DrawnSpan => ({ kind: "busy", from, until }));
    if (day === undefined)
      return { weekday, name, leaves: null, home: null, spans: busy, classes: [], busy: fixed };
    const classes = day.stops.map((stop): DrawnClass => {
      number += 1;
      const { id, place } = stop;
      const times = { from: minutesOf(stop.start), until: minutesOf(stop.end) };
      return { number, id, name: stop.name, place: placeName(place), ...times, way: wayWords(stop) };
    });
    return {
      weekday,
      name,
      leaves: leavesAt(day),
      home: homeAt(day),
      spans: [...busy, ...spansOf(day)],
      classes,
      busy: fixed,
    };
  });
  const times = drawn.flatMap(({ leaves, home, busy }) => [
    ...(leaves === null || home === null ? [] : [leaves, home]),
    ...busy.flatMap((it) => [it.from, it.until]),
  ]);
  const from = Math.floor(Math.min(9 * 60, ...times) / 60) * 60;
  const until = Math.ceil(Math.max(18 * 60, ...times) / 60) * 60;
  return { days: drawn, from, until };
}

function busyOf({ name, from, until }: WeekDocument["commitments"][number]) {
  const called = name === undefined || name.trim() === "" ? "Not free" : name;
  return { name: called, from: minutesOf(from), until: minutesOf(until) };
}

function spansOf(day: DayJson): readonly DrawnSpan[] {
  const ways: DrawnSpan[] = [];
  let since = leavesAt(day);
  for (const { accessFrom, accessUntil, atHome } of day.stops) {
    if (atHome !== null) {
      ways.push({ kind: "way", from: since, until: minutesOf(atHome.from) });
      since = minutesOf(atHome.until);
    }
    ways.push({ kind: "way", from: since, until: minutesOf(accessFrom) });
    since = minutesOf(accessUntil);
  }
  ways.push({ kind: "way", from: since, until: homeAt(day) });
  const halls = day.stops.map(
    (it): DrawnSpan => ({ kind: "hall", from: minutesOf(it.accessFrom), until: minutesOf(it.accessUntil) }),
  );
  const classes = day.stops.map(
    (it): DrawnSpan => ({ kind: "class", from: minutesOf(it.start), until: minutesOf(it.end) }),
  );
  return [...ways.filter(({ from, until }) => until > from), ...halls, ...classes];
}

function wayWords({ travelMinutes, km, waitingMinutes, atHome }: DayJson["stops"][number]): string {
  const far = km === 0 ? "" : ` and ${Number(km.toFixed(1))} km`;
  const way =
    travelMinutes === 0
      ? "already there"
      : `${travelMinutes} min${far} ${atHome === null ? "there" : "by home"}`;
  return waitingMinutes === 0 ? way : `${way}, ${waitingMinutes} min of waiting`;
}

function minutesOf(clock: string): number {
  const [hours = "0", minutes = "0"] = clock.split(":");
  return Number(hours) * 60 + Number(minutes);
}

/** She may leave before midnight for a class early in the day, and be home after it. */
function leavesAt({ leaves, stops }: DayJson): number {
  const at = minutesOf(leaves);
  return at > minutesOf(stops[0]?.accessFrom ?? leaves) ? at - A_DAY : at;
}

function homeAt({ home, stops }: DayJson): number {
  const at = minutesOf(home);
  return at < minutesOf(stops.at(-1)?.accessUntil ?? home) ? at + A_DAY : at;
}

const A_DAY = 1440;
