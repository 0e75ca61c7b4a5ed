import { type ClassDocument, isGuess, planningOf } from "#core/class";
import type { Arrangement, HallDocument } from "#core/hall";
import type { CompareDocumentInput } from "#core/price";
import { wayWords } from "./way-words.ts";
import { type CurrencyCode, good, minor, moneyText, type Result, readAmount, together } from "#core/words";

/** The people that a hall takes for this class with its mats one way. */
export type WayOffered = { readonly arrangement: Arrangement; readonly capacity: number };

/** A hall that the class could be in, and the ways its mats could stand; null while its floor is not sound. */
export type HallOffered = {
  readonly id: string;
  readonly document: HallDocument;
  readonly ways: readonly WayOffered[] | null;
};

/** One that can be compared: its ways are those that take anybody, one at least. */
export type HallAsked = HallOffered & { readonly name: string; readonly ways: readonly WayOffered[] };
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
      why === null ? [{ ...hall, name, ways: takingAnybody(hall) }] : [],
    ),
    leftOut: named.flatMap(({ hall, name, why }) => (why === null ? emptyWays(hall, name) : [{ name, why }])),
  };
}

function takingAnybody({ ways }: HallOffered): readonly WayOffered[] {
  return (ways ?? []).filter(({ capacity }) => capacity > 0);
}

/** Ways that take nobody are told too, beside the others of their hall. */
function emptyWays({ ways }: HallOffered, name: string): readonly HallLeftOut[] {
  return (ways ?? [])
    .filter(({ capacity }) => capacity === 0)
    .map(({ arrangement }) => ({
      name: `${name} (${wayWords[arrangement]})`,
      why: "nobody on a mat fits in it so",
    }));
}

/** Two halls of one name are told apart by their place in the list. */
function nameOf({ id, document }: HallOffered, halls: readonly HallOffered[]): string {
  const name = document.name.trim() === "" ? "A hall without a name" : document.name;
  const alike = halls.filter((it) => it.document.name === document.name);
  return alike.length === 1 ? name : `${name} (${alike.findIndex((it) => it.id === id) + 1})`;
}

function whyNot({ document, ways }: HallOffered, currency: CurrencyCode): string | null {
  if (document.hire === undefined) return "what it charges is not known yet";
  if (document.currency !== undefined && document.currency !== currency) {
    return `it charges in ${document.currency} and the practice counts in ${currency}`;
  }
  if (ways === null) return "its floor is not drawn soundly yet, so nobody knows how many it takes";
  return ways.every(({ capacity }) => capacity === 0) ? "nobody on a mat fits in it" : null;
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
  const { minutes, year } = document;
  return good({
    currency,
    slots: [...slotsOf(document)],
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

/** The class's own time of the week first, then the others that she thinks of, each once. */
export function slotsOf({
  weekday,
  start,
  planning,
}: ClassDocument): readonly { weekday: number; start: string }[] {
  const all = [{ weekday, start }, ...(planning?.slots ?? [])];
  return all.filter(
    (slot, at) => all.findIndex((it) => it.weekday === slot.weekday && it.start === slot.start) === at,
  );
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
  { id, name, ways, document: hall }: HallAsked,
): CompareDocumentInput["halls"][number] {
  const { free, terms, closures = [] } = document.planning?.halls?.[id] ?? {};
  const [way, ...others] = ways;
  if (hall.hire === undefined || way === undefined) throw new RangeError(`no hire or no way: ${id}`);
  return {
    name,
    capacity: way.capacity,
    arrangement: wayWords[way.arrangement],
    arrangements: others.map((it) => ({ name: wayWords[it.arrangement], capacity: it.capacity })),
    hire: hall.hire,
    ...travelTo(document, id),
    closures,
    ...(terms === undefined || terms.length === 0 ? {} : { terms }),
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
