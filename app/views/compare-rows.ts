import { type CompareJson, datesWords } from "#core/price";
import { currencyDigits, readCurrency, type WorkingLine } from "#core/words";
import { Fraction } from "fraction.js";
import type { CompareSheetInput } from "./compare-sheet.ts";
import { peopleWords } from "./price-amounts.ts";

export type MeasureName = "session" | "year" | "hour";

/** One figure of the table, what it is made of, and whether no other hall leaves more. */
export type ComparedFigure = {
  readonly by: MeasureName;
  readonly says: string;
  readonly most: boolean;
  readonly working: readonly WorkingLine[];
};

export type ComparedRow = {
  readonly hall: string;
  /** "10.7 people of 16 places, 39 evenings" */
  readonly about: string;
  readonly figures: readonly ComparedFigure[];
};

type Hall = CompareJson["halls"][number];
type View = "expected" | "full";

const measures = [
  ["session", "perSession"],
  ["year", "perYear"],
  ["hour", "perHour"],
] as const;

type Tables = Readonly<Record<View, readonly ComparedRow[]>>;

/** Both tables, in the order of the measure that was asked for. */
export function compareTables(json: CompareJson, input: CompareSheetInput): Tables {
  return { expected: rowsOf(json, "expected", input), full: rowsOf(json, "full", input) };
}

function rowsOf(
  { halls, orders }: CompareJson,
  view: View,
  input: CompareSheetInput,
): readonly ComparedRow[] {
  const measure = measures.find(([name]) => name === input.by)?.[1] ?? "perYear";
  const order = orders[view][measure];
  const { writeMoney, digits } = amountsIn(input);
  return halls
    .toSorted((a, b) => order.indexOf(a.said) - order.indexOf(b.said))
    .map((hall) => ({
      hall: hall.said,
      about: aboutOf(hall, view),
      figures: measures.map(([by, key]) => ({
        by,
        says: writeMoney(hall[view][key]),
        most: halls.every((it) => Number(it[view][key]) <= Number(hall[view][key])),
        working: workingOf(hall, view, by, digits),
      })),
    }));
}

function amountsIn({ practice, money }: CompareSheetInput) {
  const currency = readCurrency(practice.currency);
  const digits = currency.ok ? currencyDigits(currency.value) : 2;
  return { digits, writeMoney: (text: string) => money(new Fraction(text).mul(10 ** digits)) };
}

function aboutOf({ capacity, sessions, expected }: Hall, view: View): string {
  const evenings = sessions === 1 ? "1 evening" : `${sessions} evenings`;
  return view === "full"
    ? `${peopleWords(capacity)}, ${evenings}`
    : `${peopleWords(expected.heads)} of ${capacity} places, ${evenings}`;
}

function workingOf(hall: Hall, view: View, by: MeasureName, digits: number): readonly WorkingLine[] {
  const { doorToDoorMinutes } = hall;
  const { perYear, perHour } = hall[view];
  const session = sessionLines(hall, view, digits);
  switch (by) {
    case "session":
      return session;
    case "year":
      return [...session, { label: "A year leaves", sum: datesWords(hall), amount: perYear }];
    case "hour":
      return [
        ...session,
        { label: "An hour leaves", sum: `÷ ${doorToDoorMinutes} min × 60`, amount: perHour },
      ];
  }
}

function sessionLines(hall: Hall, view: View, digits: number): readonly WorkingLine[] {
  const { costPerSession, capacity } = hall;
  const { heads, perSession } = hall[view];
  const people = `${Number(heads.toFixed(3))} people on average, ${capacity} places`;
  const left = new Fraction(perSession).add(new Fraction(costPerSession));
  return [
    {
      label: "They leave",
      sum: view === "full" ? `${capacity} people` : people,
      amount: left.valueOf().toFixed(digits),
    },
    { label: "less a session, on average over its dates", sum: "", amount: costPerSession },
    { label: "A session leaves", sum: "", amount: perSession, total: true },
  ];
}
