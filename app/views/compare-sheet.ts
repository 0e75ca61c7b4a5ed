import type { ClassDocument } from "#core/class";
import { type CompareJson, compareAnswer, type MoneyWriter } from "#core/price";
import { bad, type PracticeDocument, type Problem, type Result, readCurrency } from "#core/words";
import type { ChangeRow } from "./changes-part.ts";
import { changeRow } from "./changes-part.ts";
import { compareTables, type ComparedRow } from "./compare-rows.ts";
import {
  type By,
  compareDocument,
  type HallAsked,
  type HallOffered,
  hallsAsked,
} from "./compare-question.ts";
import { type Missing, missing, type Unsound, unsound } from "./sheet-part.ts";

export type CompareSheetInput = {
  readonly practice: Pick<PracticeDocument, "currency" | "locale">;
  readonly document: ClassDocument;
  readonly halls: readonly HallOffered[];
  /** by which measure the halls are put in order and changes are looked for */
  readonly by: By;
  readonly money: MoneyWriter;
};

/** Halls for a class: who comes first, three orders of them with the same people and full, and why they differ. */
export type CompareSheet =
  | {
      readonly kind: "ready";
      /** sentences, the answer first */
      readonly says: readonly string[];
      /** with the same people wanting to come, and with every hall full */
      readonly expected: readonly ComparedRow[];
      readonly full: readonly ComparedRow[];
      readonly orders: readonly HallOrder[];
      readonly changes: readonly ChangeRow[];
    }
  | Missing
  | Unsound;

/** "By the session: Tithe Barn Hall; Quay Street Mission Room." */
export type HallOrder = {
  readonly by: string;
  readonly expected: readonly string[];
  readonly full: readonly string[];
};

/** Compares the halls of a practice for one class; pure, some tens of milliseconds. */
export function compareSheet(input: CompareSheetInput): CompareSheet {
  const currency = readCurrency(input.practice.currency);
  if (!currency.ok) return unsound(currency.problems);
  const { asked, leftOut } = hallsAsked(input.halls, currency.value);
  if (asked.length === 0) return nothingToCompare(leftOut.map(({ name, why }) => `${name}: ${why}.`));
  const answered = answerFor(input, asked);
  if (!answered.ok) return unsound(answered.problems);
  const others = [...leftOut.map(({ name, why }) => `${name} is left out: ${why}.`), ...answered.leftOut];
  return sheetOf(input, answered.json, others);
}

function nothingToCompare(whys: readonly string[]): Missing {
  return whys.length === 0
    ? missing("There is no hall to compare yet.", "Draw the halls, two or more, and enter what they charge.")
    : missing("No hall can be compared yet.", whys.join(" "));
}

type Answered =
  | { readonly ok: true; readonly json: CompareJson; readonly leftOut: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A hall whose own figures cannot be used is left out, with what is wrong, and the others are compared. */
function answerFor(input: CompareSheetInput, halls: readonly HallAsked[]): Answered {
  const read = ask(input, halls);
  if (read.ok) return { ok: true, json: read.value, leftOut: [] };
  const wrong = new Set(read.problems.flatMap(({ place }) => hallAt(place)));
  if (wrong.size === 0 || wrong.size === halls.length)
    return { ok: false, problems: read.problems.map(atTheClass) };
  const again = ask(
    input,
    halls.filter((_, at) => !wrong.has(at)),
  );
  if (!again.ok) return { ok: false, problems: again.problems.map(atTheClass) };
  const leftOut = read.problems.flatMap((it) =>
    hallAt(it.place).map((at) => `${halls[at]?.name ?? ""} is left out: ${it.says} ${it.next}`),
  );
  return { ok: true, json: again.value, leftOut };
}

function ask(
  { document, by, practice, money }: CompareSheetInput,
  halls: readonly HallAsked[],
): Result<CompareJson> {
  const currency = readCurrency(practice.currency);
  if (!currency.ok) return currency;
  const made = compareDocument(document, halls, currency.value, by);
  if (!made.ok) return made;
  const read = compareAnswer(made.value, (exact) => money(exact));
  return read.ok ? { ok: true, value: read.value.json } : bad(...read.problems);
}

function hallAt(place: string): readonly number[] {
  const at = /^halls\[(\d+)\]/.exec(place)?.[1];
  return at === undefined ? [] : [Number(at)];
}

/** The class's own time stands with the class, the others that are looked at in its planning. */
function atTheClass(problem: Problem): Problem {
  const found = /^slots\[(\d+)\]\.?(.*)$/.exec(problem.place);
  if (found === null) return problem;
  const [, index = "0", field = ""] = found;
  return { ...problem, place: index === "0" ? field : `planning.slots[${Number(index) - 1}].${field}` };
}

function sheetOf(input: CompareSheetInput, json: CompareJson, leftOut: readonly string[]): CompareSheet {
  const { orders } = json;
  const order = (by: string, measure: keyof typeof orders.expected): HallOrder => {
    return { by, expected: orders.expected[measure], full: orders.full[measure] };
  };
  return {
    kind: "ready",
    says: [...json.sentences, ...leftOut],
    ...compareTables(json, input),
    orders: [
      order("By the session", "perSession"),
      order("By the year", "perYear"),
      order("By the hour from door to door", "perHour"),
    ],
    changes: json.changes.map(changeRow),
  };
}
