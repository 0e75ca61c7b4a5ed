/** Whether the number is the best there is, or how far from it it may be. */
export function provenWords(count: number, bound: number, proven: boolean): string {
  if (proven && count === 0) return "No mat can lie in straight lines on this floor with these gaps.";
  if (proven) return `${count} is the most there can be in straight lines with this mat and these gaps.`;
  return `More than ${count} was not found; in straight lines there can be at most ${bound}.`;
}
