import { exactText, type Minor } from "#core/words";
import { Fraction } from "fraction.js";
import { courseTerms, type CourseTerms, type MonthlySpread } from "../ladder/course-terms.ts";
import type { Tier } from "../ladder/tier.ts";
import { payerInWords } from "../payer-key.ts";
import { type AmountWriter, coinText } from "../reply.ts";
import type { CourseJson, MonthlyJson } from "./price-json.ts";
import type { PriceQuestion } from "./price-question.ts";

/** Each course with what a late joiner pays and what comes back for a session that she cancels. */
export function coursesJson({ tiers, currency }: PriceQuestion, write: AmountWriter): readonly CourseJson[] {
  const text = (amount: Minor): string => coinText(new Fraction(amount), currency);
  const written = (amount: Minor): string => write(new Fraction(amount), currency);
  return tiers
    .filter(({ kind }) => kind === "course")
    .map((tier) => {
      const terms = courseTerms({ sessions: tier.classes, price: tier.price });
      return {
        key: tier.key,
        sessions: tier.classes,
        price: text(tier.price),
        perSession: exactText(terms.perSession, currency),
        says: courseSentence(tier, terms, written),
        lateJoiner: terms.lateJoiner.map((it) => ({ ...it, price: text(it.price) })),
        refunds: terms.refunds.map(text),
      };
    });
}

/** "A course of 6 for 54.00 is 9.00 a session: who joins with 4 left pays 36.00, and a session …" */
function courseSentence(tier: Tier, { lateJoiner, refunds }: CourseTerms, written: Written): string {
  const { classes, price } = tier;
  const name = payerInWords(tier.key);
  const [back] = refunds;
  if (classes === 1 || back === undefined) {
    return `${capital(name)} costs ${written(price)}, which comes back if you cancel it.`;
  }
  // two thirds of the way from the end: early enough that a teacher still takes somebody
  const late = lateJoiner[Math.ceil(classes / 3)] ?? lateJoiner.at(-1);
  const joins =
    late === undefined ? "" : `who joins with ${late.remaining} left pays ${written(late.price)}, and `;
  const each = evenly(refunds) ? written(back) : `${written(least(refunds))} or ${written(most(refunds))}`;
  return `${capital(name)} for ${written(price)}: ${joins}a session that you cancel gives back ${each}.`;
}

type Written = (amount: Minor) => string;

/** A year of sessions in twelve payments, and that they go on when there is no class. */
export function monthlyJson({ monthly, currency }: PriceQuestion, write: AmountWriter): MonthlyJson | null {
  if (monthly === null) return null;
  const text = (amount: Minor): string => coinText(new Fraction(amount), currency);
  return {
    perSession: text(monthly.perSession),
    sessions: monthly.sessions,
    year: text(monthly.year),
    payments: monthly.payments.map(text),
    says: monthlySentence(monthly, (amount) => write(new Fraction(amount), currency)),
  };
}

function monthlySentence({ perSession, sessions, year, payments }: MonthlySpread, written: Written): string {
  const [low, high] = [least(payments), most(payments)];
  const more = payments.filter((it) => it === high).length;
  const spread =
    low === high
      ? `twelve payments of ${written(low)}`
      : `twelve payments, ${12 - more} of ${written(low)} and ${more} of ${written(high)}`;
  const count = sessions === 1 ? "1 session" : `${sessions} sessions`;
  return `Paid by the month, ${count} a year at ${written(perSession)} are ${written(year)}: ${spread}. Say when it is sold that a month without class is paid for too.`;
}

function evenly(amounts: readonly Minor[]): boolean {
  return least(amounts) === most(amounts);
}

function least(amounts: readonly Minor[]): Minor {
  return amounts.reduce((low, it) => (it < low ? it : low));
}

function most(amounts: readonly Minor[]): Minor {
  return amounts.reduce((high, it) => (it > high ? it : high));
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
