import { guessesBehind, isGuess } from "#core/class";
import type { CourseJson, MonthlyJson, PriceJson } from "#core/price";
import type { PricesAsked } from "./prices-asked.ts";
import type { PriceSheetInput } from "./price-sheet.ts";
import { missing, type SheetPart, saidOn, type SheetWorking, unsound } from "./sheet-part.ts";
import { atTheClass } from "./price-question.ts";

export type CoursesPart = SheetPart;

/** What a late joiner of a course pays, what comes back for a session that is cancelled, and a year by the month. */
export function coursesPart(input: PriceSheetInput, asked: PricesAsked): CoursesPart {
  if (asked.kind !== "ready") return asked;
  if (!asked.answer.ok) return unsound(asked.answer.problems.map(atTheClass));
  const { courses, monthly } = asked.answer.value;
  if (courses.length === 0 && monthly === null) {
    return missing("There is no course and no monthly payment.", "Add one under the prices to have one.");
  }
  return saidOn(input, guessesOf(input), saysOf(asked.answer.value), [
    ...courses.flatMap(courseWorkings),
    ...(monthly === null ? [] : [monthlyWorking(monthly)]),
  ]);
}

function saysOf({ courses, monthly }: PriceJson): readonly string[] {
  return [
    ...courses.map(({ says }) => says),
    ...(courses.length === 0
      ? []
      : [
          "Who misses a session of a course has paid for it all the same; what one person brings is counted as if everybody came each time, so it is a little low.",
        ]),
    ...(monthly === null ? [] : [monthly.says]),
    "What must be paid back, and how a payment that goes on may be ended, differs from place to place: check the local law.",
  ];
}

function guessesOf({ document }: PriceSheetInput): readonly string[] {
  const behind = guessesBehind(document, "break-even");
  const year = document.prices.monthly !== undefined && isGuess(document, "year.closures");
  return [...behind.filter((it) => it.startsWith("prices.")), ...(year ? ["year.closures"] : [])];
}

function courseWorkings({ sessions, price, lateJoiner, refunds }: CourseJson): readonly SheetWorking[] {
  const joining = lateJoiner.map(({ remaining, price: pays }) => ({
    label: remaining === 1 ? "1 session left" : `${remaining} sessions left`,
    sum: remaining === sessions ? "the whole course" : `${price} ÷ ${sessions} × ${remaining}`,
    amount: pays,
  }));
  const back = alike(refunds).map(({ amount, at }) => ({
    label: at.length === sessions ? "Each session that is cancelled" : `Session ${listed(at)} is cancelled`,
    sum: `${price} ÷ ${sessions}`,
    amount,
  }));
  return [
    { title: `Joining a course of ${sessions} late`, lines: joining },
    {
      title: `What comes back of a course of ${sessions}`,
      lines: [...back, { label: "All of it together", sum: "", amount: price, total: true }],
    },
  ];
}

function monthlyWorking({ perSession, sessions, year, payments }: MonthlyJson): SheetWorking {
  return {
    title: "A year in twelve payments",
    lines: [
      { label: "The year", sum: `${perSession} × ${sessions} sessions`, amount: year },
      ...alike(payments).map(({ amount, at }) => ({
        label: at.length === 12 ? "Each payment" : `Payment ${listed(at)}`,
        sum: `${year} ÷ 12`,
        amount,
      })),
      { label: "All twelve together", sum: "", amount: year, total: true },
    ],
  };
}

/** Equal amounts together, with their places from 1: 8.33 at 1, 3, 4 and 6. */
function alike(amounts: readonly string[]): readonly { readonly amount: string; readonly at: number[] }[] {
  return [...new Set(amounts)].map((amount) => ({
    amount,
    at: amounts.flatMap((it, index) => (it === amount ? [index + 1] : [])),
  }));
}

function listed(at: readonly number[]): string {
  return at.length < 2 ? at.join("") : `${at.slice(0, -1).join(", ")} or ${at.at(-1) ?? ""}`;
}
