import { type ClassDocument, isGuess, planningOf } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { CompareDocumentInput } from "#core/price";
import { type CurrencyCode, good, minor, moneyText, type Result, readAmount, together } from "#core/words";

/** A hall that the class could be in, and the people it takes for this class; null while that is not known. */
export type HallOffered = {
  readonly id: string;
  readonly document: HallDocument;
  readonly capacity: number | null;
};

export type HallAsked = HallOffered & { readonly name: string; readonly capacity: number };
export type HallLeftOut = { readonly name: string; readonly why: string };

export type By = "session" | "year" | "hour";

/** The halls that can be compared, and the others with why they cannot. */
export function hallsAsked(
  halls: readonly HallOffered[],
  currency: CurrencyCode,
): { readonly asked: readonly HallAsked[]; readonly leftOut: readonly HallLeftOut[] } {
  const named = halls.map((hall) => ({ hall, name: nameOf(hall, halls), why: whyNot(hall, currency) }));
  return {
    asked: named.flatMap(({ hall, name, why }) =>
      why === null && hall.capacity !== null ? [{ ...hall, name, capacity: hall.capacity }] : [],
    ),
    leftOut: named.flatMap(({ name, why }) => (why === null ? [] : [{ name, why }])),
  };
}

/** Two halls of one name are told apart by their place in the list. */
function nameOf({ id, document }: HallOffered, halls: readonly HallOffered[]): string {
  const name = document.name.trim() === "" ? "A hall without a name" : document.name;
  const alike = halls.filter((it) => it.document.name === document.name);
  return alike.length === 1 ? name : `${name} (${alike.findIndex((it) => it.id === id) + 1})`;
}

function whyNot({ document, capacity }: HallOffered, currency: CurrencyCode): string | null {
  if (document.hire === undefined) return "what it charges is not known yet";
  if (document.currency !== undefined && document.currency !== currency) {
    return `it charges in ${document.currency} and the practice counts in ${currency}`;
  }
  if (capacity === null) return "its floor is not drawn soundly yet, so nobody knows how many it takes";
  return capacity === 0 ? "nobody on a mat fits in it" : null;
}

/** The class and its halls as a document to be compared. Problems: those of the amounts of the session. */
export function compareDocument(
  document: ClassDocument,
  halls: readonly HallAsked[],
  currency: CurrencyCode,
  by: By,
): Result<CompareDocumentInput> {
  const other = otherCost(document, currency);
  if (!other.ok) return other;
  const { minutes, year, weekday, start } = document;
  return good({
    currency,
    slots: [{ weekday, start }],
    minutes: { setUp: minutes.setUp, class: minutes.class, packDown: minutes.packDown },
    year: { from: year.from, until: year.until, closures: year.closures },
    otherCost: other.value,
    perHead: document.costs.perHead,
    prices: document.prices,
    mix: document.mix,
    heads: document.heads,
    dispersion: planningOf(document).dispersion,
    by,
    halls: halls.map((hall) => comparedHall(document, hall)),
    guesses: [...guessesOf(document), ...halls.flatMap((hall, at) => travelGuesses(document, hall, at))],
  });
}

function otherCost({ costs }: ClassDocument, currency: CurrencyCode): Result<string> {
  const read = together({
    music: readAmount(costs.music, currency, "costs.music"),
    cover: readAmount(costs.cover, currency, "costs.cover"),
    other: readAmount(costs.other, currency, "costs.other"),
  });
  if (!read.ok) return read;
  const { music, cover, other } = read.value;
  return good(moneyText(minor(music + cover + other), currency));
}

/** How she gets to a hall: as planned for it, else as to the class's own hall. */
export function travelTo({ planning, minutes, costs }: ClassDocument, hall: string) {
  const planned = planning?.halls?.[hall];
  return {
    travelMinutes: planned?.travelMinutes ?? minutes.travel,
    travelCost: planned?.travelCost ?? costs.travel,
  };
}

function comparedHall(
  document: ClassDocument,
  { id, name, capacity, document: hall }: HallAsked,
): CompareDocumentInput["halls"][number] {
  const { free, closures = [] } = document.planning?.halls?.[id] ?? {};
  if (hall.hire === undefined) throw new RangeError(`no hire: ${id}`);
  return {
    name,
    capacity,
    hire: hall.hire,
    ...travelTo(document, id),
    closures,
    ...(free === undefined || free.length === 0 ? {} : { free }),
  };
}

function guessesOf(document: ClassDocument): string[] {
  return document.guesses
    .filter((it) => !it.startsWith("planning."))
    .map((it) => (it === "costs.perHead" ? "perHead" : it));
}

/** The way to a hall is a guess where nobody stated it and it is not the class's own, or where that is guessed. */
function travelGuesses(document: ClassDocument, { id }: HallAsked, at: number): readonly string[] {
  const planned = document.planning?.halls?.[id];
  const own = document.hall === id;
  const guessed = (stated: unknown, path: string) =>
    stated === undefined && (!own || isGuess(document, path));
  return [
    ...(guessed(planned?.travelMinutes, "minutes.travel") ? [`halls[${at}].travelMinutes`] : []),
    ...(guessed(planned?.travelCost, "costs.travel") ? [`halls[${at}].travelCost`] : []),
  ];
}
