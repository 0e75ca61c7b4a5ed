import {
  bad,
  good,
  type Problem,
  problem,
  readCurrency,
  readDate,
  readMoney,
  type Result,
  together,
  togetherInOrder,
} from "#core/words";
import type { YearMoneyDocument } from "./money-document.ts";
import type { MoneyYear } from "./money-types.ts";
import { readPath } from "./path/read-path.ts";
import { readMove } from "./read-moves.ts";
import { readWork } from "./read-work.ts";
import { readTax } from "./tax/read-tax.ts";

// 100 works of 1,100 sessions at 10 million pounds stay below 2^53 coins
const MOST_PARTS = 100;

/**
 * The money of a year as sound values. Problems: "money-months", "money-empty", "money-too-many", "work-twice"
 * and those of work, moves, tax and the path.
 */
export function readYearMoney(document: YearMoneyDocument): Result<MoneyYear> {
  const currency = readCurrency(document.currency);
  const from = readDate(document.from, "from");
  const wrong = documentProblems(document);
  if (!currency.ok || !from.ok || wrong.length > 0)
    return bad(...[currency, from].flatMap((it) => (it.ok ? [] : it.problems)), ...wrong);
  const until = from.value.add({ months: document.months }).subtract({ days: 1 });
  const { tax, path } = document;
  const read = together({
    opening: readOpening(document.opening, currency.value),
    work: togetherInOrder(document.work.map((it, at) => readWork(it, currency.value, `work[${at}]`))),
    moves: togetherInOrder(
      document.moves.map((it, at) => readMove(it, currency.value, until, `moves[${at}]`)),
    ),
    tax: tax === undefined ? good(null) : readTax(tax, currency.value),
    path: path === undefined ? good(null) : readPath(path, document.work, currency.value),
  });
  if (!read.ok) return read;
  const { guesses } = document;
  return good({ ...read.value, currency: currency.value, from: from.value, until, guesses });
}

function documentProblems({ months, work, moves }: YearMoneyDocument): readonly Problem[] {
  const told: Problem[] = [];
  if (!(Number.isInteger(months) && months >= 1 && months <= 36))
    told.push(problem("money-months", "months", `${months} months cannot be looked at.`, "Give 1 to 36."));
  if (work.length === 0 && moves.length === 0)
    told.push(
      problem(
        "money-empty",
        "work",
        "Nothing comes in and nothing goes out.",
        "Add a class, or other money with its dates.",
      ),
    );
  if (work.length > MOST_PARTS || moves.length > MOST_PARTS)
    told.push(
      problem(
        "money-too-many",
        work.length > MOST_PARTS ? "work" : "moves",
        "There are too many parts to add up.",
        `Give ${MOST_PARTS} classes and ${MOST_PARTS} other amounts at most.`,
      ),
    );
  return [...told, ...twice(work)];
}

function twice(work: YearMoneyDocument["work"]): readonly Problem[] {
  return work.flatMap(({ id }, at) => {
    if (work.findIndex((it) => it.id === id) === at) return [];
    const says = `Two classes are called “${id.slice(0, 40)}”.`;
    return [problem("work-twice", `work[${at}].id`, says, "Give each an id of its own.")];
  });
}

/** The balance may be below nought. */
function readOpening(text: string, currency: Parameters<typeof readMoney>[1]) {
  const read = readMoney(text, currency, "opening");
  if (!read.ok || Math.abs(read.value) <= 100_000_000_000) return read;
  return bad(
    problem(
      "money-absurd",
      "opening",
      `${text.trim()} is too much to be meant.`,
      "Look at the figure again.",
    ),
  );
}
