import { type Arrangement, arrangementWords } from "#core/hall";

type Counted = {
  readonly arrangement: Arrangement;
  readonly count: number;
  readonly bound: number;
  readonly proven: boolean;
};

/** Whether the number is the best there is, or how far from it it may be. */
export function provenWords({ arrangement, count, bound, proven }: Counted): string {
  const how = arrangementWords[arrangement];
  if (proven && count === 0) return `No mat can lie ${how} on this floor with these gaps.`;
  if (proven) return `${count} is the most there can be ${how} with this mat and these gaps.`;
  return `More than ${count} was not found; ${how} there can be at most ${bound}.`;
}
