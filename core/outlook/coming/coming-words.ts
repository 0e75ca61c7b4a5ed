import { chanceText } from "#core/price";
import { counted, shortDecimal } from "../opening/opening-words.ts";
import type { Banded, Period, PersonComing, StayPoint, Stays } from "./coming-types.ts";
import type { Coming } from "./still-coming.ts";
import { LEAST_CAME_AGAIN } from "./still-coming.ts";

/** The answer in sentences, the first first. */
export function comingSentences(coming: Coming): readonly string[] {
  return [
    seenSentence(coming),
    ...fitSentences(coming),
    ...onceSentence(coming),
    ...emptyWeeksSentence(coming),
    ...laterSentence(coming.visitsLater, coming.until),
  ];
}

/** What goes with every such list, on screen and on paper. */
export const comingCaution =
  "These are chances from dates alone, for the teacher’s own eyes: they know no reasons, and belong on no list that others see.";

function seenSentence({ people, notSeen, until, notSeenFor, visits }: Coming): string {
  const seen = `${people.length === 1 ? "1 person" : `${people.length} people`} came ${counted(visits, "time")} until ${until}`;
  const weeks = counted(notSeenFor, "teaching week");
  if (notSeen.length === 0) return `${seen}, and everybody was seen in the last ${weeks}.`;
  return `${seen}; ${notSeen.length} of them ${notSeen.length === 1 ? "has" : "have"} not been seen for ${weeks} or more.`;
}

function fitSentences({ fit, cameAgain, expectedVisits, expectedOfNew, ahead }: Coming): readonly string[] {
  if (fit === null) {
    const few = cameAgain === 0 ? "Nobody" : cameAgain === 1 ? "Only one person" : `Only ${cameAgain} people`;
    return [`${few} came more than once: below ${LEAST_CAME_AGAIN} such people no chances are worked out.`];
  }
  const { value, low, high } = expectedVisits ?? { value: 0, low: 0, high: 0 };
  const weeks = counted(ahead, "teaching week");
  const each = `${shortDecimal(value / ahead)} a week`;
  return [
    `In the next ${weeks} these people may be expected to come ${counted(Math.round(value), "time")} in all, four times of five between ${Math.floor(low)} and ${Math.ceil(high)}; ${each}.`,
    `Somebody new comes again ${shortDecimal(expectedOfNew ?? 0)} times in as many weeks.`,
    ...(fit.fitted.settled ? [] : ["The records do not settle these figures: read each of them as a guess."]),
  ];
}

/** Where BG/NBD is the wrong model for these dates, or for some of the people. */
function onceSentence({ fit, people, notSeenFor, oneWeekday }: Coming): readonly string[] {
  if (fit?.model !== "bg-nbd") return [];
  if (oneWeekday) {
    return [
      "All visits fall on one weekday, as in a weekly class, of which bg-nbd expects too many visits; bg-bb fits it better.",
    ];
  }
  const once = people.filter((it) => it.visits === 1 && it.weeksSince >= notSeenFor).length;
  if (once === 0) return [];
  const who = once === 1 ? "one person who came once and was" : `${once} people who came once and were`;
  return [
    `By bg-nbd nobody stops before a second visit, so that it expects too much of the ${who} not seen since; bg-bb does not.`,
  ];
}

function emptyWeeksSentence({ emptyWeeks }: Coming): readonly string[] {
  const [first] = emptyWeeks;
  if (first === undefined) return [];
  const says =
    emptyWeeks.length === 1
      ? `In the week from ${first} nobody came at all`
      : `In ${emptyWeeks.length} weeks nobody came at all, first in that from ${first}`;
  return [`${says}: if the class did not run then, say so, and it counts as no absence.`];
}

export function laterSentence(later: number, until: string): readonly string[] {
  return later === 0
    ? []
    : [`${counted(later, "visit")} after ${until} ${later === 1 ? "is" : "are"} not counted.`];
}

/** "Nell Arkwright came 9 times, last 3 teaching weeks ago: probably still coming (78 %); some 4.1 visits to expect." */
export function personSentence(it: PersonComing): string {
  const came = `${it.person} came ${it.visits === 1 ? "once" : counted(it.visits, "time")}, ${lastWords(it)}`;
  if (it.expectedVisits === null) return `${came}.`;
  const expected = `${shortDecimal(it.expectedVisits.value)} visits to expect`;
  if (it.stillComing !== null)
    return `${came}: ${chanceWords(it.stillComing.value)} (${chanceText(it.stillComing.value)}); ${expected}.`;
  return `${came}: comes again with a chance of ${chanceText(it.comesAgain?.value ?? 0)}; ${expected}.`;
}

function lastWords({ visits, weeksSince }: PersonComing): string {
  const last = visits === 1 ? "" : "last ";
  return weeksSince === 0
    ? `${last}within the last teaching week`
    : `${last}${counted(weeksSince, "teaching week")} ago`;
}

/** A chance of still coming in words, so that 61 % is not read as a mark given to a person. */
export function chanceWords(chance: number): string {
  if (chance >= 0.95) return "almost surely still coming";
  if (chance >= 0.7) return "probably still coming";
  if (chance >= 0.3) return "may or may not still come";
  return chance >= 0.05 ? "probably not coming any more" : "hardly coming any more";
}

/** "61 % (48 % to 72 %)" */
export function bandText({ value, low, high }: Banded): string {
  return `${chanceText(value)} (${chanceText(low)} to ${chanceText(high)})`;
}

export const PERIOD_CALLED: Readonly<Record<Period, string>> = {
  week: "teaching week",
  month: "month",
  year: "year",
};

/** How many of those who begin stay, in a sentence; [] where nobody was watched for long enough. */
export function staysSentences(stays: Stays): readonly string[] {
  const { people, stopped, goneAfter, period, curve } = stays;
  const called = PERIOD_CALLED[period];
  const gone = `not seen for ${counted(goneAfter, called)} is gone`;
  if (people === 0) return [`Nobody was watched for long enough to tell how long people stay (${gone}).`];
  const of = people === 1 ? "The one person who began" : `All ${people} who began`;
  if (stopped === 0)
    return [`${of} and could be watched ${people === 1 ? "is" : "are"} still coming (${gone}).`];
  const points = shownPoints(curve);
  const told = points.map(({ period: after, point }) => `${bandText(point)} after ${counted(after, called)}`);
  return [`Of ${people} who began, still coming: ${told.join(", ")} (${gone}).`];
}

const SHOWN = [1, 4, 12, 26, 52];

/** The curve at a few round periods, as far as anybody was watched and something changed. */
function shownPoints(
  curve: readonly StayPoint[],
): readonly { readonly period: number; readonly point: StayPoint }[] {
  const last = curve.at(-1)?.period ?? 0;
  const rounds = [...SHOWN.filter((period) => period < last), last];
  return rounds.flatMap((period) => {
    const point = curve.findLast((it) => it.period <= period);
    return point === undefined ? [] : [{ period, point }];
  });
}
