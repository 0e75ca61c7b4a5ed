import { listed } from "./listed.ts";
import type { MoneyCase } from "./money-found.ts";
import type { Say } from "./money-sentences.ts";
import type { MoneyYear } from "./money-types.ts";
import { potAt } from "./pot-at.ts";
import { setAside } from "./set-aside.ts";
import { nextRate } from "./tax/tax-bill.ts";
import type { TaxDate } from "./tax/tax-dates.ts";
import type { TaxQuestion } from "./tax/tax-types.ts";
import type { TaxYear } from "./tax/tax-years.ts";

/** What to put aside of each receipt, why, and what falls due when. */
export function taxSentences(
  year: MoneyYear,
  question: TaxQuestion,
  middle: MoneyCase,
  say: Say,
): readonly string[] {
  const { taxYears, taxDates, flows } = middle;
  const eve = year.from.subtract({ days: 1 }).toString();
  const pot = potAt(eve, question, taxYears, flows, taxDates);
  return [
    ...taxYears.flatMap((it) => yearSentences(it, question, say)),
    ...class2Sentence(taxYears, say),
    ...payingSentence(taxDates, year.until.toString(), say),
    ...firstJanuary(question, taxDates, say),
    ...registerSentence(taxDates),
    ...potSentence(question, pot, year.from.toString(), say),
  ];
}

function yearSentences(year: TaxYear, question: TaxQuestion, say: Say): readonly string[] {
  const { trading, chosen, unseenDays } = year;
  const next = nextRate(chosen.table, question, trading, 10_000).mul(10_000);
  return [
    billSentence(year, say),
    `It rests on ${say(trading.income)} received and ${say(trading.costs)} of costs; of the next ${say(10_000)} earned, ${say(Math.round(next.valueOf()))} would go in tax.`,
    ...(chosen.own
      ? []
      : [`There are no rates for that year here yet: those of ${chosen.table.name} stand in.`]),
    ...(unseenDays === 0
      ? []
      : [`Its last ${unseenDays} days lie after these months and are taken to be like their average day.`]),
    ...allowanceSentence(year, say),
  ];
}

function billSentence(year: TaxYear, say: Say): string {
  const { bill } = year.bill;
  const span = spanWords(year);
  if (bill > 0)
    return `Put aside ${setAside(year).percent} % of each receipt for the tax year ${span}: an estimated bill of ${say(bill)}.`;
  const why = bill < 0 ? `an estimated ${say(-bill)} comes back` : "on these figures there is no tax";
  return `Nothing to put aside for the tax year ${span}: ${why}.`;
}

function allowanceSentence({ bill, trading, chosen }: TaxYear, say: Say): readonly string[] {
  if (bill.method !== "allowance" || chosen.table.rules !== "uk") return [];
  return [
    `The trading allowance of ${say(chosen.table.tradingAllowance)} in place of costs of ${say(trading.costs)} leaves less to tax.`,
  ];
}

/** Of the first year with so small a profit: the next are like it, or bigger. */
function class2Sentence(years: readonly TaxYear[], say: Say): readonly string[] {
  const year = years.find(({ bill }) => bill.class2 !== null);
  const table = year?.chosen.table;
  if (year === undefined || table === undefined || table.rules !== "uk") return [];
  return [
    `With a profit under ${say(table.class2.smallProfits)} the tax year ${spanWords(year)} may not count for the state pension, unless a job makes it; Class 2 of ${say(year.bill.class2 ?? 0)}, paid of your own will, does too. It is not in the bill.`,
  ];
}

function payingSentence(dates: readonly TaxDate[], until: string, say: Say): readonly string[] {
  const paid = dates.filter(({ date, coins }) => coins !== null && date <= until);
  if (paid.length === 0) return ["No tax falls due in these months."];
  const days = [...new Set(paid.map(({ date }) => date))].map((day) => {
    const here = paid.filter(({ date }) => date === day);
    const sum = here.reduce((total, { coins }) => total + (coins ?? 0), 0);
    const why = listed(here.map((it) => whatWords(it, here.length > 1, say)));
    return `${sum < 0 ? `${say(-sum)} back` : say(sum)} on ${day} (${why})`;
  });
  return [`Tax in these months: ${listed(days)}.`];
}

function whatWords({ what, year, coins }: TaxDate, withAmount: boolean, say: Say): string {
  const amount = withAmount ? `${say(coins ?? 0)} ` : "";
  const forYear = `the tax year from ${year}`;
  switch (what) {
    case "balance":
      return `${amount}for what is left of ${forYear}`;
    case "on account":
      return `${amount}on account of ${forYear}`;
    case "instalment":
      return `${amount}as an estimate for ${forYear}`;
    case "register":
      return "";
  }
}

/** The shock of the second year: a whole bill and half of the next on one day. */
function firstJanuary(question: TaxQuestion, dates: readonly TaxDate[], say: Say): readonly string[] {
  const balance = dates.find(({ what }) => what === "balance");
  if (question.rules !== "uk" || balance === undefined) return [];
  const account = dates.find(({ date, what }) => date === balance.date && what === "on account");
  const earlier = dates.some(({ date, what }) => what === "on account" && date < balance.date);
  const before = question.last?.onAccount ?? 0;
  if (account === undefined || earlier || before > 0) return [];
  const both = (balance.coins ?? 0) + (account.coins ?? 0);
  return [
    `On ${balance.date} a whole bill and half of the next one are due together: ${say(both)}, half as much again as the bill.`,
  ];
}

function registerSentence(dates: readonly TaxDate[]): readonly string[] {
  const register = dates.find(({ what }) => what === "register");
  if (register === undefined) return [];
  return [
    `Register for self assessment by ${register.date}: takings pass the trading allowance in the tax year from ${register.year}.`,
  ];
}

function potSentence(question: TaxQuestion, pot: number, from: string, say: Say): readonly string[] {
  if (pot === 0 && question.pot === null) return [];
  const should = `The tax pot should hold ${say(pot)} when ${from} begins`;
  if (question.pot === null) return [`${should}.`];
  const short = pot - question.pot;
  return [`${should}; it holds ${say(question.pot)}${short > 0 ? `, ${say(short)} short` : ""}.`];
}

function spanWords({ from, until }: Pick<TaxYear, "from" | "until">): string {
  return `from ${from.toString()} until ${until.toString()}`;
}
