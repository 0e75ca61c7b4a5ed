import { chanceText, withoutNoise } from "#core/price";
import { expectedPeriods } from "#kernels/survival";
import { dateOfDay } from "#kernels/calendar";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import { counted, shortDecimal } from "../opening/opening-words.ts";
import { readNewSince } from "./coming-answer.ts";
import { laterSentence, PERIOD_CALLED, staysSentences } from "./coming-words.ts";
import { byName } from "./by-name.ts";
import { aheadProblems, goneAfterProblems } from "./weeks-problems.ts";
import { FITTED_DIGITS } from "./fitted-digits.ts";
import type { Period, Records, StaysFitted } from "./coming-types.ts";
import { readRecords, type RecordsRead } from "./read-records.ts";
import { fitStays, staysOf } from "./stays.ts";

export type StaysAnswerQuestion = Records & {
  readonly period: Period;
  readonly goneAfter: number;
  /** periods ahead, 12 unless told */
  readonly ahead?: number;
  readonly newSince?: string;
};

/** One person, and the periods ahead she is expected to stay through: 0 where she has stopped. */
export type PersonStay = {
  readonly person: string;
  readonly stayed: number;
  readonly stillThere: boolean;
  readonly expectedPeriods: number;
};

export type StaysAnswer = {
  readonly sentences: readonly string[];
  readonly until: string;
  readonly ahead: number;
  readonly stays: StaysFitted;
  /** by name; those who could be watched */
  readonly people: readonly PersonStay[];
};

/**
 * How long people stay, by the beta-geometric: for passes and terms that are renewed, or a class that people either
 * come to or have given up. Problems: those of the records; "gone-after-out-of-range", "weeks-ahead-out-of-range",
 * "stays-too-short" when nobody was watched through a period.
 */
export function staysAnswer(question: StaysAnswerQuestion): Result<StaysAnswer> {
  const { period, goneAfter, ahead = 12 } = question;
  const problems = [...goneAfterProblems(goneAfter), ...aheadProblems(ahead)];
  const read = readRecords(question);
  const since = readNewSince(question.newSince);
  if (!read.ok) return bad(...problems, ...read.problems);
  if (!since.ok) return bad(...problems, ...since.problems);
  if (problems.length > 0) return bad(...problems);
  const asked = { period, goneAfter, newSince: since.value };
  const known = staysOf(read.value, asked);
  if (known.length === 0) return bad(tooShort(period, goneAfter));
  const stays = fitStays(read.value, known, asked, ahead);
  const people = known.map(({ person, time, ended }) => ({
    person: person.person,
    stayed: ended ? time - 1 : time,
    stillThere: !ended,
    expectedPeriods: ended ? 0 : expectedPeriods(stays.fitted.parameters, time, ahead),
  }));
  const inOrder = people.sort(byName);
  const until = dateOfDay(read.value.until);
  const watched = Math.max(...known.map(({ time }) => time));
  return good({
    sentences: sentencesOf(stays, ahead, watched, read.value),
    until,
    ahead,
    stays,
    people: inOrder,
  });
}

function sentencesOf(
  stays: StaysFitted,
  ahead: number,
  watched: number,
  { visitsLater, until }: RecordsRead,
): readonly string[] {
  const { fitted, expected, period } = stays;
  const called = PERIOD_CALLED[period];
  const first = chanceText(expected[0] ?? 1);
  const last = chanceText(expected.at(-1) ?? 1);
  const sum = expected.reduce((total, share) => total + share, 0);
  return [
    ...staysSentences(stays),
    `By the fit ${first} stay through the first ${called} and ${last} through ${counted(ahead, called)}; somebody new stays through ${shortDecimal(sum)} of them on average.`,
    ...(watched < ahead
      ? [
          `Nobody could be watched for longer than ${counted(watched, called)}: what the fit says beyond is a guess.`,
        ]
      : []),
    ...(fitted.settled ? [] : ["The records do not settle these figures: read each of them as a guess."]),
    ...laterSentence(visitsLater, dateOfDay(until)),
  ];
}

/** The answer for another program: plain numbers, ended after seven digits. */
export function staysJson({ sentences, until, ahead, stays, people }: StaysAnswer) {
  const { fitted, expected, curve, ...rest } = stays;
  return withoutNoise(
    {
      sentences,
      model: "beta-geometric",
      parameters: fitted.parameters,
      logLikelihood: fitted.logLikelihood,
      settled: fitted.settled,
      until,
      ahead,
      ...rest,
      expected,
      curve,
      people,
    },
    FITTED_DIGITS,
  );
}

function tooShort(period: Period, goneAfter: number): Problem {
  const called = PERIOD_CALLED[period];
  const says = `Nobody was watched through a ${called} and the ${counted(goneAfter, called)} after it that show who is gone.`;
  return problem(
    "stays-too-short",
    "visits",
    says,
    "Wait for more records, or take somebody for gone sooner.",
  );
}
