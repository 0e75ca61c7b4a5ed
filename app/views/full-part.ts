import type { OutlookJson } from "#core/outlook";
import type { OutlookAsked } from "./outlook-asked.ts";
import type { OutlookSheetInput } from "./outlook-sheet.ts";
import { peopleWords, priceAmounts } from "./price-amounts.ts";
import { missing, type SheetPart, saidOn } from "./sheet-part.ts";

type Remedy = OutlookJson["remedies"][number];

/** One thing that might be done about full evenings, the cheaper ones first. */
export type RemedyRow = { readonly key: Remedy["kind"]; readonly name: string; readonly says: string };

export type FullPart = SheetPart<{ readonly rows: readonly RemedyRow[] }>;

/** What would help a class whose evenings fill: the cheaper things first, a second class or a bigger hall last. */
export function fullPart(input: OutlookSheetInput, asked: OutlookAsked): FullPart {
  if (asked.kind !== "ready") return asked;
  if (asked.priced.kind !== "priced") return asked.priced;
  const { json } = asked;
  const turnedAway = turnedAwaySentence(json);
  if (json.remedies.length === 0) {
    return missing(turnedAway, "Enter below what you could do about full evenings, and each is weighed.");
  }
  return {
    ...saidOn(input, [], [leadSentence(input, json.remedies), turnedAway], []),
    rows: json.remedies.map((it) => ({
      key: it.kind,
      name: capital(names[it.kind]),
      says: gainWords(input, it),
    })),
  };
}

// twelve sessions, as far ahead as the remedies are weighed
const NEXT_SESSIONS = 12;

function turnedAwaySentence({ sessions }: OutlookJson): string {
  const next = sessions.slice(0, NEXT_SESSIONS);
  const away =
    next.reduce((sum, { demand, heads }) => sum + Math.max(0, demand - heads.mean), 0) / next.length;
  return away < 0.05
    ? "In the next sessions hardly anybody finds no place."
    : `In the next sessions about ${peopleWords(away)} a session ${away < 1.05 && away > 0.95 ? "finds" : "find"} no place.`;
}

const names: Readonly<Record<Remedy["kind"], string>> = {
  "tighter plan": "a tighter mat plan",
  "released absences": "known absences given to others",
  "price rise": "a small rise",
  "bigger hall": "a bigger hall",
  "second class": "a second class",
};

/** The first that pays, since they stand in the order of what they take. */
function leadSentence(input: OutlookSheetInput, remedies: readonly Remedy[]): string {
  const first = remedies.find(({ gainPerSession }) => Number(gainPerSession) > 0);
  if (first === undefined)
    return "Nothing that you entered would bring more than it costs; leave it as it is.";
  return `Try ${names[first.kind]} first: it ${gainWords(input, first)}.`;
}

function gainWords(input: OutlookSheetInput, { gainPerSession }: Remedy): string {
  const { writeAbsolute } = priceAmounts(input);
  const amount = writeAbsolute(gainPerSession);
  return Number(gainPerSession) < 0 ? `leaves ${amount} a session less` : `leaves ${amount} a session more`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
