import type { Move } from "./plan-edit.ts";

/**
 * What a teacher usually pays a year, as guesses to be put right: common practice, no source. The data fee is that of
 * the United Kingdom.
 */
export function usualCosts(
  currency: string,
  from: string,
  newId: () => string,
): readonly (Move & { id: string })[] {
  const costs: readonly (readonly [string, string])[] = [
    ["Insurance", "85.00"],
    ["Training", "200.00"],
    ["First aid, a third of the course", "25.00"],
    ["Music licence", "100.00"],
    ...(currency === "GBP" ? ([["Data protection fee", "52.00"]] as const) : []),
  ];
  return costs.map(([name, amount]) => ({
    id: newId(),
    name,
    way: "out",
    amount,
    on: from,
    everyMonths: 12,
    business: true,
  }));
}
