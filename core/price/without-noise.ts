/**
 * The same answer with its numbers to twelve digits: 11.950606700349503 is 11.9506067003. The digits behind them
 * differ from one machine's logarithms to another's and are known to nobody.
 */
export function withoutNoise<Json>(json: Json): Json {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- only numbers change, and to numbers
  return rounded(json) as Json;
}

const DIGITS = 12;

function rounded(value: unknown): unknown {
  if (typeof value === "number") return Number(value.toPrecision(DIGITS));
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, rounded(part)]));
}
