import {
  bad,
  type CurrencyCode,
  minor,
  problem,
  readAmount,
  type Result,
  together,
  togetherInOrder,
} from "#core/words";
import { readWhole } from "./read-whole.ts";
import type { WeekDocument } from "./week-document.ts";
import type { Candidate, Wish } from "./week-types.ts";

/** Wishes with their price a year. Problems: "candidate-unknown", "week-count" and those of money. */
export function readWishes(
  { wishes }: WeekDocument,
  weeks: number,
  candidates: readonly Candidate[],
  currency: CurrencyCode,
): Result<readonly Wish[]> {
  return togetherInOrder(
    wishes.map((wish, at): Result<Wish> => {
      const place = `wishes[${at}]`;
      const price = readAmount(wish.perWeek, currency, `${place}.perWeek`);
      const read = together({ price, about: readAbout(wish, place, candidates) });
      if (!read.ok) return read;
      return { ok: true, value: priced(wish.kind, read.value.about, minor(read.value.price * weeks)) };
    }),
  );
}

function readAbout(
  wish: WeekDocument["wishes"][number],
  place: string,
  candidates: readonly Candidate[],
): Result<number> {
  switch (wish.kind) {
    case "day-free":
    case "evening-free":
      return readWhole(wish.weekday, `${place}.weekday`, "a weekday", 1, 7);
    case "fewer-classes":
      return readWhole(wish.than, `${place}.than`, "classes a week", 0, 100);
    case "rather-not": {
      const found = candidates.findIndex(({ id }) => id === wish.candidate);
      if (found >= 0) return { ok: true, value: found };
      const says = `“${wish.candidate.slice(0, 40)}” is none of the candidates.`;
      return bad(problem("candidate-unknown", `${place}.candidate`, says, "Look at its id again."));
    }
  }
}

function priced(kind: Wish["kind"], about: number, price: Wish["price"]): Wish {
  switch (kind) {
    case "day-free":
    case "evening-free":
      return { kind, weekday: about, price };
    case "rather-not":
      return { kind, candidate: about, price };
    case "fewer-classes":
      return { kind, than: about, price };
  }
}
