import type { Measuring } from "./measuring.ts";
import { isBlank } from "./read-typed-length.ts";

/** "5 walls and 1 diagonal with a tape", or "4 corners on a picture". */
export function measuringWords({ way, tape, trace, used }: Measuring): string {
  const done = used ? ", used" : "";
  if (way === "picture") return `${counted(trace.corners.length, "corner")} on a picture${done}`;
  const walls = tape.walls.filter((it) => !isBlank(it)).length;
  const diagonals = tape.diagonals.filter((it) => !isBlank(it)).length;
  const across = diagonals === 0 ? "" : ` and ${counted(diagonals, "diagonal")}`;
  return `${counted(walls, "wall")}${across} with a tape${done}`;
}

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? "" : "s"}`;
}
