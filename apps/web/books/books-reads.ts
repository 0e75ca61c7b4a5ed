import { queryOptions } from "@tanstack/react-query";
import type { BooksInput, BooksLine } from "#app/views";
import { Temporal } from "temporal-polyfill";
import { ask } from "../api/ask.ts";
import { ProblemsError } from "../api/practices.ts";
import { withSignalWords } from "../people/no-signal.ts";
import { recordKey } from "../people/record-reads.ts";

export type BooksRead = Pick<BooksInput, "lines" | "before">;

/** The lines of the books from one day to another, both included, and what lay in each account before. */
export function booksQuery(practice: string, from: string, until: string) {
  return queryOptions({
    queryKey: [...recordKey(practice), "books", from, until],
    queryFn: async (): Promise<BooksRead> => {
      const [lines, before] = await Promise.all([
        read<{ readonly postings: readonly BooksLine[] }>(practice, `postings?from=${from}&until=${until}`),
        read<{ readonly balances: BooksInput["before"] }>(practice, `balances?until=${dayBefore(from)}`),
      ]);
      return { lines: lines.postings, before: before.balances };
    },
  });
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
