import { bringsOn, type MoneyYear, type PathQuestion, type Work } from "../money-types.ts";

/** A month of the path, in coins; what is earned counts when it is taught. */
export type PathMonth = {
  readonly month: string;
  /** the first of the month, or the first day of all */
  readonly first: string;
  /** what comes surely: the other classes' middles, other money in, less the costs of the business */
  readonly sure: number;
  /** the other classes' standard deviations, in their order; nought for those that are known */
  readonly deviations: readonly number[];
  /** what each of the classes that may go brings, less its costs, and its sessions */
  readonly droppable: readonly { readonly coins: number; readonly sessions: number }[];
};

// a band holds eight chances of ten, as the outlook's do: ±1.2816 standard deviations of a normal curve
const BAND_WIDTH = 2 * 1.2815515655446004;

/**
 * Every class month by month: contribution by the sessions taught. The sessions of one class rise and fall as one, so
 * that their deviations add up. Costs of the business besides the classes are spread evenly over all the months; the
 * pay of a job counts, what she lives on does not (that is the need).
 */
export function pathMonths(year: MoneyYear, question: PathQuestion): readonly PathMonth[] {
  const droppable = new Set(question.mayDrop.map(({ work }) => work));
  const kept = year.work.filter((_, at) => !droppable.has(at));
  const months = monthsOf(year);
  const besides = besidesAMonth(year, months.length);
  return months.map(({ month, first }) => ({
    month,
    first,
    sure: besides + kept.reduce((sum, work) => sum + earned(year, work, month).coins, 0),
    deviations: kept.map((work) => earned(year, work, month).deviation),
    droppable: question.mayDrop.map(({ work: at }) => {
      const work = year.work[at];
      if (work === undefined) throw new RangeError(`no work: ${at}`);
      const { coins, sessions } = earned(year, work, month);
      return { coins, sessions };
    }),
  }));
}

function monthsOf(year: MoneyYear) {
  const months: { month: string; first: string }[] = [];
  let day = year.from;
  while (day.until(year.until, { largestUnit: "days" }).days >= 0) {
    months.push({ month: day.toString().slice(0, 7), first: day.toString() });
    day = day.with({ day: 1 }).add({ months: 1 });
  }
  return months;
}

function earned(year: MoneyYear, work: Work, month: string) {
  const [from, until] = [year.from.toString(), year.until.toString()];
  const days = work.dates
    .map((date) => date.toString())
    .filter((day) => day.startsWith(month) && day >= from && day <= until);
  const costs = work.costs.reduce((sum, { perSession }) => sum + perSession, 0);
  const spreads = days.map((day) => bringsOn(work, day));
  return {
    sessions: days.length,
    coins: spreads.reduce((sum, { middle }) => sum + middle - costs, 0),
    deviation: spreads.reduce((sum, { low, high }) => sum + (high - low) / BAND_WIDTH, 0),
  };
}

function besidesAMonth({ moves, from, until }: MoneyYear, months: number): number {
  const inside = (date: string) => date >= from.toString() && date <= until.toString();
  const total = moves.reduce((sum, { way, amount, dates, business }) => {
    const times = dates.filter(inside).length;
    if (way === "in") return sum + times * amount.middle;
    return business ? sum - times * amount.middle : sum;
  }, 0);
  return Math.round(total / months);
}
