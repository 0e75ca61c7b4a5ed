import type { ChosenJson, PointJson, RejectedJson, WeekHead } from "#core/week";
import { amountDifference } from "./amount-difference.ts";
import { listedWords } from "./listed-words.ts";

/** How the names and amounts of an answer are written for the reader. */
export type WeekWriter = {
  /** a decimal string of the answer: "−£12.50" */
  readonly amount: (text: string) => string;
  /** the name of a candidate by its id */
  readonly name: (id: string) => string;
};

export type ChosenRow = {
  readonly id: string;
  readonly name: string;
  /** "£13.03 an hour" from door to door; "-" where it takes no time of its own */
  readonly perHour: string;
  readonly adds: string;
  /** "3 h" a week */
  readonly hours: string;
  /** what dropping it would free, and what the best week without it loses */
  readonly says: string;
};

/** What one class does for the week. `fixed` says that it is promised. */
export function chosenRow(line: ChosenJson, fixed: boolean, write: WeekWriter): ChosenRow {
  const hours = hoursWords(line.minutesAWeek);
  return {
    id: line.id,
    name: line.name,
    perHour: line.perHour === null ? "-" : write.amount(line.perHour),
    adds: write.amount(line.adds),
    hours,
    says: `${freesWords(line, hours)} ${withoutWords(line, fixed, write)}`,
  };
}

function freesWords({ frees, minutesAWeek }: ChosenJson, hours: string): string {
  const free = [
    ...(minutesAWeek > 0 ? [`${hours} a week`] : []),
    ...(frees.evening ? ["the evening"] : []),
    ...(frees.day ? ["the whole day"] : []),
  ];
  return free.length === 0
    ? "Dropping it would free nothing."
    : `Dropping it would free ${listedWords(free)}.`;
}

function withoutWords({ id, without }: ChosenJson, fixed: boolean, { amount, name }: WeekWriter): string {
  const begin = fixed ? "It is promised; without that promise the" : "The";
  if (without === null) return "No week without it was found.";
  const { comes, goes, leavesLess, proven } = without;
  const others = goes.filter((it) => it !== id);
  const along = others.length === 0 ? "" : ` and without ${listedWords(others.map(name))}`;
  const instead =
    comes.length === 0
      ? "nothing comes in its place"
      : `${listedWords(comes.map(name))} would come in its place`;
  const sure = proven ? "" : ", as far as was found";
  return `${begin} best week without it${along} leaves ${lessWords(leavesLess, amount)}${sure}: ${instead}.`;
}

function lessWords(leavesLess: string, amount: WeekWriter["amount"]): string {
  const less = Number(leavesLess);
  if (less === 0) return "as much";
  return less > 0
    ? `${amount(leavesLess)} a year less`
    : `${amount(leavesLess.replace("-", ""))} a year more`;
}

export type RejectedRow = {
  readonly id: string;
  readonly name: string;
  /** whether money could help, so that it can be tried */
  readonly room: boolean;
  readonly says: string;
};

/** What one that is not in the week lacks: money a session, or room. */
export function rejectedRow(line: RejectedJson, { amount, name }: WeekWriter): RejectedRow {
  const { id, withIt, lacksPerSession, noRoomFor } = line;
  const base = { id, name: line.name, room: lacksPerSession !== null };
  if (lacksPerSession === null) {
    const says =
      noRoomFor.length === 0
        ? "Not found out in time."
        : `No money brings it in: there is no room for it beside ${listedWords(noRoomFor)}.`;
    return { ...base, says };
  }
  const comes = (withIt?.comes ?? []).filter((it) => it !== id);
  const along = comes.length === 0 ? "" : `, together with ${listedWords(comes.map(name))}`;
  const place = `${placeWords(withIt?.goes ?? [], name)}${along}`;
  if (Number(lacksPerSession) <= 0)
    return { ...base, says: `Lacks nothing: a week in which it would ${place} leaves as much.` };
  const sure = withIt?.proven === false ? " at most" : "";
  return {
    ...base,
    says: `Lacks ${amount(lacksPerSession)} a session${sure}: with that much more it would ${place}.`,
  };
}

function placeWords(goes: readonly string[], name: WeekWriter["name"]): string {
  return goes.length === 0 ? "come in beside all others" : `take the place of ${listedWords(goes.map(name))}`;
}

export type CurveRow = {
  readonly count: number;
  /** in major units, for the plot */
  readonly at: number;
  readonly leaves: string;
  /** what it leaves more than the row before; "" for the first */
  readonly more: string;
  /** the classes of the first row, then what comes and goes */
  readonly classes: string;
  /** the week that is shown */
  readonly now: boolean;
};

/** An efficient pair a row; `now` is the count of the week that is shown. */
export function curveRows(points: readonly PointJson[], now: number, write: WeekWriter): readonly CurveRow[] {
  return points.map(({ count, leaves, proven, chosen }, at) => {
    const before = points[at - 1]?.leaves;
    const text = write.amount(leaves);
    return {
      count,
      at: Number(leaves),
      leaves: proven ? text : `${text} or more`,
      more: before === undefined ? "" : write.amount(amountDifference(leaves, before)),
      classes: stepWords(points[at - 1]?.chosen ?? [], chosen, write.name),
      now: count === now,
    };
  });
}

/** "and Lunch at the mill", "Private hour in place of Cover" */
function stepWords(before: readonly string[], chosen: readonly string[], name: WeekWriter["name"]): string {
  const comes = listedWords(chosen.filter((id) => !before.includes(id)).map(name));
  const goes = listedWords(before.filter((id) => !chosen.includes(id)).map(name));
  if (before.length === 0) return comes;
  return goes === "" ? `and ${comes}` : `${comes} in place of ${goes}`;
}

/** Weeks that leave as much: "Private hour in place of Cover." */
export function tieSentences(
  { ties, chosen }: Pick<WeekHead, "ties" | "chosen">,
  { name }: WeekWriter,
): readonly string[] {
  return ties.map((tie) => {
    const comes = tie.filter((id) => !chosen.includes(id)).map(name);
    const goes = chosen.filter((id) => !tie.includes(id)).map(name);
    if (goes.length === 0) return `As much is left with ${listedWords(comes)} besides.`;
    if (comes.length === 0) return `As much is left without ${listedWords(goes)}.`;
    return `As much is left with ${listedWords(comes)} in place of ${listedWords(goes)}.`;
  });
}

/** 200 minutes are "3 h 20 min". */
export function hoursWords(minutes: number): string {
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}
