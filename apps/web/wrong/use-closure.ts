import type { CancelReason } from "#core/roll";
import { useDraft } from "../drafts/use-draft.ts";
import type { WrongHere } from "./wrong-here.ts";

const WORDS: Readonly<Record<CancelReason, string>> = {
  "hall shut": "hall shut",
  teacher: "no teacher",
  "too few": "too few",
  weather: "weather",
  other: "cancelled",
};

/** The date goes into the closed dates of the class, so that its year and its calendar leave it out. */
export function useClosure({ practiceId, session }: WrongHere) {
  const opened = useDraft(practiceId, "classes", session.class);
  const closures = opened?.draft.document.year.closures ?? [];
  const there = closures.some(({ from, until }) => from <= session.date && session.date <= until);
  return {
    says:
      opened === null || there
        ? []
        : ["The date goes into the closed dates of the class: its year and its calendar leave it out."],
    add: (why: CancelReason) => {
      if (opened === null || there) return;
      const closed = { from: session.date, until: session.date, why: WORDS[why] };
      opened.keeper.change((document) => ({
        ...document,
        year: { ...document.year, closures: [...document.year.closures, closed] },
      }));
    },
  };
}
