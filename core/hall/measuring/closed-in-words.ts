import { formatLength, type LengthUnits } from "#core/words";
import { cornerName } from "../corner-names.ts";
import type { ClosedWalls, Suspect } from "./closed-walls-types.ts";
import type { Measure } from "./measured-walls.ts";

/** "the wall B–C", "the diagonal A–C", "the corner B". */
export function measureName({ kind, index, corners }: Measure, count: number): string {
  const [from = 0, to = 0] = corners;
  switch (kind) {
    case "wall":
    case "diagonal":
      return `the ${kind} ${cornerName(from)}–${cornerName(to)}`;
    case "turn":
      return `the corner ${cornerName(index % count)}`;
  }
}

/** "the wall B–C: 8.30 m was measured, the others say about 8.00 m, 0.30 m less" */
export function doubtSays(
  { kind, name, measured, others }: Omit<Suspect, "offBy" | "says">,
  units: LengthUnits,
): string {
  if (kind === "turn") return `${name}: a turn of ${measured}° was taken, the others say about ${others}°`;
  const off = measured - others;
  const [taped, said, apart] = [measured, others, Math.abs(off)].map((it) => formatLength(it, units));
  return `${name}: ${taped} was measured, the others say about ${said}, ${apart} ${off > 0 ? "less" : "more"}`;
}

/** How it closes, what is open, what is likely wrong or may be so instead, and what would tell. */
export function closedSentences(
  told: Pick<
    ClosedWalls,
    "closingError" | "closes" | "suspects" | "settled" | "notSquareBy" | "open" | "unchecked"
  >,
  diagonals: number,
  units: LengthUnits,
): readonly string[] {
  const gap = formatLength(told.closingError, units);
  const walked = `Walked round, the last wall ends ${gap} from where the first began.`;
  const nothing = " That is as near as a tape comes: nothing is likely wrong.";
  if (told.open.length > 0 && told.suspects.length === 0) return [openSentence(told.open)];
  if (told.unchecked) return [uncheckedSentence];
  return [
    told.closes ? walked + nothing : walked,
    ...(told.open.length > 0 ? [openSentence(told.open)] : []),
    ...(told.closes ? [] : suspectSentences(told)),
    ...(diagonals === 0
      ? ["A diagonal from corner to corner would check it, and whether corners are square."]
      : []),
  ];
}

const uncheckedSentence =
  "The lengths make a shape, but nothing checks them: a slip in one would not show. One more diagonal would check them.";

function openSentence(open: readonly number[]): string {
  const names = open.map(cornerName);
  const listed = names.length === 1 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
  const how = names.length === 1 ? "its angle" : "their angles";
  return `The lengths leave the corner${names.length === 1 ? "" : "s"} ${listed} open: ${how} could still be otherwise. A diagonal would pin the shape.`;
}

function suspectSentences({
  suspects,
  settled,
  notSquareBy,
}: Pick<ClosedWalls, "suspects" | "settled" | "notSquareBy">): readonly string[] {
  const [first] = suspects;
  if (first === undefined && notSquareBy !== null)
    return [`The lengths agree with one another if corners are not square, by up to ${notSquareBy}°.`];
  if (first === undefined || !settled) {
    const nearest = first === undefined ? "" : ` The furthest off is ${first.says}.`;
    return [`No one measure explains it: more than one is wrong.${nearest} Measure all again.`];
  }
  const or =
    notSquareBy === null
      ? []
      : [`Or no length is wrong and corners are not square, by up to ${notSquareBy}°.`];
  if (suspects.length === 1) return [`Likely wrong is ${first.says}. Measure it again.`, ...or];
  const all = suspects.map((it) => it.says).join("; ");
  return [
    `One of these is likely wrong, and the measures cannot tell which: ${all}. Measure them again.`,
    ...or,
  ];
}
