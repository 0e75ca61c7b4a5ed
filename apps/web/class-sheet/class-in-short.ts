import { classSheet } from "#app/views";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { PracticeDocument } from "#core/words";
import { currencyOf } from "../hall/hall-form.ts";
import { today } from "../words/dates.ts";
import { moneyWords } from "../words/money-words.ts";

/** A class in a list: who pays for the room and what an ordinary evening leaves, or what is missing for that. */
export function classInShort(
  document: ClassDocument,
  hall: HallDocument | null,
  practice: PracticeDocument,
): string {
  const currency = currencyOf(practice.currency);
  const { prices, ordinary } = classSheet({
    practice,
    document,
    hall,
    // the floor is not needed for the money
    plan: null,
    capacity: null,
    today: today(),
    money: (exact) => moneyWords(exact, currency, practice.locale),
  });
  if (prices.kind === "missing") return prices.says;
  if (prices.kind === "unsound" || ordinary.kind !== "ready") return "Something in it needs mending.";
  return [prices.says[0], ordinary.says[0]].join(" ");
}
