import type { ColumnFacts } from "./column-facts.ts";
import type { ColumnUse } from "./column-use.ts";

// Words that stand over such columns in spreadsheets; the more particular ones first count for more.
const NAMED: Readonly<Record<ColumnUse, RegExp>> = {
  person: /\b(person|student|name|client|customer|attendee|participant|who|email|e-mail)\b|nom\b|\bid$/,
  surname: /last.?name|surname|family.?name|nachname|apellido|cognome/,
  date: /\b(date|datum|fecha|data|jour|day|when|session)\b|date$/,
  amount: /amount|paid|price|value|total|fee|takings|betrag|montant/,
  heads: /heads|attend|people|came|present|count|number|how many|persons|total/,
  capacity: /capacity|mats|places|max|limit|holds|room for/,
  turnedAway: /turned|refus|sent home/,
  waiting: /waiting|waitlist/,
  newcomers: /newcomer|new\b|first time|first-time/,
};

/** Called so too, but of something else: the name of a class, the date of a birth. */
const OF_OTHERS: Readonly<Partial<Record<ColumnUse, RegExp>>> = {
  person: /class|course|hall|room|venue|teacher|item|kind|type|status|last.?name|surname|family.?name/,
  date: /birth|born|dob|book|order|paid|payment|creat|join|sign|valid|expir|use.?by|until|modif|updat/,
};

/** How well a column fits a use: 0 where its values cannot be that. */
export function columnFitness(facts: ColumnFacts, use: ColumnUse): number {
  const others = OF_OTHERS[use]?.test(facts.name) === true;
  const named = others ? -1 : NAMED[use].test(facts.name) ? 2 : 0;
  switch (use) {
    case "surname":
      // first names alone would make one person of two
      return named > 0 ? named : 0;
    case "date":
      return facts.dates >= 0.5 || named > 0 ? named + facts.dates * 3 : 0;
    case "person":
      return facts.dates > 0.5 ? 0 : named + looksLikePeople(facts);
    case "amount":
      return named > 0 && facts.numbers >= 0.5 ? named + facts.numbers : 0;
    case "heads":
      // a column that is called so is meant, however its counts are written
      return (facts.wholes >= 0.5 || named > 0) && facts.dates < 0.5 ? named + facts.wholes : 0;
    case "capacity":
    case "turnedAway":
    case "waiting":
    case "newcomers":
      return named > 0 && facts.wholes >= 0.5 ? named + facts.wholes : 0;
  }
}

/**
 * A name is seldom a number, though a number may be somebody's; people come again, and hardly twice on a day, while
 * a number of mats or of classes is there many times a day. Of alike columns the first.
 */
function looksLikePeople({ column, filled, numbers, distinct, onceADay }: ColumnFacts): number {
  const twiceADay = Math.min(1, 3 * (1 - onceADay));
  return filled * 0.5 + (1 - numbers) + (1 - twiceADay) * 1.5 + (1 - distinct) * 0.25 - column * 0.02;
}
