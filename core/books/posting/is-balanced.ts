/** A line as the checker reads it: no more than what counts. */
type Line = { readonly commodity: string; readonly amount: number };

/**
 * Whether the lines add to nought in every commodity: the checker, which shares no code with the constructor.
 * It reads one entry, or the lines of a whole book.
 */
export function isBalanced({ lines }: { readonly lines: readonly Line[] }): boolean {
  const sums = new Map<string, bigint>();
  for (const { commodity, amount } of lines) {
    if (!Number.isInteger(amount)) return false;
    sums.set(commodity, (sums.get(commodity) ?? 0n) + BigInt(amount));
  }
  return [...sums.values()].every((sum) => sum === 0n);
}
