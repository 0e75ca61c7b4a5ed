import type { OutlookJson } from "#core/outlook";
import { chanceText } from "#core/price";
import type { Locale } from "#core/words";
import { dateWords } from "./date-words.ts";
import type { OutlookAsked } from "./outlook-asked.ts";
import { rollGuesses } from "./outlook-guesses.ts";
import type { OutlookSheetInput } from "./outlook-sheet.ts";
import { peopleWords } from "./price-amounts.ts";
import { type SheetPart, saidOn } from "./sheet-part.ts";

/** A session that was held. */
export type HeldRow = { readonly date: string; readonly heads: number; readonly places: number };

/** A session to come: the people expected, and between which numbers eight of ten lie. */
export type AheadRow = {
  /** ISO; null for an ordinary week without a date */
  readonly date: string | null;
  readonly says: string;
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  readonly full: string;
  readonly pays: string | null;
};

export type GoingPart = SheetPart<{
  readonly held: readonly HeldRow[];
  readonly ahead: readonly AheadRow[];
  readonly places: number;
  /** heads that pay for a session; null without prices, or where no number does */
  readonly breakEven: number | null;
}>;

/** What is to be expected of the sessions ahead, after what happened in those that were held. */
export function goingPart(input: OutlookSheetInput, asked: OutlookAsked): GoingPart {
  if (asked.kind !== "ready") return asked;
  const { json, places } = asked;
  const says = [
    aheadSentence(json),
    ...nextSentence(input, json),
    plateauSentence(json, places),
    learnedSentence(json),
    ...openingSentences(json),
    ...caveats(input, json),
  ];
  return {
    ...saidOn(input, rollGuesses(input.document), says, workingsOf(json)),
    held: heldRows(input, places),
    ahead: json.sessions.map((it, at) => aheadRow(input, it, at)),
    places,
    breakEven: json.breakEven,
  };
}

function aheadSentence({ together, sessions }: OutlookJson): string {
  const { heads } = together;
  const count = sessions.length;
  const band = `eight chances of ten: ${heads.low.toFixed(0)} to ${heads.high.toFixed(0)}`;
  const each = `About ${peopleWords(heads.mean / count)} come to ${count === 1 ? "the one session" : `each of the ${count} sessions`} ahead`;
  return `${each}, ${heads.mean.toFixed(0)} in all (${band}).`;
}

function nextSentence({ practice }: OutlookSheetInput, { sessions }: OutlookJson): readonly string[] {
  const [next] = sessions;
  if (next === undefined) return [];
  if (next.date === null) {
    return [
      "No teaching date lies ahead, so these are forty ordinary weeks; the year of the class can be made longer.",
    ];
  }
  return [
    `The next, on ${dateWords(next.date, practice.locale)}, has ${spanWords(next.heads)}, and a full room with ${chanceText(next.chanceFull)}.`,
  ];
}

function spanWords({ low, high }: { readonly low: number; readonly high: number }): string {
  return low === high ? peopleWords(low) : `${low} to ${peopleWords(high)}`;
}

function plateauSentence({ plateau }: OutlookJson, places: number): string {
  const { mean, low, high } = plateau;
  const beyond = mean > places ? `, more than the ${places} places` : "";
  return `After two teaching years ${peopleWords(mean)} would want to come in an ordinary week (${low.toFixed(1)} to ${high.toFixed(1)})${beyond}.`;
}

function learnedSentence({ sessionsHeld }: OutlookJson): string {
  if (sessionsHeld === 0) {
    return "Nothing has happened yet: all of it rests on your guesses, which weigh as much as four weeks.";
  }
  const sessions = sessionsHeld === 1 ? "1 session" : `${sessionsHeld} sessions`;
  return `Learned from ${sessions} and from your guesses, which weigh as much as four weeks.`;
}

function openingSentences({ opening, opensTo }: OutlookJson): readonly string[] {
  if (opensTo !== null) {
    return [
      `The first session is taken for the opening, to which about ${peopleWords(opensTo)} come by what you wrote there.`,
    ];
  }
  if (opening === null || opening === 0) return [];
  return [
    `The first session is taken as the opening: its ${peopleWords(opening)} may stay, but say nothing of how many are new in an ordinary week. If the class ran before it, say so among your guesses.`,
  ];
}

// with fewer effective draws the ends of a band are uncertain by more than a person
const FEW_DRAWS = 60;

function caveats({ document }: OutlookSheetInput, { learning }: OutlookJson): readonly string[] {
  return [
    ...(document.outlook?.season === undefined
      ? ["How much thinner a December or an August is than an ordinary month is a guess."]
      : []),
    ...(learning.effective < FEW_DRAWS
      ? ["What happened is so unlike your guesses that the bands are rough: look at the guesses again."]
      : []),
  ];
}

function heldRows({ happened }: OutlookSheetInput, places: number): readonly HeldRow[] {
  return happened.sessions
    .filter((it) => it.cancelled !== true)
    .map(({ date, heads, capacity }) => ({ date, heads, places: capacity ?? happened.capacity ?? places }))
    .toSorted((one, other) => (one.date < other.date ? -1 : 1));
}

function aheadRow(
  { practice }: OutlookSheetInput,
  { date, heads, chanceFull, chancePays }: OutlookJson["sessions"][number],
  at: number,
): AheadRow {
  return {
    date,
    says: date === null ? `Week ${at + 1}` : dayWords(date, practice.locale),
    ...heads,
    full: chanceText(chanceFull),
    pays: chancePays === null ? null : chanceText(chancePays),
  };
}

/** "12 Jan": the year is said once, above the table. */
function dayWords(date: string, locale: Locale): string {
  return dateWords(date, locale)
    .replace(/,? \d{4}$/, "")
    .replace(/[A-Z][a-z]+/, (month) => month.slice(0, 3));
}

function workingsOf({ working }: OutlookJson) {
  return [
    { title: "An ordinary week, after two years", lines: working.filter(({ part }) => part === "roll") },
    { title: "All sessions ahead", lines: working.filter(({ part }) => part === "together") },
  ];
}
