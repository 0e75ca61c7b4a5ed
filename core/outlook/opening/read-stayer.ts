import { good, readAmount, type Result, together } from "#core/words";
import { readCount, readShare } from "../read-count.ts";
import { readCurrencyFor } from "../read-currency-for.ts";
import type { OpeningDocument } from "./opening-document.ts";
import type { Stayer } from "./stayer-worth.ts";

export function readStayer({ stayer, currency }: OpeningDocument): Result<Stayer | null> {
  if (stayer === undefined) return good(null);
  const known = readCurrencyFor(currency, "stayer");
  if (!known.ok) return known;
  return together({
    currency: known,
    yielded: readAmount(stayer.yield, known.value, "stayer.yield"),
    perHead: readAmount(stayer.perHead, known.value, "stayer.perHead"),
    attendance: readShare(stayer.attendance, "stayer.attendance", "An attendance"),
    leaving: readShare(stayer.leaving, "stayer.leaving", "A share who stop each week"),
    sessions: readCount(stayer.sessions, "stayer.sessions", "teaching weeks", { least: 1, most: 520 }),
  });
}
