import { type Balance, type CostHeading, type OwedView, owedView } from "#core/books";
import { type BooksInput, sessionOf } from "./books-input.ts";
import { costWords, oneWords, plainId } from "./books-words.ts";

/** Who owes what to whom, with the words for each line and what it takes to settle it. */
export type BooksOwed = Pick<OwedView, "owedTotal" | "classesTotal" | "unpaidTotal" | "dueTotal"> & {
  readonly owed: readonly OwedRow[];
  readonly unpaid: readonly UnpaidRow[];
  readonly due: readonly DueRow[];
};

export type OwedRow = {
  readonly id: string;
  readonly what: string;
  readonly person: string | null;
  readonly classes: number;
  readonly amount: number;
};

export type UnpaidRow = {
  readonly id: string;
  readonly what: string;
  readonly person: string | null;
  readonly amount: number;
  readonly settle: Settle;
};

/** How a payment is written down; null where no line that was read tells of what session it is. */
export type Settle =
  | { readonly kind: "pass"; readonly pass: string }
  | { readonly kind: "place"; readonly session: string; readonly place: string }
  | { readonly kind: "work"; readonly heading: WorkHeading; readonly invoice: string }
  | null;

type WorkHeading = "studio" | "workshop" | "private" | "other";

export type DueRow = {
  readonly cost: CostHeading;
  readonly to: string;
  readonly what: string;
  readonly amount: number;
};

/** As it stands at the end of the days that were read. */
export function booksOwed(input: BooksInput): BooksOwed {
  const { names, locale } = input;
  const found = owedView(balancesAfter(input), input.currency);
  const sessions = sessionsOf(input);
  const whose = (id: string) => {
    const pass = names.pass(id);
    if (pass !== undefined) return { what: pass.name, person: pass.holder };
    const session = sessions.get(id);
    const known = session === undefined ? undefined : names.session(session);
    if (session === undefined || known === undefined) return undefined;
    return {
      what: `${known.name}, ${input.writer.day(known.date)}`,
      person: names.place(session, id),
    };
  };
  return {
    ...found,
    owed: found.owed.map(({ heading, id, amount, classes }) => ({
      ...(whose(id) ?? { what: oneWords(heading), person: null }),
      id,
      classes,
      amount,
    })),
    unpaid: found.unpaid.map(({ heading, id, amount }) => {
      const settle = settleOf(heading, id, sessions);
      const unnamed = {
        what: settle?.kind === "work" ? `${oneWords(heading)}, ${id}` : oneWords(heading),
        person: null,
      };
      return { ...(whose(id) ?? unnamed), id, amount, settle };
    }),
    due: found.due.map(({ heading, to, amount }) => ({
      cost: heading,
      to,
      amount,
      what: `${costWords(heading, locale)}, ${names.payee(to) ?? plainId(to)}`,
    })),
  };
}

/** What lies in each account once these lines are on top of what was there before. */
export function balancesAfter({ before, lines }: Pick<BooksInput, "before" | "lines">): readonly Balance[] {
  const sums = new Map<string, Balance>();
  for (const { account, commodity, amount } of [...before, ...lines]) {
    const key = `${account} ${commodity}`;
    sums.set(key, { account, commodity, amount: (sums.get(key)?.amount ?? 0) + amount });
  }
  return [...sums].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, balance]) => balance);
}

/** The sessions of places, by the lines that tell of both. */
function sessionsOf({ lines, earlier }: BooksInput): ReadonlyMap<string, string> {
  return new Map(
    [...earlier, ...lines].flatMap(({ account, about }) => {
      const session = sessionOf(about);
      const id = account.split(":")[2];
      return session === undefined || id === undefined ? [] : [[id, session] as const];
    }),
  );
}

function settleOf(
  heading: OwedView["unpaid"][number]["heading"],
  id: string,
  sessions: ReadonlyMap<string, string>,
): Settle {
  switch (heading) {
    case "pass":
    case "block":
      return { kind: "pass", pass: id };
    case "single":
    case "concession": {
      const session = sessions.get(id);
      return session === undefined ? null : { kind: "place", session, place: id };
    }
    case "studio":
    case "workshop":
    case "private":
    case "other":
      return { kind: "work", heading, invoice: id };
  }
}
