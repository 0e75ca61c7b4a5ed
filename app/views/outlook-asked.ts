import { classAnswer, classOutlookQuestion, outlookFigure, teachingDates } from "#core/class";
import type { OutlookDocumentInput, OutlookJson } from "#core/outlook";
import type { EveningAnswer } from "#core/price";
import { currencyDigits, type Locale, moneyText, type Problem } from "#core/words";
import { datesInWords } from "./date-words.ts";
import { hireKnown } from "./hire-known.ts";
import type { AskOutlook, OutlookSheetInput } from "./outlook-sheet.ts";
import { type Missing, missing, type Unsound, unsound } from "./sheet-part.ts";

/** The next evening with what a person brings and what it costs; or why that is not known. */
export type Priced = { readonly kind: "priced"; readonly evening: EveningAnswer } | Missing | Unsound;

export type OutlookAsked =
  | {
      readonly kind: "ready";
      readonly json: OutlookJson;
      readonly priced: Priced;
      /** places on an ordinary evening */
      readonly places: number;
    }
  | Missing
  | Unsound;

/**
 * A class, its hall and its record as one question, with its answer; without prices heads are answered alone. So many
 * may be accepted for an opening, where that is worked out.
 */
export function outlookAsked(
  input: OutlookSheetInput,
  ask: AskOutlook,
  accepted: number | null,
): OutlookAsked {
  const places = input.capacity?.capacity ?? input.happened.capacity ?? null;
  if (places === null) {
    return missing(
      "How many people there is room for is not worked out yet.",
      "Choose a hall, or enter the places of an ordinary evening in the record.",
    );
  }
  const priced = pricedEvening(input);
  const read = ask({ ...questionOf(input, places, priced), ...openingAhead(input, accepted) });
  if (!read.ok) return unsound(read.problems.map((it) => atTheRecord(it, input.practice.locale)));
  return { kind: "ready", json: read.value.json, priced, places };
}

/** An opening that she wrote something about and that has not been, nor any session: those of all accepted who come. */
function openingAhead(
  { document, happened }: OutlookSheetInput,
  accepted: number | null,
): Pick<OutlookDocumentInput, "opening"> {
  const { opening } = document.outlook ?? {};
  if (accepted === null || opening === undefined || opening.happened !== undefined) return {};
  if (happened.sessions.some(({ cancelled }) => cancelled !== true)) return {};
  return { opening: accepted * outlookFigure(document, "opening.turnUp") };
}

function pricedEvening({ document, practice, hall, today }: OutlookSheetInput): Priced {
  const known = hireKnown({ hall });
  if (known.kind === "missing") return known;
  const read = classAnswer(document, known.hall, practice.currency, today, "ordinary evening");
  return read.ok ? { kind: "priced", evening: read.value } : unsound(read.problems);
}

/** No more sessions ahead than the outlook takes: two years of a weekly class twice over. */
const MOST_AHEAD = 208;

function questionOf(input: OutlookSheetInput, places: number, priced: Priced): OutlookDocumentInput {
  const { document, happened } = input;
  const { notice, full, ...asked } = classOutlookQuestion(document);
  const ahead = datesAhead(input);
  return {
    ...asked,
    capacity: places,
    ...(ahead.length === 0 ? {} : { dates: ahead }),
    happened: happened.sessions.map((it) => ({
      ...it,
      capacity: it.capacity ?? happened.capacity ?? places,
    })),
    ...(priced.kind === "priced"
      ? { ...moneyOf(document, priced.evening), notice: given(notice, input, ahead.length > 0), full }
      : {}),
  };
}

/** The teaching dates from today that are not recorded yet. */
export function datesAhead({ document, happened, today }: OutlookSheetInput): string[] {
  const last =
    happened.sessions
      .map(({ date }) => date)
      .toSorted()
      .at(-1) ?? "";
  return teachingDates(document)
    .filter((date) => date >= today && date > last)
    .slice(0, MOST_AHEAD);
}

function moneyOf(
  { costs }: OutlookSheetInput["document"],
  { currency, yield: brings, cost }: EveningAnswer,
): Pick<OutlookDocumentInput, "money" | "currency"> {
  // an average has parts of a coin; eight places are a millionth of one
  const yielded = brings
    .div(10 ** currencyDigits(currency))
    .round(8)
    .toString();
  return { currency, money: { yield: yielded, perHead: costs.perHead, cost: moneyText(cost, currency) } };
}

/**
 * A day of notice that is over cannot be taken any more; where no days were given any day will do, so today. Ordinary
 * weeks without a date know of no days at all.
 */
function given(
  notice: OutlookDocumentInput["notice"],
  { today, happened }: OutlookSheetInput,
  dated: boolean,
): OutlookDocumentInput["notice"] {
  const dates = dated ? (notice?.dates?.filter((date) => date >= today) ?? []) : [];
  const recordedAhead = happened.sessions.some(({ date }) => date > today);
  return { ...notice, dates: dates.length > 0 || recordedAhead || !dated ? dates : [today] };
}

/** A problem of the question, told at the place of the class or of its record that it comes from. */
function atTheRecord(raw: Problem, locale: Locale): Problem {
  const problem = { ...raw, says: datesInWords(raw.says, locale) };
  const { place } = problem;
  if (place.startsWith("happened")) return { ...problem, place: place.replace(/^happened/, "sessions") };
  return /^(roll|season|notice|full|regulars)/.test(place)
    ? { ...problem, place: `outlook.${place}` }
    : problem;
}
