import { type Side, sideOf } from "#core/books";
import { type BooksInput, type BooksLine, sessionOf } from "./books-input.ts";
import { costWords, oneWords, plainId } from "./books-words.ts";

/** Lines of one currency that add up to nought: one thing that happened, as the books have it. */
export type BookedEntry = {
  readonly date: string;
  readonly about: string;
  readonly lines: readonly { readonly side: Side; readonly amount: number }[];
};

/**
 * Kept lines put together again: those of an action follow one another, and an entry ends where they add up to
 * nought. cash +1000, owed:single −1000, owed:single +1000, earned:single −1000 are two.
 */
export function bookedEntries(lines: readonly BooksLine[], currency: string): readonly BookedEntry[] {
  const entries: BookedEntry[] = [];
  let open: BooksLine[] = [];
  for (const line of lines) {
    if (line.commodity !== currency) continue;
    if (open[0] !== undefined && open[0].action !== line.action) open = [];
    open.push(line);
    if (open.reduce((sum, { amount }) => sum + amount, 0) !== 0) continue;
    const { date, about } = line;
    entries.push({
      date,
      about,
      lines: open.map(({ account, amount }) => ({ side: sideOf(account), amount })),
    });
    open = [];
  }
  return entries;
}

type Named = Pick<BooksInput, "names" | "locale">;

/** "pass, Pass of 10" or "hall hire, Tithe Barn": what an entry was for. */
export function entryWords({ about, lines }: BookedEntry, { names, locale }: Named): string {
  for (const { side } of lines) {
    if (side.side === "own") return "your own money";
    if (side.side === "difference") return "the cash box when it was counted";
    if (side.side === "income")
      return after(oneWords(side.heading), incomeName(idIn(lines) ?? "", about, names));
  }
  const cost = lines.find(({ side }) => side.side === "cost")?.side;
  if (cost?.side !== "cost" || lines.filter(({ side }) => side.side === "means").length > 1)
    return "moved from one place to another";
  const due = lines.map(({ side }) => side).find((side) => side.side === "cost" && side.part === "due");
  const to = due?.side === "cost" ? due.id : "";
  return after(costWords(cost.heading, locale), to === "" ? sessionName(about, names) : nameOf(to, names));
}

/** Who it was for, where the record still has a name. */
export function entryPerson({ about, lines }: BookedEntry, { names }: Named): string | null {
  const id = idIn(lines);
  if (id === undefined) return null;
  const session = sessionOf(about);
  return names.pass(id)?.holder ?? (session === undefined ? null : names.place(session, id));
}

function incomeName(id: string, about: string, names: Named["names"]): string {
  const pass = names.pass(id)?.name;
  if (pass !== undefined) return pass;
  return about === "books" ? plainId(id) : sessionName(about, names);
}

function idIn(lines: BookedEntry["lines"]): string | undefined {
  return lines
    .flatMap(({ side }) => (side.side === "income" && side.id !== "" ? [side.id] : []))
    .find((id) => id !== "");
}

function sessionName(about: string, names: Named["names"]): string {
  const session = sessionOf(about);
  return session === undefined ? "" : (names.session(session)?.name ?? "");
}

function nameOf(id: string, names: Named["names"]): string {
  return names.payee(id) ?? plainId(id);
}

function after(what: string, name: string): string {
  return name === "" ? what : `${what}, ${name}`;
}
