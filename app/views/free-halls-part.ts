import { type ClassDocument, type FreeHall, freeHalls, type HallWindow } from "#core/class";
import { clockText } from "#core/price";
import { type PracticeDocument, readCurrency } from "#core/words";
import { weekdayWord } from "./date-words.ts";

export type FreeHallsInput = {
  readonly practice: Pick<PracticeDocument, "currency">;
  readonly document: Pick<ClassDocument, "planning" | "year">;
  readonly halls: readonly { readonly id: string; readonly name: string }[];
  readonly window: HallWindow;
};

/** "On Tuesdays from 18:00 to 19:30 these are free: …", then why the others are not. */
export type FreeHallsPart = {
  readonly says: string;
  readonly rows: readonly {
    readonly id: string;
    readonly name: string;
    readonly free: string;
    readonly says: string;
  }[];
};

/** Which halls are free at a time of the week, in words. */
export function freeHallsPart({ practice, document, halls, window }: FreeHallsInput): FreeHallsPart {
  const currency = readCurrency(practice.currency);
  const when = `On ${weekdayWord(window.weekday)}s from ${clockText(window.from)} to ${clockText(window.until)}`;
  if (!currency.ok) return { says: `${when} nothing can be said: the currency is not known.`, rows: [] };
  if (window.until <= window.from) return { says: "That time ends before it begins.", rows: [] };
  const ids = halls.map(({ id }) => id);
  const found = freeHalls(document, ids, window, currency.value);
  const nameOf = (id: string): string => halls.find((it) => it.id === id)?.name ?? id;
  const free = found.filter((it) => it.kind === "free" && it.dates !== 0).map(({ id }) => nameOf(id));
  return {
    says: `${when} ${freeWords(free, found)}`,
    rows: found.map((it) => ({ id: it.id, name: nameOf(it.id), ...rowOf(it) })),
  };
}

function freeWords(free: readonly string[], found: readonly FreeHall[]): string {
  const unknown = found.filter(({ kind }) => kind === "not stated").length;
  const ask =
    unknown === 0
      ? ""
      : ` Of ${unknown === 1 ? "1 hall" : `${unknown} halls`} nobody has written down when it is free.`;
  if (free.length === 0) return `no hall is known to be free.${ask}`;
  return `${free.join(", ")} ${free.length === 1 ? "is" : "are"} free.${ask}`;
}

function rowOf(hall: FreeHall): { readonly free: string; readonly says: string } {
  switch (hall.kind) {
    case "free": {
      if (hall.dates === null) return { free: "yes", says: "the days without class cannot be read" };
      if (hall.dates === 0) return { free: "no", says: "no date of the year is left" };
      return { free: "yes", says: `${hall.dates} of ${hall.of ?? hall.dates} dates of the year` };
    }
    case "taken":
      return { free: "no", says: hall.instead };
    case "not stated":
      return { free: "not stated", says: "ask the hall" };
  }
}
