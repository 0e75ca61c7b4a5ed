import type { ClassSheetInput } from "./class-sheet-input.ts";
import type { PricesPart } from "./prices-part.ts";

/** The sheet in one sentence: the mats, the hall’s own limit, the people who pay for the room. */
export function sheetHeading({ plan, hall }: ClassSheetInput, prices: PricesPart): string {
  const parts = [
    ...(plan === null ? [] : [plan.count === 1 ? "1 mat fits" : `${plan.count} mats fit`]),
    ...(hall?.postedCapacity === undefined ? [] : [`the hall’s own limit is ${hall.postedCapacity}`]),
    ...payClause(prices),
  ];
  if (parts.length === 0)
    return "Choose a hall and enter what it charges to see how many people pay for the room.";
  const sentence = parts.join("; ");
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
}

function payClause(prices: PricesPart): readonly string[] {
  if (prices.kind !== "ready") return [];
  if (prices.breakEven === null) return ["at these prices nobody ever pays for the room"];
  return [
    prices.breakEven === 1 ? "1 person pays for the room" : `${prices.breakEven} people pay for the room`,
  ];
}
