import type { MoneyPlan } from "#core/cash";
import { coinText } from "#core/price";
import { exactNumber, isCurrency } from "#core/words";
import { type AskOutlook, type OutlookSheetInput } from "./outlook-sheet.ts";
import { outlookAsked } from "./outlook-asked.ts";
import { type Missing, missing, type Unsound } from "./sheet-part.ts";

type Change = MoneyPlan["own"][number]["changes"][number];

/** What a session of a class brings in each month to come, by its outlook. */
export type ClassGrowth =
  | {
      readonly kind: "ready";
      readonly changes: readonly Change[];
      readonly sessionsHeld: number;
    }
  | Missing
  | Unsound;

export type ClassGrowthInput = Omit<OutlookSheetInput, "capacity" | "mats">;

/**
 * The heads of the outlook, mean and eight chances of ten, averaged over the sessions of each month, times what a head
 * brings. Places are those of the record, or the least of her own limits and the hall's posted number.
 */
export function classGrowth(input: ClassGrowthInput, ask: AskOutlook): ClassGrowth {
  const { currency } = input.practice;
  const places = placesOf(input);
  if (places === null)
    return missing(
      "How many places it has is not written down.",
      "Enter the places in its record, or the most you want, on its class sheet.",
    );
  const asked = outlookAsked({ ...input, capacity: { capacity: places }, mats: places }, ask, null);
  if (asked.kind !== "ready") return asked;
  const { json, priced } = asked;
  if (priced.kind !== "priced") return priced;
  if (!isCurrency(currency)) return missing("Its currency is not known.", "Look at the practice.");
  const text = (heads: number) =>
    coinText(priced.evening.yield.mul(exactNumber(Number(heads.toFixed(4)))), currency);
  const changes = monthly(json.sessions).map(({ from, low, mean, high }) => ({
    from,
    perSession: {
      low: text(Math.min(low, mean)),
      middle: text(mean),
      high: text(Math.max(high, mean)),
    },
  }));
  if (changes.length === 0)
    return missing("No teaching date lies ahead of it.", "Make its year longer on its class sheet.");
  return { kind: "ready", changes, sessionsHeld: json.sessionsHeld };
}

function placesOf({ document, hall, happened }: ClassGrowthInput): number | null {
  if (happened.capacity !== undefined && happened.capacity !== null) return happened.capacity;
  const { ownCap, matsOwned, insurerCap } = document;
  const known = [ownCap, matsOwned, insurerCap, hall?.postedCapacity ?? null].filter((it) => it !== null);
  return known.length === 0 ? null : Math.min(...known);
}

type Session = {
  readonly date: string | null;
  readonly heads: { readonly mean: number; readonly low: number; readonly high: number };
};

/** Each month from its first session on. */
function monthly(sessions: readonly Session[]) {
  const dated = sessions.flatMap(({ date, heads }) => (date === null ? [] : [{ date, heads }]));
  const months = [...new Set(dated.map(({ date }) => date.slice(0, 7)))];
  return months.map((month) => {
    const here = dated.filter(({ date }) => date.startsWith(month));
    const mean = (of: (heads: Session["heads"]) => number) =>
      here.reduce((sum, { heads }) => sum + of(heads), 0) / here.length;
    return {
      from: here[0]?.date ?? "",
      low: mean((heads) => heads.low),
      mean: mean((heads) => heads.mean),
      high: mean((heads) => heads.high),
    };
  });
}
