import { type AmountWriter, clockText } from "#core/price";
import { exactNumber } from "#core/words";
import { type CountedWeek, countWeek, type DayWalk } from "./check-week.ts";
import type { Lightest } from "./lightest-week.ts";
import type { WeekFound } from "./week-found.ts";
import type { Week } from "./week-types.ts";
import { candidateAt, counted, dayName, hoursText, listed } from "./week-words.ts";

type Say = (coins: number) => string;

/** A week and what was counted of it. */
export type HeadFound = Pick<WeekFound, "best" | "counted">;

/** The answer first: what the week leaves and its load; then how sure that is, ties, the target, what is guessed. */
export function weekSentences(week: Week, found: WeekFound, write: AmountWriter): readonly string[] {
  const [first = "", ...sure] = headSentences(week, found, write);
  if (found.best.chosen.length === 0) return [first, ...targetSentence(week, found.lightest, write)];
  return [
    first,
    ...found.counted.walks.map((walk) => daySentence(week, walk)),
    ...sure,
    ...targetSentence(week, found.lightest, write),
    ...guessSentence(week),
    "The limits are yours to set; those you left out are common practice, and your voice, your body and a doctor know better.",
  ];
}

/** What the week leaves and its load, wishes that it does not meet, how sure that is, and ties. */
export function headSentences(week: Week, found: HeadFound, write: AmountWriter): readonly string[] {
  if (found.best.chosen.length === 0) return [nothingPays(week)];
  const say = sayIn(week, write);
  const proven = found.best.bound === found.best.value;
  const which = proven ? "The best week" : "The best week found so far";
  return [
    `${which} earns ${say(found.counted.earns)} a year after travel: ${loadWords(found.counted)}.`,
    ...wishSentence(found.counted, say),
    proofSentence(found, say),
    // what is beside a week that may not be the best says nothing
    ...(proven ? [tieSentence(found, say)] : []),
  ];
}

function sayIn({ currency }: Week, write: AmountWriter): Say {
  return (coins) => write(exactNumber(coins), currency);
}

/** "Tuesday, from 11:40 to 20:20: Lunch at 12:15; home between; Tuesday evening at 18:30." */
function daySentence(week: Week, { weekday, leaves, home, stops }: DayWalk): string {
  const trips: string[][] = [];
  for (const { candidate, fromHome } of stops) {
    const { name, start } = candidateAt(week, candidate);
    if (fromHome || trips.length === 0) trips.push([]);
    trips.at(-1)?.push(`${name} at ${clockText(start)}`);
  }
  const told = trips.map(listed).join("; home between; ");
  return `${dayName(weekday)}, from ${clockText(leaves)} to ${clockText(home)}: ${told}.`;
}

function nothingPays(week: Week): string {
  const promised = week.candidates.some(({ fixed }) => fixed);
  return promised
    ? "No week was found."
    : "No class of these leaves anything after travel and the price of your wishes: the best week is an empty one.";
}

function loadWords({ classes, days, evenings, minutes }: CountedWeek): string {
  const load = `${counted(classes, "class", "classes")} on ${counted(days, "day")}`;
  return `${load}, ${counted(evenings, "evening")}, ${hoursText(minutes)} a week from door to door`;
}

function wishSentence({ wishes }: CountedWeek, say: Say): readonly string[] {
  if (wishes === 0) return [];
  return [`Wishes that it does not meet count ${say(wishes)} a year against it, by your own prices.`];
}

function proofSentence({ best }: HeadFound, say: Say): string {
  if (best.bound === best.value) return "Proven: no week within these limits leaves more.";
  return `The search was stopped: a week within these limits may leave up to ${say(best.bound - best.value)} a year more.`;
}

function tieSentence({ best }: HeadFound, say: Say): string {
  const { ties, margin } = best;
  if (ties.length > 0) {
    const others = counted(ties.length, "other week");
    const least = margin === null ? "At least " : "";
    const text = `${least}${others} ${ties.length === 1 ? "leaves" : "leave"} as much; this one takes no more time from door to door than any of them.`;
    return text.charAt(0).toUpperCase() + text.slice(1);
  }
  if (margin === null) return "No other week within these limits was found.";
  return `The next best week leaves ${say(margin)} a year less.`;
}

/** The lightest week for the target, or the most that any earns; nothing without a target. */
export function targetSentence(
  week: Week,
  lightest: Lightest | null,
  write: AmountWriter,
): readonly string[] {
  const say = sayIn(week, write);
  if (lightest === null || week.target === null) return [];
  if (lightest.kind === "unknown") return ["The lightest week for your target was not found in time."];
  const { earns, ...load } = countWeek(week, lightest.chosen);
  if (lightest.kind === "too little")
    return [`No week within these limits earns ${say(week.target)} a year; the most is ${say(earns)}.`];
  const names = listed(lightest.chosen.map((at) => candidateAt(week, at).name));
  const words = loadWords({ earns, ...load });
  const sure = lightest.proven ? "" : " It is not proven that none is lighter.";
  return [
    `The lightest week that earns ${say(week.target)} a year earns ${say(earns)} with ${words}: ${names}.${sure}`,
  ];
}

function guessSentence(week: Week): readonly string[] {
  const ways = guessedWays(week);
  if (ways.length === 0) return [];
  return [
    `${counted(ways.length, "way is", "ways are")} guessed from the map: ${listed(ways)}. Drive them once.`,
  ];
}

/** "Home to Plum Yard" for each pair of places whose way is a guess and can be needed. */
export function guessedWays({ ways, places, home, candidates }: Week): readonly string[] {
  const days = places.map(
    (_, at) => new Set(candidates.filter(({ place }) => place === at).map((it) => it.weekday)),
  );
  const needed = (from: number, to: number) => {
    if (from === home || to === home) return (days[from === home ? to : from]?.size ?? 0) > 0;
    return [...(days[from] ?? [])].some((day) => days[to]?.has(day));
  };
  return places.flatMap((from, at) =>
    places.flatMap((to, other) =>
      at < other && ways[at]?.[other]?.guess === true && needed(at, other)
        ? [`${from.name} to ${to.name}`]
        : [],
    ),
  );
}
