import {
  bad,
  exactNumber,
  exactNumberText,
  good,
  problem,
  type Result,
  together,
  type WorkingLine,
} from "#core/words";
import { binomialAtLeast, binomialPmf, exactBinomialAtLeast } from "#kernels/statistics";
import { chanceText, plainDecimal } from "../chance-text.ts";

/** 5 classes, a holder who comes to three of four, used up in time by 85 of 100 holders: 8 weeks. */
export type PassUse = {
  readonly classes: number;
  /** the share of the sessions a holder could attend that she does attend, between 0 and 1 */
  readonly attendance: number;
  /** the least share of holders who use up the whole pass in time, between 0 and 1; 0.85 unless told */
  readonly confidence?: number | undefined;
};

export type PassUseBy = {
  readonly classes: number;
  readonly attendance: number;
  readonly confidence: number;
  /** the least that is enough: one week fewer is not */
  readonly teachingWeeks: number;
  readonly shareLosingClasses: number;
  /** classes left at the end, on average over all holders */
  readonly expectedClassesLost: number;
  /** fewer and more weeks, and who would lose classes with them */
  readonly table: readonly WeeksLine[];
  readonly working: readonly WorkingLine[];
};

export type WeeksLine = { readonly teachingWeeks: number; readonly shareLosingClasses: number };

export const USUAL_CONFIDENCE = 0.85;

/**
 * The use-by of a pass in teaching weeks: the least T with P(Binomial(T, attendance) ≥ classes) ≥ confidence.
 * Each week the holder comes or not, with the same chance and whatever she did before: a plain model.
 * Problems: "pass-size", "attendance-out-of-range", "confidence-out-of-range", "pass-too-slow".
 */
export function passUseBy(use: PassUse): Result<PassUseBy> {
  const read = readPassUse(use);
  if (!read.ok) return read;
  const { classes, attendance, confidence } = read.value;
  const weeks = leastWeeks(classes, attendance, confidence);
  if (weeks !== null) return good(answered(classes, attendance, confidence, weeks));
  const says = `Coming to ${chanceText(attendance)} of the classes, a pass of ${classes} is not used up in ${MOST_WEEKS} weeks.`;
  return bad(
    problem("pass-too-slow", "classes", says, "Make the pass smaller or look at the attendance again."),
  );
}

/** The share of holders who have classes left after so many teaching weeks: P(Binomial(T, a) < k). */
export function shareLosingClasses(classes: number, attendance: number, teachingWeeks: number): number {
  return 1 - binomialAtLeast(classes, teachingWeeks, attendance);
}

// Ten years of weeks: a pass beyond that is no pass.
const MOST_WEEKS = 520;

/** By halving: the chance grows with the weeks. Null when even the most are not enough. */
function leastWeeks(classes: number, attendance: number, confidence: number): number | null {
  if (classes > MOST_WEEKS || !isEnough(MOST_WEEKS, classes, attendance, confidence)) return null;
  let tooFew = classes - 1;
  let enough = MOST_WEEKS;
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    if (isEnough(middle, classes, attendance, confidence)) enough = middle;
    else tooFew = middle;
  }
  return enough;
}

// Where the doubles are this near to the line, the decimals as written decide in exact fractions.
const NEAR = 1e-9;

function isEnough(weeks: number, classes: number, attendance: number, confidence: number): boolean {
  const chance = binomialAtLeast(classes, weeks, attendance);
  if (Math.abs(chance - confidence) > NEAR) return chance > confidence;
  return exactBinomialAtLeast(classes, weeks, exactNumber(attendance)).gte(exactNumber(confidence));
}

function answered(classes: number, attendance: number, confidence: number, weeks: number): PassUseBy {
  const losing = (teachingWeeks: number): WeeksLine => ({
    teachingWeeks,
    shareLosingClasses: shareLosingClasses(classes, attendance, teachingWeeks),
  });
  const first = Math.max(classes, weeks - 4);
  return {
    classes,
    attendance,
    confidence,
    teachingWeeks: weeks,
    shareLosingClasses: losing(weeks).shareLosingClasses,
    expectedClassesLost: expectedLeft(classes, attendance, weeks),
    table: Array.from({ length: weeks + 5 - first }, (_, step) => losing(first + step)),
    working: working(classes, attendance, confidence, weeks),
  };
}

/** E[(k − X)+]. */
function expectedLeft(classes: number, attendance: number, weeks: number): number {
  let sum = 0;
  for (let used = 0; used < classes; used += 1) {
    sum += (classes - used) * binomialPmf(used, weeks, attendance);
  }
  return sum;
}

function working(classes: number, attendance: number, wanted: number, weeks: number): readonly WorkingLine[] {
  const line = (count: number): WorkingLine => ({
    label: `In ${count} teaching weeks`,
    sum: `at least ${classes} of ${count}, each with a chance of ${plainDecimal(attendance, 4)}`,
    amount: chanceText(binomialAtLeast(classes, count, attendance)),
  });
  const before = weeks > classes ? [line(weeks - 1)] : [];
  const total = {
    label: "Teaching weeks",
    sum: `the fewest with ${chanceText(wanted)} or more`,
    amount: String(weeks),
  };
  return [...before, line(weeks), { ...total, total: true }];
}

function readPassUse({ classes, attendance, confidence = USUAL_CONFIDENCE }: PassUse) {
  return together({
    classes: readPassSize(classes, "classes"),
    attendance: readAttendance(attendance, "attendance"),
    confidence: readConfidence(confidence, "confidence"),
  });
}

const MOST_CLASSES = 999;

export function readPassSize(classes: number, place: string): Result<number> {
  if (Number.isInteger(classes) && classes >= 1 && classes <= MOST_CLASSES) return good(classes);
  const next = `Give a whole number of classes, 1 to ${MOST_CLASSES}.`;
  return bad(problem("pass-size", place, `A pass cannot hold ${classes} classes.`, next));
}

function readAttendance(attendance: number, place: string): Result<number> {
  if (attendance > 0 && attendance < 1) return good(attendance);
  return bad(
    problem("attendance-out-of-range", place, attendanceSays(attendance), attendanceNext(attendance)),
  );
}

function attendanceSays(attendance: number): string {
  if (attendance === 0) return "An attendance of 0 is a holder who never comes, and her pass lasts for ever.";
  if (attendance === 1) return "An attendance of 1 is a holder who never misses a class, and nobody is that.";
  return `An attendance of ${attendance} is not a share of the classes.`;
}

function attendanceNext(attendance: number): string {
  const usual = "Give a share between 0 and 1: 0.75 is three classes of four, 0.6 is three of five.";
  if (!(attendance > 1 && attendance < 100)) return usual;
  return `Give a share between 0 and 1: ${exactNumberText(exactNumber(attendance).div(100))} for ${attendance} %.`;
}

function readConfidence(confidence: number, place: string): Result<number> {
  if (confidence > 0 && confidence < 1) return good(confidence);
  const says = `${confidence} is not a share of the holders that can be promised.`;
  const next = "Give a share between 0 and 1, like 0.85: of 100 holders 85 use up the whole pass in time.";
  return bad(problem("confidence-out-of-range", place, says, next));
}
