// Example: walls "6", "9", "6" and "9", each with a turn to the left, close on the first corner; with "5.7" for the
// third the floor stays open by 0.30 m, and that is said before it is drawn.
import { floorFromWalls, type WalkedFloor } from "#core/hall";
import { formatLength, type LengthUnits, parseLength, type Problem, problem } from "#core/words";

/** One wall as it was typed; `turn` is "left", "right", or degrees to the left in `degrees`. */
export type WalkedEntry = {
  readonly length: string;
  readonly turn: "left" | "right" | "other";
  readonly degrees: string;
};

export const nextWall: WalkedEntry = { length: "", turn: "left", degrees: "" };

export type WalkRead = {
  /** the floor from the walls before the first one that cannot be read; null under three */
  readonly walked: WalkedFloor | null;
  /** by wall */
  readonly problems: readonly (Problem | undefined)[];
};

/** What the walls typed so far make. */
export function readWalk(entries: readonly WalkedEntry[], units: LengthUnits): WalkRead {
  const read = entries.map((entry, index) => readWall(entry, units, index));
  const problems = read.map((it) => ("problem" in it ? it.problem : undefined));
  const walls = read.flatMap((it) => ("problem" in it ? [] : [it]));
  const walked = walls.length < 3 || walls.length < entries.length ? null : floorFromWalls(walls);
  return { walked, problems };
}

function readWall(
  entry: WalkedEntry,
  units: LengthUnits,
  index: number,
): { readonly length: number; readonly turn: number } | { readonly problem: Problem | undefined } {
  const length = parseLength(entry.length, units, `walls[${index}]`);
  if (!length.ok) return { problem: length.problems[0] };
  const turn = readTurn(entry);
  if (turn === null) return { problem: badTurn(index, entry.degrees) };
  return { length: length.value, turn };
}

function readTurn({ turn, degrees }: WalkedEntry): number | null {
  if (turn !== "other") return turn === "left" ? 90 : -90;
  const tidy = degrees.trim().replace(/[−–]/, "-").replace(",", ".").replace("°", "");
  if (!/^-?\d{1,3}(\.\d+)?$/.test(tidy)) return null;
  return Math.abs(Number(tidy)) < 180 ? Number(tidy) : null;
}

function badTurn(index: number, typed: string): Problem {
  return problem(
    "turn-unreadable",
    `walls[${index}]`,
    typed.trim() === "" ? "The turn has no angle." : `“${typed}” is not an angle to turn by.`,
    "Give degrees to the left under 180, like 45, or with a minus sign to the right.",
  );
}

/** Whether the walls come back to where they began, in words. */
export function closingWords({ closingError, closes }: WalkedFloor, units: LengthUnits): string {
  if (closingError === 0) return "The last wall ends where the first began.";
  const gap = formatLength(closingError, units);
  if (closes) {
    return `The last wall ends ${gap} from where the first began. Tapes do that; the last wall is drawn to meet it.`;
  }
  return `The last wall ends ${gap} from where the first began: a wall is missing or measured wrong. Drawn now, the last wall is bent to meet it.`;
}
