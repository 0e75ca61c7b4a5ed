import { guessesBehind } from "#core/class";
import type { OutlookJson } from "#core/outlook";
import { chanceText } from "#core/price";
import { dateWords } from "./date-words.ts";
import type { OutlookAsked } from "./outlook-asked.ts";
import { figureGuesses, rollGuesses } from "./outlook-guesses.ts";
import type { OutlookSheetInput } from "./outlook-sheet.ts";
import { peopleWords, priceAmounts } from "./price-amounts.ts";
import { type SheetPart, saidOn } from "./sheet-part.ts";

type Advice = OutlookJson["notices"][number]["advice"];

/** One day on which notice can be given, and what it would be best to do then as things look now. */
export type NoticeRow = {
  readonly when: string;
  readonly goingOn: string;
  readonly ending: string;
  readonly advice: string;
};

export type NextPart = SheetPart<{ readonly advice: Advice | null; readonly notices: readonly NoticeRow[] }>;

/** Keep the class, change something first, or close it, at the next day on which the hall can be given notice. */
export function nextPart(input: OutlookSheetInput, asked: OutlookAsked): NextPart {
  if (asked.kind !== "ready") return asked;
  const { json, priced } = asked;
  if (priced.kind !== "priced") return priced;
  const { document } = input;
  const guesses = [
    ...guessesBehind(document, "break-even"),
    ...rollGuesses(document),
    ...figureGuesses(document, ["notice.days", "notice.term"]),
  ];
  const says = [...adviceSentences(input, asked, json), ...moneySentences(input, json)];
  return {
    ...saidOn(input, guesses, says, [
      { title: "The next notice", lines: json.working.filter(({ part }) => part === "notice") },
    ]),
    advice: json.advice,
    notices: json.advice === "too early" ? [] : json.notices.map((it) => noticeRow(input, it)),
  };
}

/** Under four sessions nothing is advised, and ten with an intake make advice firm: OUTLOOK-50 and 51. */
const FEWEST = 4;
const FIRM = 10;

function adviceSentences(
  input: OutlookSheetInput,
  { places }: { readonly places: number },
  json: OutlookJson,
): readonly string[] {
  const [first] = json.notices;
  if (first === undefined) {
    return [
      "No session is left after the next notice, so there is nothing to decide.",
      "Make the year of the class longer if it goes on.",
    ];
  }
  if (first.advice === "too early") {
    const held = json.sessionsHeld === 1 ? "1 session is" : `${json.sessionsHeld} sessions are`;
    return [
      `Too early to say whether to keep it: ${held} written down, and below ${FEWEST} nothing is advised.`,
      firmSentence,
    ];
  }
  return [
    `${leads[first.advice][json.firm ? 1 : 0]}${whenWords(input, first.date)}.`,
    reasonSentence(input, places, json, first),
    ...(json.firm ? [] : [earlySentence(input, json)]),
    ...laterSentence(input, json),
  ];
}

const firmSentence =
  "Advice is firm only after ten teaching weeks with a January or a September among them, when people begin.";

const leads: Readonly<Record<Advice, readonly [string, string]>> = {
  "too early": ["Too early to say", "Too early to say"],
  keep: ["Keep the class for now", "Keep the class"],
  change: [
    "Change something before you decide: the price, the hall, the hour, or how people hear of it",
    "Change something: the price, the hall, the hour, or how people hear of it",
  ],
  close: ["It leans to closing", "Close the class"],
};

function whenWords({ practice, today }: OutlookSheetInput, date: string | null): string {
  if (date === today) return "";
  return date === null ? "" : ` (notice on ${dateWords(date, practice.locale)})`;
}

function reasonSentence(
  input: OutlookSheetInput,
  places: number,
  { plateauChance, worthWhile }: OutlookJson,
  { sessions, goingOn, ending }: OutlookJson["notices"][number],
): string {
  const { write } = priceAmounts(input);
  const count = sessions === 1 ? "the session" : `the ${sessions} sessions`;
  const term = `${count} after the notice are expected to leave ${write(goingOn)} together, ending it ${write(ending)}`;
  if (worthWhile === null) return `No number of people pays for a session, and ${term}.`;
  if (worthWhile > places)
    return `It needs ${peopleWords(worthWhile)} and there are ${places} places, and ${term}.`;
  return `The chance that it comes to the ${peopleWords(worthWhile)} it needs is ${chanceText(plateauChance ?? 0)}, and ${term}.`;
}

function earlySentence({ happened }: OutlookSheetInput, { sessionsHeld }: OutlookJson): string {
  const intake = happened.sessions.some(
    ({ date, cancelled }) => cancelled !== true && /-(01|09)-/.test(date),
  );
  const why = [
    ...(sessionsHeld < FIRM ? [`${sessionsHeld} sessions of ${FIRM}`] : []),
    ...(intake ? [] : ["no January or September yet"]),
  ];
  return `That is early: ${why.join(", ")}. ${firmSentence}`;
}

function laterSentence({ practice }: OutlookSheetInput, { notices }: OutlookJson): readonly string[] {
  const other = notices.find(({ advice }) => advice !== notices[0]?.advice);
  if (other?.date == null) return [];
  return [`By what is known now, on ${dateWords(other.date, practice.locale)} it would be: ${other.advice}.`];
}

function moneySentences(input: OutlookSheetInput, json: OutlookJson): readonly string[] {
  const { write } = priceAmounts(input);
  const { contribution, chanceOfLoss, sessions } = json.together;
  if (contribution === null || chanceOfLoss === null) return [];
  const { mean, low, high } = contribution;
  return [
    `All ${sessions} sessions ahead leave about ${write(mean)} together (eight chances of ten: ${write(low)} to ${write(high)}); the chance that they cost more than they bring is ${smallChance(chanceOfLoss)}.`,
    json.breakEven === null
      ? "A person brings no more than she costs, so no number of people pays for a session."
      : `${json.breakEven === 1 ? "1 person pays" : `${json.breakEven} people pay`} for a session.`,
  ];
}

/** A sum over many sessions is taken as a normal curve: what lies far out on it is small and not nought. */
function smallChance(chance: number): string {
  return chance < 0.001 ? "less than 0.1 %" : chanceText(chance);
}

function noticeRow(input: OutlookSheetInput, notice: OutlookJson["notices"][number]): NoticeRow {
  const { write } = priceAmounts(input);
  const { date, goingOn, ending, advice } = notice;
  return {
    when: date === null ? "Any day" : date === input.today ? "Today" : dateWords(date, input.practice.locale),
    goingOn: write(goingOn),
    ending: write(ending),
    advice,
  };
}
