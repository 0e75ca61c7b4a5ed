import { coinText, type PartLine, partLines } from "#core/price";
import { exactNumber, type WorkingLine } from "#core/words";
import type { DayWalk } from "./check-week.ts";
import type { HeadFound } from "./week-sentences.ts";
import type { Week } from "./week-types.ts";
import { type Arc, weekArcs } from "./week-arcs.ts";
import { candidateAt, dayName } from "./week-words.ts";

/** The year of the week, to be checked with a pencil: what classes bring, what ways cost, what is left. */
export function weekWorking(week: Week, { best, counted }: HeadFound): readonly PartLine[] {
  const text = (coins: number) => coinText(exactNumber(coins), week.currency);
  const classes = best.chosen.map((at): WorkingLine => {
    const { name, sessions, contribution } = candidateAt(week, at);
    return {
      label: name,
      sum: `${sessions} × ${text(contribution)}`,
      amount: text(sessions * contribution),
    };
  });
  const brought = best.chosen.reduce((sum, at) => {
    const { sessions, contribution } = candidateAt(week, at);
    return sum + sessions * contribution;
  }, 0);
  const total = (label: string, coins: number): WorkingLine => ({
    label,
    sum: "",
    amount: text(coins),
    total: true,
  });
  return [
    ...partLines("classes", [...classes, total("Before travel", brought)]),
    ...partLines("travel", [
      ...counted.walks.flatMap((walk) => travelLines(week, walk)),
      total("Travel a year", brought - counted.earns),
    ]),
    ...partLines("left", [
      total("Earned a year", counted.earns),
      ...(counted.wishes === 0
        ? []
        : [
            { label: "Wishes not met", sum: "by your own prices", amount: text(-counted.wishes) },
            total("Left of both", counted.earns - counted.wishes),
          ]),
    ]),
  ];
}

/** Each piece of the day as often a year as the busier of the classes at its ends. */
function travelLines(week: Week, { weekday, stops }: DayWalk): readonly WorkingLine[] {
  const arcs = weekArcs(week).filter((arc) => arc.weekday === weekday);
  const order = [null, ...stops.map(({ candidate }) => candidate), null];
  return order.slice(1).flatMap((to, at): readonly WorkingLine[] => {
    const from = order[at] ?? null;
    const arc = arcs.find((it) => it.from === from && it.to === to);
    if (arc === undefined) throw new RangeError(`no way from ${from} to ${to} on day ${weekday}`);
    if (arc.cost === 0) return [];
    return [
      {
        label: `${dayName(weekday)}: ${placeName(week, from)} ${arc.byHome ? "by home " : ""}to ${placeName(week, to)}`,
        sum: legSum(week, arc),
        amount: coinText(exactNumber(arc.cost), week.currency),
      },
    ];
  });
}

/** "38 × (14 km × 0.30 + 20 min at 6.00 an hour)" */
function legSum({ perKm, perHour, currency }: Week, { times, km, minutes }: Arc): string {
  const price = (coins: number) => coinText(exactNumber(coins), currency);
  const far = perKm === 0 ? [] : [`${Number(km.toFixed(1))} km × ${price(perKm)}`];
  const long = perHour === 0 ? [] : [`${minutes} min at ${price(perHour)} an hour`];
  return `${times} × (${[...far, ...long].join(" + ")})`;
}

function placeName({ candidates, places, home }: Week, at: number | null): string {
  const place = at === null ? home : (candidates[at]?.place ?? home);
  return places[place]?.name ?? "";
}
