import type { Temporal } from "temporal-polyfill";
import type { Flow } from "./flow.ts";

/** A month of the bank account, in coins; `lowest` is the least at the end of one of its days. */
export type CashMonth = {
  readonly month: string;
  readonly in: number;
  /** what went out besides tax, above nought */
  readonly out: number;
  /** tax paid; below nought where it came back */
  readonly tax: number;
  readonly end: number;
  readonly lowest: number;
  readonly lowestOn: string;
};

export type CashBook = {
  readonly months: readonly CashMonth[];
  readonly lowest: number;
  /** the first day on which it is reached */
  readonly lowestOn: string;
  readonly end: number;
};

/**
 * The bank account day by day: the balance at the end of each day, so that what comes in on a day can pay for what
 * goes out on it; the balance of the first morning counts too. `flows` in order of their dates, within the span.
 */
export function cashBook(
  opening: number,
  flows: readonly Flow[],
  from: Temporal.PlainDate,
  until: Temporal.PlainDate,
): CashBook {
  const months: CashMonth[] = [];
  let end = opening;
  let day = from;
  while (day.until(until, { largestUnit: "days" }).days >= 0) {
    const month = oneMonth(end, day.toString(), flows);
    months.push(month);
    end = month.end;
    day = day.with({ day: 1 }).add({ months: 1 });
  }
  const low = months.reduce((least, month) => (month.lowest < least.lowest ? month : least));
  return { months, lowest: low.lowest, lowestOn: low.lowestOn, end };
}

function oneMonth(opening: number, first: string, flows: readonly Flow[]): CashMonth {
  const month = first.slice(0, 7);
  const inMonth = flows.filter(({ date }) => date.startsWith(month));
  let balance = opening;
  let lowest = opening;
  let lowestOn = first;
  for (const [index, { date, coins }] of inMonth.entries()) {
    balance += coins;
    if (inMonth[index + 1]?.date === date) continue;
    if (balance < lowest) {
      lowest = balance;
      lowestOn = date;
    }
  }
  const sum = (of: (flow: Flow) => boolean) =>
    inMonth.filter(of).reduce((total, { coins }) => total + coins, 0);
  return {
    month,
    in: sum(({ coins, kind }) => coins > 0 && kind !== "tax"),
    out: -sum(({ coins, kind }) => coins < 0 && kind !== "tax"),
    tax: -sum(({ kind }) => kind === "tax"),
    end: balance,
    lowest,
    lowestOn,
  };
}
