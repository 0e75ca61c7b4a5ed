// Example: of 100 who begin 80 are there after week 1 and 60 after week 4: level at 100 until 1, at 80 until 4.
type Step = { readonly period: number; readonly share: number };

/** The corners of a line that falls only at its steps, from everybody at nought; shares become of 100. */
export function stairs(steps: readonly Step[]): readonly { readonly x: number; readonly y: number }[] {
  const shares = [1, ...steps.map(({ share }) => share)];
  return [
    { x: 0, y: 100 },
    ...steps.flatMap(({ period, share }, at) => [
      { x: period, y: (shares[at] ?? 1) * 100 },
      { x: period, y: share * 100 },
    ]),
  ];
}
