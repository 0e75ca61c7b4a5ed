import { passUseBy, readDemand, readLivePasses, readPart, readStudio } from "#core/price";
import { bad, type CurrencyCode, good, type Problem, problem, type Result, readAmount } from "#core/words";
import type { Planning } from "./planning-document.ts";
import { readStart, readWeekday } from "./read-class-fields.ts";
import { readPlanningHalls } from "./read-planning-halls.ts";
import { usualPlanning } from "./planning-of.ts";

/**
 * What a planning says, looked at as far as it stands alone; whether beliefs make a curve is told with the
 * answer. Problems: those of a pass and of amounts, "dispersion-out-of-range", "heads-out-of-range",
 * "sessions-out-of-range", "share-out-of-range", "survey-too-long".
 */
export function readPlanning(planning: Planning | undefined, currency: CurrencyCode): Result<null> {
  if (planning === undefined) return good(null);
  const { attendance, confidence, dispersion, termEvenings, beliefs = [], survey = "" } = planning;
  const { rise, target, live, slots = [] } = planning;
  const problems = [
    ...problemsOf(
      passUseBy({
        classes: 1,
        attendance: attendance ?? usualPlanning.attendance,
        confidence: confidence ?? usualPlanning.confidence,
      }),
      "planning.",
    ),
    ...problemsOf(readDemand(0, dispersion ?? 1, "planning")),
    ...evenings(termEvenings ?? usualPlanning.termEvenings),
    ...beliefs.flatMap(({ price, heads }, index) => {
      const place = `planning.beliefs[${index}]`;
      return [
        ...problemsOf(readAmount(price, currency, `${place}.price`)),
        ...problemsOf(readDemand(heads, 1, place)),
      ];
    }),
    ...(rise === undefined ? [] : problemsOf(readAmount(rise, currency, "planning.rise"))),
    ...(target === undefined ? [] : targetProblems(target, currency)),
    ...lengthOf(survey),
    ...problemsOf(readLivePasses({ live, currency }), "planning."),
    ...slots.flatMap(slotProblems),
    ...problemsOf(readPlanningHalls(planning.halls, currency)),
    ...problemsOf(readStudio(planning.studio, currency, "planning.studio")),
  ];
  return problems.length > 0 ? bad(...problems) : good(null);
}

function problemsOf(read: Result<unknown>, within = ""): readonly Problem[] {
  return read.ok ? [] : read.problems.map((it) => ({ ...it, place: `${within}${it.place}` }));
}

const MOST_EVENINGS = 60;

function evenings(count: number): readonly Problem[] {
  if (Number.isInteger(count) && count >= 1 && count <= MOST_EVENINGS) return [];
  const says = `${count} evenings are no term.`;
  const next = `Give whole evenings, 1 to ${MOST_EVENINGS}.`;
  return [problem("sessions-out-of-range", "planning.termEvenings", says, next)];
}

function targetProblems(
  { perHour, taxShare }: NonNullable<Planning["target"]>,
  currency: CurrencyCode,
): readonly Problem[] {
  const place = "planning.target";
  return [
    ...problemsOf(readAmount(perHour, currency, `${place}.perHour`)),
    ...problemsOf(readPart(taxShare, `${place}.taxShare`)),
  ];
}

function slotProblems(
  { weekday, start }: NonNullable<Planning["slots"]>[number],
  index: number,
): readonly Problem[] {
  const place = `planning.slots[${index}]`;
  return [
    ...problemsOf(readWeekday(weekday)).map((it) => ({ ...it, place: `${place}.weekday` })),
    ...problemsOf(readStart(start)).map((it) => ({ ...it, place: `${place}.start` })),
  ];
}

const LONGEST_SURVEY = 20_000;

function lengthOf(survey: string): readonly Problem[] {
  if (survey.length <= LONGEST_SURVEY) return [];
  const says = `The survey has ${survey.length} letters.`;
  return [problem("survey-too-long", "planning.survey", says, `Keep it to ${LONGEST_SURVEY}.`)];
}
