import type { Flow, FlowKind, OwedAfter } from "./flow.ts";
import { bringsOn, type Case, type MoneyYear, type Move, type Work } from "./money-types.ts";
import { paidDate } from "./paid-date.ts";
import { passFlows, passUses } from "./pass-flows.ts";

/** Everything that moves in the year but tax, by date; and what is owed in classes, class by class. */
export type YearFlows = {
  readonly flows: readonly Flow[];
  readonly owed: readonly { readonly start: number; readonly after: readonly OwedAfter[] }[];
};

/** What was due before the first day is in the opening balance; what falls due after the last is left out. */
export function flowsOf(year: MoneyYear, at: Case): YearFlows {
  const from = year.from.toString();
  const until = year.until.toString();
  const passes = year.work.flatMap((work) =>
    work.passes === null ? [] : [{ start: work.passes.owed, ...passFlows(work, work.passes, from, at) }],
  );
  const flows = [
    ...year.work.flatMap((work) => [...takingsOf(work, at), ...costsOf(work)]),
    ...passes.flatMap(({ sold }) => sold),
    ...year.moves.flatMap((move) => moveFlows(move, at)),
  ];
  return {
    flows: flows
      .filter(({ date, coins }) => date >= from && date <= until && coins !== 0)
      .sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0)),
    owed: passes.map(({ start, owed }) => ({
      start,
      after: owed.filter(({ date }) => date <= until),
    })),
  };
}

const OWN = new Set(["own", "workshop", "private"]);

function takingsOf(work: Work, at: Case): readonly Flow[] {
  const kind: FlowKind = OWN.has(work.kind) ? "takings" : "pay";
  const use = passUses(work, at);
  return work.dates.map((date) => {
    const day = date.toString();
    const coins = bringsOn(work, day)[at] - use(day);
    return { date: paidDate(date, work.paid).toString(), coins, kind, name: work.name, business: true };
  });
}

function costsOf(work: Work): readonly Flow[] {
  return work.costs.flatMap(({ name, perSession, paid, business }) =>
    work.dates.map((date) => ({
      date: paidDate(date, paid).toString(),
      coins: 0 - perSession,
      kind: "session costs" as const,
      name: `${name}, ${work.name}`,
      business,
    })),
  );
}

/** Of what goes out the low case has the high amount: low is the worse for her. */
function moveFlows({ name, way, amount, dates, business }: Move, at: Case): readonly Flow[] {
  const worse = { low: amount.high, middle: amount.middle, high: amount.low };
  const coins = way === "in" ? amount[at] : 0 - worse[at];
  const kind: FlowKind = `${business ? "other" : "private"} ${way}`;
  return dates.map((date) => ({ date, coins, kind, name, business }));
}
