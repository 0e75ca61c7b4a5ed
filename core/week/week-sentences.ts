import { type AmountWriter, clockText } from "#core/price";
import { exactNumber } from "#core/words";
import { type CountedWeek, countWeek, type DayWalk } from "./check-week.ts";
import type { WeekFound } from "./week-found.ts";
import type { Week } from "./week-types.ts";
import { candidateAt, counted, dayName, hoursText, listed } from "./week-words.ts";

type Say = (coins: number) => string;

/** The answer first: what the week leaves and its load; then how sure that is, ties, the target, what is guessed. */
export function weekSentences(week: Week, found: WeekFound, write: AmountWriter): readonly string[] {
  const say: Say = (coins) => write(exactNumber(coins), week.currency);
  if (found.best.chosen.length === 0) return [nothingPays(week), ...targetSentence(week, found, say)];
  return [
    `The best week earns ${say(found.counted.earns)} a year after travel: ${loadWords(found.counted)}.`,
    ...found.counted.walks.map((walk) => daySentence(week, walk)),
    ...wishSentence(found.counted, say),
    proofSentence(found, say),
    tieSentence(found, say),
    ...targetSentence(week, found, say),
    ...guessSentence(week),
    "The limits are yours to set; those you left out are common practice, and your voice, your body and a doctor know better.",
  ];
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

function proofSentence({ best }: WeekFound, say: Say): string {
  if (best.bound === best.value) return "Proven: no week within these limits leaves more.";
  return `The search was stopped: a week within these limits may leave up to ${say(best.bound - best.value)} a year more.`;
}

function tieSentence({ best }: WeekFound, say: Say): string {
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

function targetSentence(week: Week, { lightest }: WeekFound, say: Say): readonly string[] {
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

/** "Home to Plum Yard" for each pair of places whose way is a guess. */
export function guessedWays({ ways, places }: Week): readonly string[] {
  return places.flatMap((from, at) =>
    places
      .slice(at + 1)
      .flatMap((to, later) =>
        ways[at]?.[at + 1 + later]?.guess === true ? [`${from.name} to ${to.name}`] : [],
      ),
  );
}
