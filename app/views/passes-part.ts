import { isPlanningGuess, planningOf } from "#core/class";
import { chanceText, type PassJson, passAnswer } from "#core/price";
import type { Problem } from "#core/words";
import { dateWords } from "./date-words.ts";
import type { PriceSheetInput } from "./price-sheet.ts";
import { missing, type SheetPart, saidOn, type SheetWorking, unsound } from "./sheet-part.ts";

export type PassRow = {
  readonly classes: number;
  readonly teachingWeeks: number;
  /** "10 %" */
  readonly losing: string;
  /** "11 May 2027" */
  readonly until: string;
};

export type PassesPart = SheetPart<{ readonly passes: readonly PassRow[] }>;

/** For how long each pass should run, and which of its holders would lose classes. */
export function passesPart(input: PriceSheetInput): PassesPart {
  const { document } = input;
  if (document.prices.passes.length === 0) {
    return missing("There is no pass, so nothing has a use-by.", "Add a pass under the prices to have one.");
  }
  const read = document.prices.passes.map(({ classes }, index) => ({
    index,
    answer: passOf(input, classes),
  }));
  const problems = read.flatMap(({ index, answer }) =>
    answer.ok ? [] : answer.problems.map((it) => atThePass(it, index)),
  );
  if (problems.length > 0) return unsound(unique(problems));
  const answers = read.flatMap(({ answer }) => (answer.ok ? [answer.value.json] : []));
  const says = [
    ...answers.map((it) => passSentence(it, input)),
    ...answers.flatMap((it) => movedSentence(it, input)),
    ...closuresSentence(answers, input),
    "What a pass must allow, like a refund, differs from place to place: check the local law.",
  ];
  const guesses = (["attendance", "confidence"] as const)
    .filter((name) => isPlanningGuess(document, name))
    .map((name) => `planning.${name}`);
  return {
    ...saidOn(input, guesses, says, answers.flatMap(workingsOf)),
    passes: answers.map((it) => rowOf(it, input)),
  };
}

/** A pass that is sold on the next evening of the class. */
function passOf({ document, today }: PriceSheetInput, classes: number) {
  const { attendance, confidence } = planningOf(document);
  const { weekday, year } = document;
  const from = today > year.from ? today : year.from;
  return passAnswer({
    classes,
    attendance,
    confidence,
    calendar: { from, weekday, closures: year.closures },
  });
}

const moved: Readonly<Record<string, string>> = {
  attendance: "planning.attendance",
  confidence: "planning.confidence",
  "calendar.from": "year.from",
  "calendar.weekday": "weekday",
};

function atThePass(problem: Problem, index: number): Problem {
  if (problem.place === "classes") return { ...problem, place: `prices.passes[${index}].classes` };
  const place = moved[problem.place] ?? problem.place.replace(/^calendar\.closures/, "year.closures");
  return { ...problem, place };
}

/** Every pass tells the same of what they share. */
function unique(problems: readonly Problem[]): readonly Problem[] {
  return problems.filter(
    (it, at) => problems.findIndex(({ code, place }) => code === it.code && place === it.place) === at,
  );
}

function passSentence(
  { classes, teachingWeeks, shareLosingClasses }: PassJson,
  { document }: PriceSheetInput,
): string {
  const { attendance } = planningOf(document);
  return `A pass of ${classes} should run for ${teachingWeeks} teaching weeks: of the holders who come to ${chanceText(attendance)} of the evenings, ${chanceText(shareLosingClasses)} would then lose classes.`;
}

function movedSentence({ classes, useBy }: PassJson, { practice }: PriceSheetInput): readonly string[] {
  if (useBy === null) return [];
  const until = `Sold for the next evening, a pass of ${classes} is good until ${dateWords(useBy.date, practice.locale)}`;
  const count = useBy.lost.length;
  if (count === 0) return [`${until}; no closure lies before it.`];
  const from = dateWords(useBy.withoutClosures, practice.locale);
  return [
    `${until}: ${count === 1 ? "1 closed date moves" : `${count} closed dates move`} it from ${from}: ${reasonsOf(useBy.lost)}.`,
  ];
}

/** "Easter 2, half-term 1" */
function reasonsOf(lost: readonly { readonly why: string }[]): string {
  const reasons = [...new Set(lost.map(({ why }) => why))];
  return reasons.map((why) => `${why} ${lost.filter((it) => it.why === why).length}`).join(", ");
}

/** Closures are known as far as the teaching year goes. */
function closuresSentence(
  answers: readonly PassJson[],
  { document, practice }: PriceSheetInput,
): readonly string[] {
  const { until } = document.year;
  const beyond = answers.some(({ useBy }) => useBy !== null && useBy.date > until);
  return beyond
    ? [
        `The year is entered until ${dateWords(until, practice.locale)} only; closures after it will move the date further.`,
      ]
    : [];
}

function workingsOf({ classes, working, table }: PassJson): readonly SheetWorking[] {
  const lines = table.map((it) => ({
    label: it.teachingWeeks === 1 ? "1 teaching week" : `${it.teachingWeeks} teaching weeks`,
    sum: "lose classes",
    amount: chanceText(it.shareLosingClasses),
  }));
  return [
    { title: `Whether a pass of ${classes} is used up`, lines: working },
    { title: `Who would lose classes of a pass of ${classes}`, lines },
  ];
}

function rowOf(
  { classes, teachingWeeks, shareLosingClasses, useBy }: PassJson,
  { practice }: PriceSheetInput,
): PassRow {
  return {
    classes,
    teachingWeeks,
    losing: chanceText(shareLosingClasses),
    until: useBy === null ? "" : dateWords(useBy.date, practice.locale),
  };
}
