import type { PartLine } from "#core/price";
import type { MoneyYear, PathQuestion } from "./money-types.ts";
import type { PathFound } from "./path/path-found.ts";
import { pathMonths } from "./path/path-months.ts";

/**
 * The sum of one month of the path: the first in which the plan lets something go, or the last where it never does.
 * Averages over the window that begins there.
 */
export function pathWorking(
  year: MoneyYear,
  question: PathQuestion,
  found: PathFound,
  text: (coins: number) => string,
): readonly PartLine[] {
  const part = "path";
  const first = found.months.findIndex(({ kept }) => kept.length < question.mayDrop.length);
  const at = first < 0 ? found.months.length - 1 : first;
  const month = found.months[at];
  if (month === undefined) return [];
  const window = pathMonths(year, question).slice(at, at + question.window);
  const mean = (of: (each: (typeof window)[number]) => number) =>
    Math.round(window.reduce((sum, each) => sum + of(each), 0) / window.length);
  const kept = month.kept.map((one) => ({
    part,
    label: year.work[question.mayDrop[one]?.work ?? -1]?.name ?? "",
    sum: "kept",
    amount: text(mean(({ droppable }) => droppable[one]?.coins ?? 0)),
  }));
  const lines = [
    {
      part,
      label: `a month from ${month.month}, besides the classes that may go`,
      sum: window.length === 1 ? "" : `over ${window.length} months`,
      amount: text(mean(({ sure }) => sure)),
    },
    ...kept,
    { part, label: "income a month", sum: "", amount: text(Math.round(month.mean)), total: true },
    { part, label: "standard deviation", sum: "", amount: text(Math.round(month.deviation)) },
    { part, label: "the need", sum: "", amount: text(question.need) },
  ];
  const z = month.deviation === 0 ? null : (month.mean - question.need) / month.deviation;
  const above = z === null ? "" : `${z.toFixed(2)} standard deviations above the need`;
  return [...lines, { part, label: "chance", sum: above, amount: `${(month.chance * 100).toFixed(1)} %` }];
}
