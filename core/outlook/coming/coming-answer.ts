import { withoutNoise } from "#core/price";
import { dayNumberOf } from "#kernels/calendar";
import { bad, good, problem, type Result } from "#core/words";
import { comingCaution, comingSentences, staysSentences } from "./coming-words.ts";
import { FITTED_DIGITS } from "./fitted-digits.ts";
import type { PersonComing, Stays } from "./coming-types.ts";
import { readRecords } from "./read-records.ts";
import { type Coming, type ComingQuestion, stillComing } from "./still-coming.ts";
import { curveOf, staysOf } from "./stays.ts";

export type ComingAnswerQuestion = ComingQuestion & {
  /** only who was first seen on this day or later began then; the others may have come long before */
  readonly newSince?: string;
};

export type ComingAnswer = {
  readonly sentences: readonly string[];
  readonly caution: string;
  readonly coming: Coming;
  readonly newcomers: Stays;
};

/** Who is still coming, and how long newcomers stay. Problems: those of `stillComing`, "date-unreadable". */
export function comingAnswer(question: ComingAnswerQuestion): Result<ComingAnswer> {
  const coming = stillComing(question);
  if (!coming.ok) return coming;
  const newcomers = newcomersOf(question, coming.value.notSeenFor);
  if (!newcomers.ok) return newcomers;
  const sentences = [...comingSentences(coming.value), ...staysSentences(newcomers.value)];
  return good({ sentences, caution: comingCaution, coming: coming.value, newcomers: newcomers.value });
}

function newcomersOf(question: ComingAnswerQuestion, goneAfter: number): Result<Stays> {
  const read = readRecords(question);
  if (!read.ok) return read;
  const since = readNewSince(question.newSince);
  if (!since.ok) return since;
  const asked = { period: "week", goneAfter, newSince: since.value } as const;
  return good(curveOf(staysOf(read.value, asked), asked));
}

/** A day's number; long before every day where none is given. */
export function readNewSince(date: string | undefined): Result<number> {
  if (date === undefined) return good(Number.NEGATIVE_INFINITY);
  const day = dayNumberOf(date);
  if (day !== undefined) return good(day);
  const says = `“${date.slice(0, 40)}” is not a date of the calendar.`;
  return bad(problem("date-unreadable", "newSince", says, "Write year, month and day like 2027-02-28."));
}

/** The answer for another program: plain numbers, ended after seven digits. */
export function comingJson({ sentences, caution, coming, newcomers }: ComingAnswer) {
  const { fit, people, notSeen, ...rest } = coming;
  return withoutNoise(
    {
      sentences,
      caution,
      model: fit?.model ?? null,
      parameters: fit?.fitted.parameters ?? null,
      logLikelihood: fit?.fitted.logLikelihood ?? null,
      settled: fit?.fitted.settled ?? null,
      ...rest,
      people: people.map(personJson),
      notSeen: notSeen.map((it) => it.person),
      newcomers,
    },
    FITTED_DIGITS,
  );
}

function personJson({ stillComing, comesAgain, expectedVisits, ...rest }: PersonComing) {
  return { ...rest, stillComing, comesAgain, expectedVisits };
}
