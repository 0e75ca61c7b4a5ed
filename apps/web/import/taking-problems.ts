import { checkHappened } from "#app/actions";
import type { HappenedDocument } from "#core/outlook";
import { type Problem, problem } from "#core/words";

/** What the record would be refused for once a file is taken in, in words that do not need the record's inside. */
export function takingProblems(before: HappenedDocument, after: HappenedDocument): readonly Problem[] {
  const checked = checkHappened(after);
  if (checked.ok) return [];
  const unknown = checked.problems.find(({ code }) => code === "capacity-unknown");
  if (unknown !== undefined) return [{ ...unknown, next: "Say how many places an ordinary evening has." }];
  if (!checkHappened(before).ok) return [recordUnsound()];
  return checked.problems.map((it) => withDate(it, after));
}

/** Problem: "rows-unusable". */
export function noneUsable(rows: number): Problem {
  const says = rows === 1 ? "Its one row cannot be used." : `None of its ${rows} rows can be used.`;
  return problem("rows-unusable", "", says, "Look whether the columns are the right ones, and say them.");
}

function recordUnsound(): Problem {
  const says = "The record has something in it that cannot be right, so that nothing can be added to it yet.";
  return problem("record-unsound", "", says, "Put right what is marked in the record first.");
}

/** A place like sessions[12].heads says nothing on a page: the date does. */
function withDate(it: Problem, { sessions }: HappenedDocument): Problem {
  const [, at = "-1"] = /^sessions\[(\d+)/.exec(it.place) ?? [];
  const date = sessions[Number(at)]?.date;
  return date === undefined ? it : { ...it, says: `${date}: ${it.says}` };
}
