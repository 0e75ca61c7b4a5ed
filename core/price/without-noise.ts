/**
 * The same answer with its numbers to twelve digits: 11.950606700349503 is 11.9506067003. The digits behind them
 * differ from one machine's logarithms to another's and are known to nobody. What is fitted has fewer.
 */
export function withoutNoise<Json>(json: Json, digits = 12): Json {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- only numbers change, and to numbers
  return rounded(json, digits) as Json;
}

function rounded(value: unknown, digits: number): unknown {
  if (typeof value === "number") return Number(value.toPrecision(digits));
  if (Array.isArray(value)) return value.map((each) => rounded(each, digits));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, rounded(part, digits)]));
}
