/** A chance for the reader: 0.8862 is "88.6 %". What is not certain never reads as nought or all. */
export function chanceText(chance: number): string {
  if (chance > 0 && chance < 0.0005) return "less than 0.1 %";
  if (chance < 1 && chance >= 0.9995) return "more than 99.9 %";
  return `${plainDecimal(chance * 100, 1)} %`;
}

/** A number with at most so many decimals and no trailing noughts: 75.0 is "75". */
export function plainDecimal(value: number, decimals: number): string {
  const fixed = value.toFixed(decimals);
  const plain = fixed.includes(".") ? fixed.replace(/0+$/, "").replace(/\.$/, "") : fixed;
  return plain === "-0" ? "0" : plain;
}
