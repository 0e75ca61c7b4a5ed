import {
  bad,
  good,
  type Problem,
  problem,
  readDate,
  type Result,
  together,
  togetherInOrder,
} from "#core/words";
import { readClock } from "./read-class.ts";
import type { YearDocument } from "./year-document.ts";
import type { Change, YearClass } from "./year-types.ts";

type ChangeDocument = YearDocument["changes"][number];

/** Single sessions moved, cancelled or added. Problems: "class-unknown", "change-twice", those of dates and times. */
export function readChanges(
  changes: YearDocument["changes"],
  classes: readonly Pick<YearClass, "id">[],
): Result<readonly Change[]> {
  const known = new Set(classes.map(({ id }) => id));
  const read = togetherInOrder(changes.map((it, at) => readChange(it, `changes[${at}]`)));
  const problems = changes.flatMap((it, at) => [
    ...(known.has(it.class) ? [] : [classUnknown(it.class, `changes[${at}].class`)]),
    ...(firstOf(changes, it) === at ? [] : [twice(it, `changes[${at}].date`)]),
  ]);
  if (problems.length === 0) return read;
  return bad(...problems, ...(read.ok ? [] : read.problems));
}

function firstOf(changes: readonly ChangeDocument[], { class: id, date }: ChangeDocument): number {
  return changes.findIndex((it) => it.class === id && it.date === date);
}

function readChange(it: ChangeDocument, place: string): Result<Change> {
  const date = readDate(it.date, `${place}.date`);
  switch (it.kind) {
    case "cancel": {
      const why = it.why.trim() === "" ? "cancelled" : it.why.trim();
      return date.ok ? good({ kind: "cancel", class: it.class, date: date.value, why }) : date;
    }
    case "extra": {
      const read = together({ date, start: clockOrNull(it.start, `${place}.start`) });
      return read.ok ? good({ kind: "extra", class: it.class, ...read.value }) : read;
    }
    case "move": {
      const read = together({
        date,
        to: readDate(it.to, `${place}.to`),
        start: clockOrNull(it.start, `${place}.start`),
      });
      if (!read.ok) return read;
      return good({ kind: "move", class: it.class, times: Math.max(1, Math.round(it.times)), ...read.value });
    }
  }
}

function clockOrNull(text: string | undefined, place: string) {
  return text === undefined ? good(null) : readClock(text, place);
}

function twice({ class: id, date }: ChangeDocument, place: string): Problem {
  const says = `${id} on ${date} is changed twice.`;
  return problem(
    "change-twice",
    place,
    says,
    "Keep one of the two; a session that was moved again has the newer day.",
  );
}

/** Problem: "class-unknown". */
export function classUnknown(id: string, place: string): Problem {
  const says = `“${id.slice(0, 60)}” is none of the classes.`;
  return problem("class-unknown", place, says, "Give the id of a class that is there.");
}
