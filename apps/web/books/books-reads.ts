import { queryOptions } from "@tanstack/react-query";
import type { BooksInput, BooksLine } from "#app/views";
import { Temporal } from "temporal-polyfill";
import { ask } from "../api/ask.ts";
import { ProblemsError } from "../api/practices.ts";
import { withSignalWords } from "../people/no-signal.ts";
import { recordKey } from "../people/record-reads.ts";

export type BooksRead = Pick<BooksInput, "lines" | "before" | "earlier">;

/** The lines of the books from one day to another, both included, and what lay in each account before. */
export function booksQuery(practice: string, from: string, until: string) {
  return queryOptions({
    queryKey: [...recordKey(practice), "books", from, until],
    queryFn: async (): Promise<BooksRead> => {
      const [lines, before] = await Promise.all([
        postings(practice, from, until),
        read<{ readonly balances: BooksInput["before"] }>(practice, `balances?until=${dayBefore(from)}`),
      ]);
      return { lines, before: before.balances, earlier: await earlierOf(practice, from, before.balances) };
    },
  });
}

/** The older lines of places that were unpaid when these days began; asked for only where there are any. */
async function earlierOf(
  practice: string,
  from: string,
  before: BooksInput["before"],
): Promise<readonly BooksLine[]> {
  const unpaid = new Set(
    before.flatMap(({ account, amount }) =>
      amount !== 0 && /^unpaid:(single|concession):/.test(account) ? [account] : [],
    ),
  );
  if (unpaid.size === 0) return [];
  const older = await postings(practice, FIRST_DAY, dayBefore(from));
  return older.filter(({ account }) => unpaid.has(account));
}

const FIRST_DAY = "2000-01-01";

async function postings(practice: string, from: string, until: string): Promise<readonly BooksLine[]> {
  const path = `postings?from=${from}&until=${until}`;
  return (await read<{ readonly postings: readonly BooksLine[] }>(practice, path)).postings;
}

function dayBefore(date: string): string {
  return Temporal.PlainDate.from(date).subtract({ days: 1 }).toString();
}

async function read<Answer>(practice: string, path: string): Promise<Answer> {
  const answer = await ask(`/api/practices/${encodeURIComponent(practice)}/record/${path}`);
  if (!answer.ok) throw new ProblemsError(withSignalWords(answer.problems));
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server, same contract
  return answer.value as Answer;
}
