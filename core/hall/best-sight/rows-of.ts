import type { LinedMatPlan } from "../arrangement/arrangement-types.ts";
import type { PlacedMat } from "../mat-plan-types.ts";

/** The mats of a plan in lines, line by line as its set-out has them. */
export function rowsOf({ mats, setOut }: LinedMatPlan): readonly (readonly PlacedMat[])[] {
  let before = 0;
  return setOut.lines.map(({ centres }) => {
    const from = before;
    before += centres.length;
    return mats.slice(from, before);
  });
}

/** Degrees from +x of the way the lines run: from the first to the last mat of the longest line. */
export function directionOf(rows: readonly (readonly PlacedMat[])[]): number {
  const longest = rows.reduce((most, row) => (row.length > most.length ? row : most), rows[0] ?? []);
  const [first, last] = [longest[0], longest.at(-1)];
  if (first === undefined || last === undefined) return 0;
  // lines of one mat each: side by side is what a line of them would be
  if (first === last) return first.angle + 90;
  const [x, y] = [last.centre[0] - first.centre[0], last.centre[1] - first.centre[1]];
  return (Math.atan2(y, x) * 180) / Math.PI;
}
