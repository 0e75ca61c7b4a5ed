import type { Problem } from "#core/words";

/** What is wrong with a pasted survey, with its line counted as a reader counts; null when nothing is. */
export function surveyProblem(problems: readonly Problem[]): string | null {
  const found = problems.find(({ place }) => place.startsWith("planning.survey"));
  if (found === undefined) return null;
  const line = /^planning\.survey\[(\d+)\]/.exec(found.place)?.[1];
  const where = line === undefined ? "" : `Line ${Number(line) + 1}: `;
  return `${where}${found.says} ${found.next}`;
}
