/** Of two decimal strings with as many places, without the noise of binary fractions: "0.10" of "0.30" and "0.20". */
export function amountDifference(one: string, other: string): string {
  const places = one.split(".")[1]?.length ?? 0;
  return (Number(one) - Number(other)).toFixed(places);
}
