import { bad, type CurrencyCode, good, type Problem, problem, type Result } from "#core/words";
import type { YearMoneyDocument } from "../money-document.ts";
import type { Droppable, PathQuestion } from "../money-types.ts";
import { readOne } from "../read-amounts.ts";

type PathDocument = NonNullable<YearMoneyDocument["path"]>;

// 3^10 ways from one kept set to a smaller one: 59,049 a month
const MOST_DROPPED = 10;

/**
 * Problems: "path-need-nought", "path-level", "path-window", "path-together", "path-too-many", "path-work-unknown",
 * "path-notice", "path-hours".
 */
export function readPath(
  path: PathDocument,
  work: YearMoneyDocument["work"],
  currency: CurrencyCode,
): Result<PathQuestion> {
  const need = readOne(path.need, currency, "path.need");
  if (!need.ok) return need;
  const problems = [
    ...(need.value === 0 ? [needNought()] : []),
    ...rangeProblems(path),
    ...path.mayDrop.flatMap((it, at) => dropProblems(path, work, it, at)),
  ];
  if (problems.length > 0) return bad(...problems);
  const { level, window, together } = path;
  const mayDrop: readonly Droppable[] = path.mayDrop.map(({ id, hours, noticeWeeks }) => ({
    work: work.findIndex((it) => it.id === id),
    hours,
    noticeWeeks,
  }));
  return good({ need: need.value, level, window, together, mayDrop });
}

function needNought(): Problem {
  const next = "Give what you need a month before tax, more than 0.";
  return problem("path-need-nought", "path.need", "A need of 0 is met by nothing at all.", next);
}

function rangeProblems({ level, window, together, mayDrop }: PathDocument): readonly Problem[] {
  const told: Problem[] = [];
  if (!(level >= 0.5 && level <= 0.99))
    told.push(
      problem(
        "path-level",
        "path.level",
        `To be sure by ${level} cannot be meant.`,
        "Give 0.5 to 0.99: 0.8 is eight of ten.",
      ),
    );
  if (!(Number.isInteger(window) && window >= 1 && window <= 12))
    told.push(
      problem(
        "path-window",
        "path.window",
        `${window} months to make up a thin one cannot be meant.`,
        "Give whole months from 1 to 12.",
      ),
    );
  if (!(together >= 0 && together <= 1))
    told.push(
      problem(
        "path-together",
        "path.together",
        `Classes cannot rise and fall together by ${together}.`,
        "Give a number from 0 to 1.",
      ),
    );
  if (mayDrop.length > MOST_DROPPED)
    told.push(
      problem(
        "path-too-many",
        "path.mayDrop",
        `${mayDrop.length} classes to let go of are too many to try every order.`,
        `Give ${MOST_DROPPED} at most.`,
      ),
    );
  return told;
}

function dropProblems(
  { mayDrop }: PathDocument,
  work: YearMoneyDocument["work"],
  { id, hours, noticeWeeks }: PathDocument["mayDrop"][number],
  at: number,
): readonly Problem[] {
  const place = `path.mayDrop[${at}]`;
  const shown = `“${id.slice(0, 40)}”`;
  if (!work.some((it) => it.id === id)) {
    const next = "Give the id of something in the list of work.";
    return [problem("path-work-unknown", `${place}.id`, `Nothing that is taught is called ${shown}.`, next)];
  }
  if (mayDrop.findIndex((it) => it.id === id) !== at)
    return [problem("path-work-twice", `${place}.id`, `${shown} stands there twice.`, "Leave one out.")];
  if (!(hours >= 0 && hours <= 24))
    return [
      problem(
        "path-hours",
        `${place}.hours`,
        `${hours} hours a session cannot be meant.`,
        "Give hours from 0 to 24.",
      ),
    ];
  if (Number.isInteger(noticeWeeks) && noticeWeeks >= 0 && noticeWeeks <= 52) return [];
  const says = `${noticeWeeks} weeks of notice cannot be meant.`;
  return [problem("path-notice", `${place}.noticeWeeks`, says, "Give whole weeks from 0 to 52.")];
}
