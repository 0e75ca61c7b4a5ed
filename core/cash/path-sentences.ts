import { listed } from "./listed.ts";
import type { Say } from "./money-sentences.ts";
import type { MoneyYear, PathQuestion } from "./money-types.ts";
import type { PathClass, PathFound } from "./path/path-found.ts";

/** From when on which class can go, by itself and in the best order, with the day of its notice. */
export function pathSentences(
  year: MoneyYear,
  question: PathQuestion,
  found: PathFound,
  say: Say,
): readonly string[] {
  const nameOf = ({ work }: PathClass) => year.work[work]?.name ?? "";
  const sure = `${hundred(question.level)} chances in a hundred of ${say(question.need)} a month`;
  const thin = found.months.findLast(({ chanceWithAll }) => chanceWithAll < question.level);
  const tail = [howCounted(question)];
  if (found.classes.length === 0) return [ownChance(found, question, sure), ...tail];
  if (thin !== undefined && thin === found.months.at(-1))
    return [
      `Within these months nothing can go: even with every class kept there are only ${hundred(thin.chanceWithAll)} chances in a hundred of ${say(question.need)} in ${thin.month}.`,
      ...tail,
    ];
  return [
    ...planSentences(found, nameOf, sure, year.until.toString()),
    ...aloneSentences(found, nameOf),
    ...(thin === undefined
      ? []
      : [`Until ${thin.month} not even all of them together reach that, so that none can go before.`]),
    ...tail,
  ];
}

/** How far it can go, and the order of it. */
function planSentences(
  { classes, freedHours }: PathFound,
  nameOf: (one: PathClass) => string,
  sure: string,
  until: string,
): readonly string[] {
  const going = classes
    .filter(({ planned }) => planned !== null)
    .sort((one, other) => (one.planned?.month ?? 0) - (other.planned?.month ?? 0));
  const last = going.at(-1)?.planned;
  if (last === undefined || last === null) return [`None of these classes can go by ${until} with ${sure}.`];
  const staying = classes.filter(({ planned }) => planned === null).map(nameOf);
  const order = listed(
    going.map(
      (it) => `${nameOf(it)} from ${it.planned?.from ?? ""} (notice by ${it.planned?.noticeBy ?? ""})`,
    ),
  );
  const stay = staying.length === 0 ? "" : ` ${listed(staying)} ${staying.length === 1 ? "stays" : "stay"}.`;
  return [
    staying.length === 0
      ? `From ${last.from} on the rest carries it without ${listed(going.map(nameOf))}: at least ${sure}.`
      : `${going.length} of ${classes.length} classes can go by ${until}, with at least ${sure}.`,
    `Let go of ${order}: the order that frees the most, ${Math.round(freedHours)} hours by ${until}.${stay}`,
  ];
}

function aloneSentences({ classes }: PathFound, nameOf: (one: PathClass) => string): readonly string[] {
  if (classes.length < 2) return [];
  const can = classes.flatMap((it) =>
    it.alone === null ? [] : [`${nameOf(it)} from ${it.alone.from} (notice by ${it.alone.noticeBy})`],
  );
  const cannot = classes.filter(({ alone }) => alone === null).map(nameOf);
  return [
    ...(can.length === 0 ? [] : [`Each by itself, with all the others kept, could go: ${listed(can)}.`]),
    ...(cannot.length === 0
      ? []
      : [
          `${listed(cannot)} cannot go within these months, not even ${cannot.length === 1 ? "by itself" : "one by one"}.`,
        ]),
  ];
}

function ownChance({ months }: PathFound, { level }: PathQuestion, sure: string): string {
  const thin = months.findLastIndex(({ chance }) => chance < level);
  const first = months[thin + 1]?.month;
  if (first === undefined) return `Within these months there are never ${sure}.`;
  return `From ${first} on there are at least ${sure}.`;
}

function howCounted({ window, together }: PathQuestion): string {
  const over =
    window === 1 ? "Each month stands by itself" : `Each month is counted with the ${window - 1} after it`;
  return `${over}, before tax; costs besides the classes are spread evenly. Classes that may go count at their middle, the others by their bands, which go together by ${together} (a guess: 0 is not at all, 1 as one).`;
}

/** 0.8 as 80; never 100 for what is not sure. */
function hundred(chance: number): number {
  return chance >= 1 ? 100 : Math.floor(chance * 100 + 1e-6);
}
